import { readFileSync } from "node:fs";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { createPost } from "@/app/_parts/hand-ins/post";
import { keptWaiting } from "@/app/_parts/hand-ins/waiting";
import { keptAttempt } from "@/app/_parts/kept-work/keep";
import { createPractice } from "@/app/practise/[id]/attempt-store";
import { type Homework, homeworkDesk } from "@/app/practise/[id]/work-desk";
import type { MarkSet } from "@/lib/exercise/marks";
import { readExercise } from "@/lib/exercise/read-exercise";

const reading = readExercise(readFileSync("exercises/walls/01-square-and-parallel.json", "utf8"));
if (!reading.ok) throw new Error("The course cannot be read.");
const { exercise } = reading;
const count = exercise.task.marks.length;

const homework = (other: Partial<Homework> = {}): Homework => ({
  itemId: "item",
  memberId: "wim",
  title: "Week one",
  held: false,
  dueAt: null,
  attemptsLeft: null,
  last: null,
  ...other,
});

function open(other: Partial<Homework> = {}) {
  const desk = homeworkDesk(homework(other), createPost());
  const practice = createPractice(exercise, () => new Date("2026-11-25T09:00:00.000Z"), desk);
  practice.getState().open();
  return practice;
}

const records = () => Object.keys(window.localStorage).filter((key) => key.startsWith("plasterline.record"));

beforeEach(() => {
  window.localStorage.clear();
  vi.stubGlobal("fetch", async () => {
    throw new TypeError("no network");
  });
});

describe("homework on the drawing board", () => {
  it("with corrections at once is corrected mark by mark, then handed in once and kept in the record", () => {
    const practice = open();
    for (let i = 0; i < count; i++) {
      practice.getState().move([i, 1], "mouse");
      practice.getState().commit();
      expect(practice.getState().attempt.correcting).toBe(true);
      expect(keptWaiting(window.localStorage)).toEqual([]);
      practice.getState().next();
    }
    practice.getState().next();
    const waiting = keptWaiting(window.localStorage);
    expect(waiting).toMatchObject([{ itemId: "item", memberId: "wim", refused: null }]);
    expect(waiting[0]?.marks.marks.map(({ point }) => point)).toEqual(exercise.task.marks);
    expect(records()).not.toEqual([]);
  });

  it("with corrections kept back only sets marks down, and tells no score in the record", () => {
    const practice = open({ held: true });
    for (let i = 0; i < count; i++) {
      practice.getState().commit();
      practice.getState().move([i, 1], "mouse");
      practice.getState().commit();
      expect(practice.getState().attempt).toMatchObject({ correcting: false, pending: null });
      expect(practice.getState().attempt.marks).toHaveLength(i + 1);
    }
    expect(keptWaiting(window.localStorage)).toHaveLength(1);
    expect(records()).toEqual([]);
  });

  it("is kept apart from the same exercise done for oneself, and from another student's", () => {
    const practice = open();
    practice.getState().move([1, 1], "mouse");
    practice.getState().commit();
    expect(keptAttempt(window.localStorage, exercise)).toBeNull();
    expect(open({ memberId: "tess" }).getState().attempt.marks).toEqual([]);
    expect(open().getState().attempt.marks).toHaveLength(1);
  });

  it("handed in from another device shows that result once it may be seen", () => {
    const marks = exercise.task.marks.map((point) => ({ point, at: [1, 1] as const }));
    const set = {
      format: "plasterline.marks/1",
      exercise: exercise.id,
      marks,
      hints: { [String(exercise.task.marks[0])]: 1 },
    };
    const last = { receivedAt: "2026-11-25T09:00:00.000Z", late: false, marks: set as unknown as MarkSet };
    expect(open({ last }).getState().attempt).toMatchObject({ marks, hints: set.hints, correcting: false });
    expect(open({ held: true, last: { ...last, marks: null } }).getState().attempt.marks).toEqual([]);
  });
});
