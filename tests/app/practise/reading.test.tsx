import { readFileSync } from "node:fs";
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { SheetPlace } from "@/app/_parts/course/course-words";
import { Practise } from "@/app/practise/[id]/practise";
import type { Exercise } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";

/** The tide office, read back: B stands 7'-0" stage right of the centre line, 14'-0" upstage. */
function reading(task: Record<string, unknown> = {}): Exercise {
  const file = JSON.parse(readFileSync("tests/fixtures/tide-office.json", "utf8"));
  const changed = { ...file, task: { kind: "picture-to-plan", marks: ["B.foot", "C.foot"], ...task } };
  const read = readExercise(JSON.stringify(changed));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.exercise;
}

const show = (exercise = reading(), sheet: SheetPlace = [1, 2]) =>
  render(<Practise exercise={exercise} sheet={sheet} next={null} />);

beforeEach(() => {
  window.localStorage.clear();
  vi.stubGlobal("matchMedia", () => ({ matches: false }));
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe() {}
      disconnect() {}
    },
  );
});

async function markByKeys(presses: string) {
  screen.getByRole("application", { name: /^Plan/ }).focus();
  await userEvent.keyboard(presses);
}

describe("a sheet whose plan is read back", () => {
  it("asks for the place on the plan, and tells it nowhere", () => {
    const { container } = show();
    const step = within(screen.getByRole("region", { name: "Step" }));
    expect(step.getByText("Read the foot of B back on to the plan: it is lit in the picture.")).toBeVisible();
    expect(step.getByRole("button", { name: "Place it on the plan" })).toBeDisabled();
    expect(container.innerHTML).not.toMatch(/7'-0"|14'-0"/);
    expect(container.innerHTML).not.toContain("1 mm of paper");
    expect(container.querySelector("#picture-drawing [data-asked='B.foot']")).not.toBeNull();
    expect(container.querySelector("#plan-drawing [data-asked]")).toBeNull();
  });

  it("tells those who do not see the picture where it shows the point, by its rule", () => {
    show();
    // s = 36/(36 + 14): X = -7 s = -5.04 ft, Z = 8 - 8 s = 2.24 ft.
    expect(
      screen.getByText(/^Step 1 of 2\. Read the foot of B back on to the plan\. The picture shows it/),
    ).toHaveTextContent(
      `The picture shows it 5'-0 1/2" left of the centre line, 2'-2 7/8" above the plaster line, by the rule.`,
    );
  });

  it("is marked, corrected and finished by keys, with the words for a reading", async () => {
    const { container } = show();
    await markByKeys("{ArrowUp}{Shift>}{ArrowUp}{/Shift}{Enter}");
    expect(container.querySelector(".notes-where")).toHaveTextContent(
      "in the picture, were your place drawn back into it",
    );
    expect(container.querySelectorAll("#plan-drawing .true-mark")).toHaveLength(1);
    expect(container.querySelectorAll("#picture-drawing .mark-ring")).toHaveLength(1);
    expect(screen.queryByRole("button", { name: "Show how" })).toBeNull();
    await userEvent.keyboard("{Enter}");
    await markByKeys("{ArrowUp}{Enter}");
    await userEvent.click(screen.getByRole("button", { name: "See the whole drawing" }));
    expect(screen.getByRole("img", { name: /^The plan as you read it/ })).toBeVisible();
    expect(screen.getByRole("columnheader", { name: "In the picture" })).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Read it again" }));
    expect(screen.getByRole("heading", { name: "The foot of B" })).toBeVisible();
  });

  it("lays the straightedge to what is on each drawing, and to no corner of the plan that is still asked", async () => {
    show();
    await userEvent.click(screen.getByRole("button", { name: "Straightedge" }));
    const from = screen.getByLabelText("From");
    expect(within(from).getByRole("option", { name: "the foot of B" })).toBeInTheDocument();
    await userEvent.selectOptions(screen.getByLabelText("In"), "the plan");
    const names = within(from)
      .getAllByRole("option")
      .map((option) => option.textContent);
    expect(names).toContain(`the rule's 5'-0" stage left`);
    expect(names.filter((name) => /corner|foot of/.test(name ?? ""))).toEqual([]);
    await userEvent.click(screen.getByRole("button", { name: "Draw this line" }));
    expect(screen.getByText(/^1\. Plan: the back wall, stage right to/)).toBeVisible();
  });
});

describe("a generated sheet", () => {
  it("says that it is a variant, and leads to another or back to the course", async () => {
    show(reading({ marks: ["B.foot"] }), { variant: 48213 });
    expect(screen.getByText("Variant").nextSibling).toHaveTextContent("48213");
    await markByKeys("{ArrowUp}{Enter}");
    await userEvent.click(screen.getByRole("button", { name: "See the whole drawing" }));
    expect(screen.getByRole("button", { name: "Another like this" })).toHaveAttribute("data-weight", "main");
    expect(screen.getByRole("link", { name: "Back to the course" })).toHaveAttribute("href", "/");
    expect(screen.getByText(/, variant 48213$/)).toBeVisible();
  });
});
