import { fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { keptWaiting } from "@/app/_parts/hand-ins/waiting";
import type { Answer, ToWorker } from "@/app/_photo/worker/messages";
import type { Due, Homework } from "@/app/check/check-context";
import { CheckDrawing } from "@/app/check/check-drawing";
import { keptCheck } from "@/app/check/kept-check";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import { readSheetCode } from "@/lib/sheet/sheet-code";
import { courseExercise } from "../../browser/drive";
import { readAs } from "./read-as";

const exercise = courseExercise("square-and-parallel");
const sheet = layOutPracticeSheet(exercise, { paper: "letter" });
if (!sheet) throw new Error("The sheet has no layout.");
const reading = readSheetCode(sheet.code);
if (reading.kind !== "read") throw new Error("The sheet's own code cannot be read.");
const { code } = reading;
const [, second = "", third = ""] = exercise.task.marks;

const replace = vi.hoisted(() => vi.fn());
vi.mock("next/navigation", () => ({ useRouter: () => ({ replace }) }));

const shown = { picture: new Blob(["p"], { type: "image/jpeg" }), width: 100, height: 130, scale: 20 };
const FOUND: Answer = { kind: "sheet", code, residualMm: 0.06, seen: 8, shown };

/** Answers as the worker would, from a list; notes what it was asked. */
function workerThat(answers: readonly Answer[]): { readonly asked: ToWorker[] } {
  const asked: ToWorker[] = [];
  const left = [...answers];
  class FakeWorker {
    onmessage: ((event: { data: unknown }) => void) | null = null;
    postMessage(message: ToWorker) {
      asked.push(message);
      const answer = left.shift();
      queueMicrotask(() =>
        this.onmessage?.({ data: answer ? { id: message.id, answer } : { id: message.id, failed: "none left" } }),
      );
    }
    terminate() {}
  }
  vi.stubGlobal("Worker", FakeWorker);
  return { asked };
}

type Shown = { readonly homework?: Homework | null; readonly due?: readonly Due[]; readonly given?: Exercise | null };

function show({ homework = null, due = [], given = null }: Shown = {}) {
  const page = (its: Exercise | null, asked: string | null) => (
    <CheckDrawing exercise={its} asked={asked} catalogue={[]} due={due} homework={homework} />
  );
  const view = render(page(given, given?.id ?? null));
  // The server gives the exercise that the next address names.
  replace.mockImplementation(() => setTimeout(() => view.rerender(page(exercise, exercise.id))));
  return view;
}

async function choose() {
  const file = new File(["photograph"], "sheet.jpg", { type: "image/jpeg" });
  await userEvent.upload(screen.getByLabelText("Choose a photograph"), file);
}

beforeEach(() => {
  window.localStorage.clear();
  replace.mockReset();
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe() {}
      disconnect() {}
    },
  );
  vi.stubGlobal("matchMedia", () => ({ matches: false }));
  vi.stubGlobal("isSecureContext", false);
  vi.stubGlobal("fetch", async () => {
    throw new TypeError("no network");
  });
});

const homework: Homework = {
  itemId: "item",
  memberId: "wim",
  exerciseId: exercise.id,
  title: "Week one",
  attemptsLeft: null,
  held: true,
  dueAt: "2026-12-01T09:00:00.000Z",
  last: null,
};

describe("choosing a photograph", () => {
  it("over plain http offers no live view and says nothing of it; a phone's own camera opens from the file field", async () => {
    vi.stubGlobal("matchMedia", () => ({ matches: true }));
    show();
    const field = await screen.findByLabelText("Take a photograph");
    expect(field).toHaveAttribute("capture", "environment");
    expect(field).toHaveAttribute("accept", expect.stringContaining("image/*"));
    expect(screen.queryByText(/Open the camera/)).toBeNull();
    expect(document.body.textContent).not.toMatch(/secure|https|permission/i);
    expect(screen.getByLabelText("Choose a photograph")).not.toHaveAttribute("capture");
  });

  it("where the page is secure offers the live view", async () => {
    vi.stubGlobal("isSecureContext", true);
    vi.stubGlobal("navigator", { ...navigator, mediaDevices: { getUserMedia: () => new Promise(() => {}) } });
    show();
    expect(await screen.findByRole("button", { name: "Open the camera" })).toBeInTheDocument();
    vi.unstubAllGlobals();
  });

  it("takes one that is dropped, and one that is pasted", async () => {
    const file = new File(["photograph"], "sheet.HEIC", { type: "" });
    const refusal: Answer = { kind: "refused", say: "It is too dark.", remedy: "More light.", shown: null };
    const { asked } = workerThat([refusal, refusal]);
    show();
    fireEvent.drop(screen.getByRole("region", { name: "A photograph" }), { dataTransfer: { files: [file] } });
    expect(await screen.findByRole("heading", { name: "It is too dark." })).toHaveFocus();
    await userEvent.click(screen.getByRole("button", { name: "Back" }));
    fireEvent.paste(window, { clipboardData: { files: [file] } });
    await screen.findByText("More light.");
    expect(asked.map(({ ask }) => ask)).toEqual(["photo", "photo"]);
  });
});

describe("a photograph that cannot be read", () => {
  it("is refused in the reader's own words, and its corners can be set by hand where it could be opened", async () => {
    workerThat([{ kind: "refused", say: "Only three marks are seen.", remedy: "Step back.", shown }]);
    show();
    await choose();
    expect(await screen.findByText("Step back.")).toBeInTheDocument();
    await userEvent.click(screen.getByRole("button", { name: "Set its corners by hand" }));
    expect(screen.getByRole("heading", { name: "Where is the proscenium opening?" })).toHaveFocus();
    expect(screen.getByRole("button", { name: "Choose the exercise first" })).toHaveAttribute("aria-disabled", "true");
  });

  it("says so when the worker fails, without a word of a program", async () => {
    workerThat([]);
    show();
    await choose();
    expect(await screen.findByText("The photograph could not be read here.")).toBeInTheDocument();
  });
});

describe("confirming", () => {
  it("asks for each doubtful and missing point, marks nothing before, and shows the result after", async () => {
    const read = readAs(exercise, sheet, { [second]: "doubtful", [third]: "missing" });
    const { asked } = workerThat([FOUND, read]);
    show();
    await choose();
    await screen.findByRole("heading", { name: "Is this what you drew?" });
    expect(replace).toHaveBeenCalledWith(`/check?exercise=${exercise.id}`, { scroll: false });
    expect(asked.at(-1)).toMatchObject({ ask: "drawing", code });

    // The first that is open is on hand.
    expect(screen.getByText(/it may be another thing/)).toBeInTheDocument();
    const main = () => screen.getByRole("button", { name: /left$|^That is it/ });
    expect(main()).toHaveTextContent("Next to look at: 2 left");
    await userEvent.click(main());
    expect(screen.queryByLabelText("Result")).toBeNull();
    await userEvent.click(screen.getByRole("button", { name: "It is right" }));
    expect(screen.getByText(/Press on the photograph where it is drawn/)).toBeInTheDocument();
    await userEvent.click(screen.getByRole("button", { name: "Not drawn" }));
    expect(main()).toHaveTextContent("That is it: mark it");
    await userEvent.click(main());
    const result = await screen.findByRole("region", { name: "Result" });
    expect(result).toHaveTextContent("One point is not drawn and counts as 0.");
    expect(within(screen.getByRole("region", { name: "Table of marks" })).getAllByRole("row")).toHaveLength(
      exercise.task.marks.length,
    );
  });

  it("moves the point on hand by keys, takes it back, and keeps it through a reload", async () => {
    workerThat([FOUND, readAs(exercise, sheet)]);
    const { unmount } = show();
    await choose();
    await userEvent.click(await screen.findByRole("button", { name: /^2/ }));
    const before = keptCheck(window.localStorage, null)?.points[1];
    fireEvent.keyDown(screen.getByRole("application"), { key: "ArrowRight", shiftKey: true });
    const moved = keptCheck(window.localStorage, null)?.points[1];
    expect(moved?.state).toBe("moved");
    // Five millimetres of paper at the sheet's own scale.
    expect((moved?.at?.[0] ?? 0) - (before?.at?.[0] ?? 0)).toBeCloseTo((5 * sheet.scale.ratio) / 1000, 9);
    fireEvent.keyDown(screen.getByRole("application"), { key: "Backspace" });
    expect(keptCheck(window.localStorage, null)?.points[1]).toEqual(before);
    fireEvent.keyDown(screen.getByRole("application"), { key: "ArrowUp" });
    unmount();

    show({ given: exercise });
    expect(await screen.findByText("moved by you")).toBeInTheDocument();
    expect(keptCheck(window.localStorage, null)?.confirmed).toBe(false);
  });
});

describe("homework", () => {
  it("whose corrections wait is handed in as it is confirmed, and shows no mark", async () => {
    workerThat([FOUND, readAs(exercise, sheet)]);
    show({ homework, given: exercise });
    await choose();
    await userEvent.click(await screen.findByRole("button", { name: "That is it: hand it in" }));
    await screen.findByRole("heading", { name: "Every point is confirmed" });
    const waiting = keptWaiting(window.localStorage);
    expect(waiting).toMatchObject([{ itemId: "item", memberId: "wim" }]);
    expect(waiting[0]?.marks.marks.every((mark) => mark.with === "paper")).toBe(true);
    expect(document.body.textContent).not.toMatch(/of 100/);
    expect(Object.keys(window.localStorage).filter((key) => key.startsWith("plasterline.record"))).toEqual([]);
  });

  it("that is due is offered with the result, and handed in once", async () => {
    workerThat([FOUND, readAs(exercise, sheet)]);
    show({
      due: [
        { ...homework, itemId: "due" },
        { ...homework, itemId: "other", exerciseId: "another" },
      ],
    });
    await choose();
    await userEvent.click(await screen.findByRole("button", { name: "That is it: mark it" }));
    const press = await screen.findByRole("button", { name: "Hand it in for “Week one”" });
    await userEvent.click(press);
    await waitFor(() => expect(keptWaiting(window.localStorage)).toMatchObject([{ itemId: "due" }]));
    expect(screen.queryByRole("button", { name: /^Hand it in/ })).toBeNull();
    expect(screen.getByText(/will be sent when the network is back/)).toBeInTheDocument();
  });

  it("refuses the sheet of another exercise", async () => {
    workerThat([{ ...FOUND, code: { ...code, exercise: "another" } } as Answer]);
    show({ homework, given: exercise });
    await choose();
    expect(await screen.findByText(/The homework asks for/)).toBeInTheDocument();
    expect(replace).not.toHaveBeenCalled();
  });
});
