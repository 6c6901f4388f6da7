import { readFileSync } from "node:fs";
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { Practise } from "@/app/practise/[id]/practise";
import type { Exercise } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";

function exercise(change: Record<string, unknown> = {}): Exercise {
  const file = JSON.parse(readFileSync("tests/fixtures/tide-office.json", "utf8"));
  const reading = readExercise(JSON.stringify({ ...file, ...change }));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

const TWO = { task: { kind: "plan-to-picture", marks: ["A.foot", "A.top"] } };

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

async function placeByKeys(presses: string) {
  screen.getByRole("application", { name: /^Picture/ }).focus();
  await userEvent.keyboard(presses);
}

describe("the Practise page", () => {
  it("asks for the first point with its printed dimensions and what a millimetre is worth there", () => {
    render(<Practise exercise={exercise(TWO)} sheet={[1, 2]} next={null} />);
    expect(screen.getByRole("heading", { name: "The foot of A" })).toBeVisible();
    const step = within(screen.getByRole("region", { name: "Step" }));
    expect(step.getByText(/^12'-0" stage right of the centre line, 3'-0" upstage of the plaster line\./)).toBeVisible();
    expect(step.getByText(/^1 mm of paper here is .* across and .* of depth on the stage\.$/)).toBeVisible();
    expect(step.getByRole("button", { name: "Place it in the picture" })).toBeDisabled();
  });

  it("does a whole exercise by keys: place, set down, correction, next, result", async () => {
    render(<Practise exercise={exercise(TWO)} sheet={[1, 2]} next={{ id: "after", title: "After" }} />);
    await placeByKeys("{ArrowLeft}{Shift>}{ArrowLeft}{/Shift}{Enter}");
    expect(screen.getByRole("heading", { name: /^The foot of A: 0/ })).toBeVisible();
    expect(screen.getByRole("button", { name: "Next: the top of A" })).toHaveFocus();
    await userEvent.keyboard("{Enter}");
    expect(screen.getByRole("heading", { name: "The top of A" })).toBeVisible();
    await placeByKeys("{ArrowUp}{Enter}");
    await userEvent.click(screen.getByRole("button", { name: "See the whole drawing" }));
    expect(screen.getByRole("heading", { name: /^Score/ })).toHaveFocus();
    expect(within(screen.getByRole("table")).getAllByRole("row")).toHaveLength(3);
    expect(screen.getByRole("link", { name: "Next: After" })).toHaveAttribute("href", "/practise/after");
    await userEvent.click(screen.getByRole("button", { name: "Draw it again" }));
    expect(screen.getByRole("heading", { name: "The foot of A" })).toBeVisible();
  });

  it("takes up where a page was left", async () => {
    const first = render(<Practise exercise={exercise(TWO)} sheet={[1, 2]} next={null} />);
    await placeByKeys("{ArrowLeft}{Enter}");
    first.unmount();
    render(<Practise exercise={exercise(TWO)} sheet={[1, 2]} next={null} />);
    expect(await screen.findByRole("button", { name: "Next: the top of A" })).toBeVisible();
  });

  it("starts a changed exercise anew", async () => {
    const first = render(<Practise exercise={exercise(TWO)} sheet={[1, 2]} next={null} />);
    await placeByKeys("{ArrowLeft}{Enter}");
    first.unmount();
    render(<Practise exercise={exercise({ ...TWO, version: 2 })} sheet={[1, 2]} next={null} />);
    expect(screen.getByRole("heading", { name: "The foot of A" })).toBeVisible();
  });

  it("moves a mark by presses, as far as the chosen step says, and takes each move back", async () => {
    render(<Practise exercise={exercise(TWO)} sheet={[1, 2]} next={null} />);
    await userEvent.click(screen.getByRole("button", { name: "Right" }));
    await userEvent.selectOptions(screen.getByLabelText("by"), "5 mm");
    await userEvent.click(screen.getByRole("button", { name: "Right" }));
    const pending = () => JSON.parse(window.localStorage.getItem("plasterline.attempt.tide-office") ?? "{}").pending;
    expect(pending()).toEqual([0.24, 0]);
    await userEvent.click(screen.getByRole("button", { name: "Undo" }));
    expect(pending()).toEqual([0, 0]);
  });

  it("draws and rubs out a line without a pointer", async () => {
    render(<Practise exercise={exercise(TWO)} sheet={[1, 2]} next={null} />);
    await userEvent.click(screen.getByRole("button", { name: "Straightedge" }));
    await userEvent.selectOptions(screen.getByLabelText("Through"), `the rule's 5'-0" stage left`);
    await userEvent.click(screen.getByRole("button", { name: "Draw this line" }));
    expect(screen.getByText(`1. the CVP to the rule's 5'-0" stage left`)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Rub out line 1" }));
    expect(screen.queryByText(/^1\. the CVP/)).toBeNull();
  });

  it("prints no dimensions where the rule is to be read", () => {
    const ruled = exercise({ task: { ...TWO.task, dimensions: "rule" } });
    const { container } = render(<Practise exercise={ruled} sheet={[1, 2]} next={null} />);
    expect(screen.getByText(/Read its place on the plan with the scale rule\./)).toBeVisible();
    expect(container.textContent).not.toContain(`12'-0"`);
    expect(screen.getByRole("application", { name: /^Scale rule/ })).toBeInTheDocument();
  });
});
