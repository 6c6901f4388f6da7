import { describe, expect, it } from "vitest";
import {
  type Attempt,
  addLine,
  beginMove,
  commitMark,
  goOn,
  isFinished,
  moveMark,
  newAttempt,
  removeLine,
  stepOf,
  undoMove,
} from "@/app/_progress/attempt";
import {
  bringBack,
  copyProgress,
  erase,
  keepAttempt,
  keepRecords,
  keptAttempt,
  keptRecords,
  type Shelf,
} from "@/app/_progress/keep";
import { readAttempt } from "@/app/_progress/read-attempt";
import { recordRun } from "@/app/_progress/record";

const ASKED = ["A.foot", "B.foot"];
const EXERCISE = { id: "trial", version: 3 };

function shelf(room = Number.POSITIVE_INFINITY): Shelf {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => {
      if (value.length > room) throw new DOMException("full", "QuotaExceededError");
      kept.set(key, value);
    },
    removeItem: (key) => void kept.delete(key),
    key: (index) => [...kept.keys()][index] ?? null,
    get length() {
      return kept.size;
    },
  };
}

function placed(attempt: Attempt, at: readonly [number, number]): Attempt {
  return moveMark(beginMove(attempt), at, "mouse");
}

describe("an attempt", () => {
  it("goes from placing to a correction to the next point to its end", () => {
    const first = commitMark(placed(newAttempt(EXERCISE), [1, 2]), ASKED);
    expect(first.marks).toEqual([{ point: "A.foot", at: [1, 2], with: "mouse" }]);
    expect([first.correcting, stepOf(first)]).toEqual([true, 0]);
    const second = goOn(first);
    expect([stepOf(second), isFinished(second, ASKED)]).toEqual([1, false]);
    expect(isFinished(goOn(commitMark(placed(second, [0, 1]), ASKED)), ASKED)).toBe(true);
  });

  it("sets down nothing where nothing was placed, and moves nothing during a correction", () => {
    const empty = newAttempt(EXERCISE);
    expect(commitMark(empty, ASKED)).toBe(empty);
    const corrected = commitMark(placed(empty, [1, 2]), ASKED);
    expect(moveMark(corrected, [5, 5], "keys")).toBe(corrected);
  });

  it("takes moves back one by one, to no mark at all", () => {
    const twice = placed(placed(newAttempt(EXERCISE), [1, 2]), [3, 4]);
    expect(undoMove(twice).pending).toEqual([1, 2]);
    expect(undoMove(undoMove(twice)).pending).toBeNull();
    expect(undoMove(newAttempt(EXERCISE)).pending).toBeNull();
  });

  it("numbers blue lines so that no number comes twice", () => {
    const line = { plane: "picture", from: [0, 0], to: [1, 1], through: ["a", "b"] } as const;
    const two = addLine(addLine(newAttempt(EXERCISE), line), line);
    expect(addLine(removeLine(two, 1), line).lines.map(({ id }) => id)).toEqual([2, 3]);
  });
});

describe("what is kept", () => {
  const attempt = commitMark(placed(newAttempt(EXERCISE), [1, 2]), ASKED);

  it("comes back the same, at the same version of the exercise only", () => {
    const kept = shelf();
    expect(keepAttempt(kept, attempt)).toBe(true);
    expect(keptAttempt(kept, EXERCISE)).toEqual(attempt);
    expect(keptAttempt(kept, { ...EXERCISE, version: 4 })).toBeNull();
  });

  it("says so when the storage is full", () => {
    expect(keepAttempt(shelf(10), attempt)).toBe(false);
  });

  it("comes back out of a copy after it was erased", () => {
    const kept = shelf();
    keepAttempt(kept, attempt);
    keepRecords(kept, recordRun({}, "trial", 80, "2026-01-01"));
    const copy = JSON.stringify(copyProgress(kept));
    erase(kept);
    expect(copyProgress(kept)).toMatchObject({ records: {}, attempts: [] });
    expect(bringBack(kept, copy)).toEqual({ ok: true });
    expect(keptAttempt(kept, EXERCISE)).toEqual(attempt);
    expect(keptRecords(kept).trial?.best).toBe(80);
  });

  it.each([
    "",
    "[]",
    "null",
    '{"format":"plasterline.progress/1"}',
    '{"format":"plasterline.progress/1","records":{"a":1},"attempts":[]}',
  ])("stays as it is when %j is brought back", (text) => {
    const kept = shelf();
    keepAttempt(kept, attempt);
    expect(bringBack(kept, text).ok).toBe(false);
    expect(keptAttempt(kept, EXERCISE)).toEqual(attempt);
  });

  it.each([
    { pending: [1, null] },
    { marks: [{ point: "A.foot", at: [1] }] },
    { correcting: true, marks: [] },
    { lines: [{ id: 1 }] },
    { pendingWith: "foot" },
    { format: "another" },
  ])("is refused with %j in it", (change) => {
    expect(readAttempt({ ...attempt, ...change })).toBeNull();
  });
});

describe("a record", () => {
  it("keeps the best and the last", () => {
    const runs = [60, 90, 70].reduce((records, score) => recordRun(records, "trial", score, "2026-01-01"), {});
    expect(runs).toEqual({ trial: { times: 3, best: 90, last: 70, on: "2026-01-01" } });
  });
});
