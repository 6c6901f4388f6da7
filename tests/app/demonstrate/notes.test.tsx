import { act, fireEvent, render, screen, within } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { sayElapsed } from "@/app/demonstrate/[id]/notes/clock";
import { Notes } from "@/app/demonstrate/[id]/notes/notes";
import { type Message, openTalk, type Showing } from "@/app/demonstrate/[id]/talk";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import { readTideOffice } from "../../fixtures/tide-office";

const exercise = readTideOffice(["/task", { kind: "plan-to-picture", marks: ["A.foot", "B.foot"] }]);
const steps = demonstrationSteps(exercise);
const BEGAN = 1_700_000_000_000;

/** Channels of one browser, told at once. */
class Channel {
  static readonly all: Channel[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  constructor(readonly name: string) {
    Channel.all.push(this);
  }
  postMessage(data: unknown) {
    for (const other of Channel.all) if (other !== this && other.name === this.name) other.onmessage?.({ data });
  }
  close() {
    Channel.all.splice(Channel.all.indexOf(this), 1);
  }
}

beforeEach(() => {
  vi.useFakeTimers();
  vi.setSystemTime(BEGAN + 65_000);
  vi.stubGlobal("BroadcastChannel", Channel);
});
afterEach(() => vi.useRealTimers());

/** The projected window, as far as the notes know of it. */
function project() {
  const heard: Message[] = [];
  let showing: Showing = { at: 0, blank: false, trying: "no", guesses: 0, startedAt: BEGAN };
  const talk = openTalk(
    exercise.id,
    (message) => {
      heard.push(message);
      if (message.kind === "ask") talk.send({ kind: "showing", showing });
    },
    window,
  );
  const show = (next: Partial<Showing>) => {
    showing = { ...showing, ...next };
    act(() => talk.send({ kind: "showing", showing }));
  };
  return { heard, show, talk };
}

describe("the notes window", () => {
  it("says plainly that the demonstration is not open, and where to open it; its presses do nothing", () => {
    render(<Notes exercise={exercise} />);
    act(() => vi.advanceTimersByTime(10_000));
    expect(screen.getByRole("status")).toHaveTextContent("The demonstration is not open in this browser.");
    expect(screen.getByRole("link", { name: "Open the demonstration" })).toHaveAttribute(
      "href",
      "/demonstrate/tide-office",
    );
    expect(screen.getByRole("button", { name: "On" })).toBeDisabled();
  });

  it("follows along: what is said now, the note, what comes next, the clock", () => {
    const { show, talk } = project();
    render(<Notes exercise={exercise} />);
    expect(screen.getByRole("status")).toHaveTextContent("The demonstration is open.");
    const index = steps.findIndex(({ point }) => point === "B.foot");
    show({ at: index });
    const now = within(screen.getByRole("region", { name: "On the screen now" }));
    expect(now.getByText(steps[index]?.sentence ?? "")).toBeVisible();
    const note = within(screen.getByRole("region", { name: "For you alone" }));
    expect(note.getByText(/^1 mm of paper here is/)).toBeVisible();
    expect(note.getByText(steps[index]?.note.ask ?? "")).toBeVisible();
    const next = within(screen.getByRole("region", { name: "Next step" }));
    expect(next.getByText(steps[index + 1]?.sentence ?? "")).toBeVisible();
    expect(next.getByRole("img")).toBeVisible();
    expect(document.querySelector("[data-clock]")).toHaveTextContent("1:05");
    act(() => vi.advanceTimersByTime(3000));
    expect(document.querySelector("[data-clock]")).toHaveTextContent("1:08");
    talk.close();
  });

  it("presses on, back, blank and try, by its buttons and by a remote's keys, and goes to a corner", () => {
    const { heard, show, talk } = project();
    render(<Notes exercise={exercise} />);
    for (const name of ["On", "Back", "Blank", "You try"]) fireEvent.click(screen.getByRole("button", { name }));
    for (const key of ["PageDown", "PageUp", "b", "."]) fireEvent.keyDown(document.body, { key });
    show({ trying: "waiting" });
    fireEvent.click(screen.getByRole("button", { name: "Show the true point" }));
    const presses = heard.flatMap((message) => (message.kind === "press" ? [message.press] : []));
    expect(presses).toEqual(["on", "back", "blank", "try", "on", "back", "blank", "blank", "show"]);
    const corner = steps.find(({ point }) => point === "B.foot")?.number ?? 0;
    fireEvent.change(screen.getByLabelText("Go to a corner"), { target: { value: String(corner) } });
    expect(heard.at(-1)).toEqual({ kind: "go", at: corner - 1 });
    talk.close();
  });

  it("says so when the demonstration closes, keeps its place, and takes it up when it is there again", () => {
    const { show, talk } = project();
    render(<Notes exercise={exercise} />);
    show({ at: 4 });
    act(() => talk.send({ kind: "bye", role: "demonstration" }));
    expect(screen.getByRole("status")).toHaveTextContent("is not open");
    expect(screen.getByText(steps[4]?.sentence ?? "")).toBeVisible();
    act(() => vi.advanceTimersByTime(2000));
    expect(screen.getByRole("status")).toHaveTextContent("The demonstration is open.");
    talk.close();
  });

  it.each([
    [0, "0:00"],
    [65_999, "1:05"],
    [3_725_000, "1:02:05"],
    [-5000, "0:00"],
  ])("shows %d ms as %s", (ms, words) => {
    expect(sayElapsed(ms)).toBe(words);
  });
});
