import { render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { passedOn, windowShelf } from "@/app/_parts/own-exercise/passed-on";
import { takeUp } from "@/app/_parts/own-exercise/set-aside";
import { createDesk } from "@/app/draft/desk/desk-store";
import { DeskContext, useDesk } from "@/app/draft/desk/draft-context";
import { useApply } from "@/app/draft/desk/use-apply";
import { ExerciseDesk } from "@/app/draft/exercise/exercise-desk";
import { unpackText } from "@/lib/draft/exercise-desk/pack-text";
import { readDraft } from "@/lib/draft/read-draft";

const went = vi.hoisted(() => vi.fn<(address: string) => void>());
vi.mock("@/app/draft/exercise/go-to", () => ({ goTo: went }));

beforeEach(() => {
  window.localStorage.clear();
  window.sessionStorage.clear();
  went.mockClear();
});

/** A wall from A to B, one more to C, on a stage in metres. */
function withWalls(): ReturnType<typeof createDesk> {
  const store = createDesk("m");
  store.getState().apply({
    edit: "add-walls",
    corners: [
      [-3, 1],
      [-1, 5],
      [3, 5],
    ],
    closed: false,
    height: 3,
    thickness: 0,
  });
  return store;
}

function show(store: ReturnType<typeof createDesk>) {
  render(
    <DeskContext value={store}>
      <Shown />
    </DeskContext>,
  );
  return () => store.getState().history.draft;
}

function Shown() {
  return <ExerciseDesk draft={useDesk((desk) => desk.history.draft)} apply={useApply()} plan="1" />;
}

const button = (name: string | RegExp) => screen.getByRole("button", { name });
const press = (name: string | RegExp) => userEvent.click(button(name));

describe("the marks", () => {
  it("follow the plan until the author orders them, and again when the worked-out order is taken", async () => {
    const draft = show(withWalls());
    const first = draft().exercise.task.marks;
    expect(screen.queryByRole("button", { name: /: earlier$/ })).toBeNull();
    await press("Order them myself");
    expect(draft().marksBy).toBe("author");
    await press("The foot of B: earlier");
    expect(draft().exercise.task.marks.slice(0, 2)).toEqual(["B.foot", "A.foot"]);
    await press("The top of C: do not ask");
    expect(draft().exercise.task.marks).not.toContain("C.top");
    await press("Take the order worked out");
    expect(draft().exercise.task.marks).toEqual(first);
  });

  it("are moved by keys alone, and the keys stay with the mark", async () => {
    const draft = show(withWalls());
    await press("Order them myself");
    button("The foot of A: later").focus();
    await userEvent.keyboard("{Control>}{ArrowDown}{ArrowDown}{/Control}");
    expect(draft().exercise.task.marks.indexOf("A.foot")).toBe(2);
    expect(button("The foot of A: later")).toHaveFocus();
    expect(screen.getByText("The foot of A is now asked as number 3.")).toBeInTheDocument();
    await userEvent.keyboard("{Alt>}{Home}{/Alt}");
    expect(draft().exercise.task.marks[0]).toBe("A.foot");
  });

  it("are asked, given or neither, point by point", async () => {
    const draft = show(withWalls());
    await userEvent.click(screen.getByText(/^Corner A: 2 of 2 asked$/));
    const foot = within(screen.getByRole("group", { name: "The foot of A" }));
    await userEvent.click(foot.getByLabelText("given"));
    expect(draft().exercise.task.given).toEqual(["A.foot"]);
    expect(draft().marksBy).toBe("order");
    await userEvent.click(foot.getByLabelText("neither"));
    expect(draft().exercise.task).toMatchObject({ given: [] });
    expect(draft().exercise.task.marks).not.toContain("A.foot");
    expect(screen.getByText(/^Corner A: 1 of 2 asked$/)).toBeVisible();
  });
});

describe("the task and its words", () => {
  it("are set by lists and lines", async () => {
    const draft = show(withWalls());
    await userEvent.selectOptions(screen.getByLabelText("Graded"), "as a sketch");
    await userEvent.selectOptions(screen.getByLabelText("Tools"), "none: by eye alone");
    await userEvent.selectOptions(screen.getByLabelText("Hints"), "none");
    await userEvent.selectOptions(screen.getByLabelText("Unit"), "Walls");
    await userEvent.selectOptions(screen.getByLabelText("Level"), "3");
    await userEvent.type(screen.getByLabelText("Scenario"), "A pier.{Enter}Low tide.");
    await userEvent.tab();
    expect(draft().exercise).toMatchObject({
      unit: "walls",
      level: 3,
      scenario: "A pier.\nLow tide.",
      task: { strictness: "sketch", tools: [], hints: "none" },
    });
    const file = screen.getByLabelText("Name of its file");
    await userEvent.clear(file);
    await userEvent.type(file, "low tide{Enter}");
    expect(screen.getByRole("alert")).toHaveTextContent('"low tide" cannot be a name');
  });
});

describe("what it is worth", () => {
  it("is told in figures, with the habits it can reveal by name", async () => {
    show(withWalls());
    expect(await screen.findByText("6 marks to place.")).toBeVisible();
    expect(screen.getByText(/^At the farthest, [BC]\.\w+, 1 mm of paper means \d+ mm across and/)).toBeVisible();
    expect(screen.getByText(/^Beside the app's own exercises of whole sets, level 1:/)).toBeVisible();
    const habits = within(screen.getByRole("list", { name: "Habits it can reveal" })).getAllByRole("listitem");
    expect(habits.length).toBeGreaterThan(2);
    for (const habit of habits) expect(habit.textContent).toMatch(/^[A-Z]/);
  });
});

describe("what can be done with it", () => {
  it("is nothing for a student while there are faults, which are said", () => {
    show(createDesk("m"));
    expect(screen.getByText("To be mended first:")).toBeVisible();
    for (const name of ["Try it", "Demonstrate it", "Print it", "Set it as homework", "Link for students"])
      expect(button(name)).toBeDisabled();
    expect(button("Save the file")).toBeEnabled();
  });

  it.each([
    ["Try it", "/practise/draft"],
    ["Demonstrate it", "/demonstrate/draft"],
    ["Print it", "/sheet/draft"],
  ])("opens a page on the very exercise: %s", async (name, page) => {
    const draft = show(withWalls());
    await press(name);
    const address = new URL(went.mock.calls[0]?.[0] ?? "", "http://here");
    expect(address.pathname).toBe(page);
    const text = takeUp(window.localStorage, address.searchParams.get("kept") ?? "");
    const reading = readDraft(text ?? "");
    expect(reading.ok && reading.draft).toEqual(draft());
  });

  it("passes the file on to Class in this window", async () => {
    show(withWalls());
    await press("Set it as homework");
    expect(went).toHaveBeenCalledWith("/class");
    expect(passedOn(windowShelf())?.title).toBe("New set");
    expect(readDraft(passedOn(windowShelf())?.text ?? "").ok).toBe(true);
  });

  it("puts all of it into a link, which goes when the plan changes", async () => {
    const store = withWalls();
    const draft = show(store);
    await press("Link for a colleague");
    const link = await screen.findByLabelText<HTMLInputElement>("The whole exercise is in this link");
    const { pathname, hash } = new URL(link.value);
    expect(pathname).toBe("/draft/copy");
    const unpacked = await unpackText(hash.slice("#link=".length));
    const reading = readDraft(unpacked.ok ? unpacked.text : "");
    expect(reading.ok && reading.draft).toEqual(draft());
    store.getState().apply({ edit: "add-point", at: [0, 2] });
    await waitFor(() => expect(screen.queryByLabelText("The whole exercise is in this link")).toBeNull());
  });

  it("opens a file as a plan of its own, and says what is wrong with one that is none", async () => {
    show(withWalls());
    const input = screen.getByLabelText("Open a file");
    await userEvent.upload(input, new File(["{"], "broken.json", { type: "application/json" }));
    expect(await screen.findByRole("alert")).toBeVisible();
    expect(went).not.toHaveBeenCalled();
  });
});

describe("versions", () => {
  it("are gone back to, and what was there is kept first", async () => {
    const store = withWalls();
    const draft = show(store);
    await userEvent.type(screen.getByLabelText("Name, if you like"), "Two walls");
    await press("Keep this version");
    const kept = draft();
    store.getState().apply({ edit: "add-point", at: [0, 2] });
    await userEvent.click(await screen.findByRole("button", { name: "Go back to it" }));
    await waitFor(() => expect(draft()).toEqual(kept));
    expect(await screen.findAllByRole("button", { name: "Go back to it" })).toHaveLength(2);
    expect(screen.getByText(/^Two walls,/)).toBeVisible();
  });
});
