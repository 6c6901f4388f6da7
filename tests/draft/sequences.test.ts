import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Draft } from "@/lib/draft/draft";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { edit, type History, redo, startHistory, undo } from "@/lib/draft/history";
import { readDraft } from "@/lib/draft/read-draft";
import { writeDraft } from "@/lib/draft/write-draft";
import { orderMarks } from "@/lib/exercise/order-marks";
import { readExercise } from "@/lib/exercise/read-exercise";
import { checkIds } from "@/lib/exercise/sense-sizes";
import { namePoints } from "@/lib/plan/name-points";
import { seeded } from "../seeded";
import { anyMaking, anyStart } from "./any-edit";
import type { Making } from "./making";
import { expectSameDraft } from "./same-draft";

const makings = fc.array(anyMaking, { minLength: 1, maxLength: 24, size: "max" });

/** The file of a draft, as it is saved. */
function fileOf(draft: Draft): string {
  return JSON.stringify(writeDraft(draft));
}

function run(draft: Draft, list: readonly Making[]): Draft {
  return list.reduce((before, make) => {
    const edited = applyEdit(before, make(before));
    return edited.ok ? edited.draft : before;
  }, draft);
}

describe("any sequence of edits", () => {
  it("leaves a file that reads back to the same draft, within a millionth of a metre", () => {
    fc.assert(
      fc.property(anyStart, makings, (start, list) => {
        const draft = run(start, list);
        const reading = readDraft(fileOf(draft));
        expect(reading.ok, reading.ok ? "" : JSON.stringify(reading.problems)).toBe(true);
        if (reading.ok) expectSameDraft(reading.draft, draft);
        expect(readExercise(fileOf(draft)).ok).toBe(true);
      }),
      seeded,
    );
  });

  it("leaves nothing dangling: walls have their corners, names are given once, marks and given points are there", () => {
    fc.assert(
      fc.property(anyStart, makings, (start, list) => {
        const { exercise, marksBy } = run(start, list);
        const { plan, stage, viewer, task } = exercise;
        expect(plan.walls.flatMap(({ from, to }) => [from, to]).filter((corner) => !plan.corners.has(corner))).toEqual(
          [],
        );
        expect(checkIds(plan)).toEqual([]);
        const points = namePoints(plan, stage);
        expect([...task.marks, ...task.given].filter((name) => !points.has(name))).toEqual([]);
        expect(new Set(task.marks).size).toBe(task.marks.length);
        if (marksBy === "order")
          expect(task.marks).toEqual(orderMarks(points, { stage, viewer, given: task.given, kind: task.kind }));
      }),
      seeded,
    );
  });

  it("undone to the end gives the first file, and done again the last", () => {
    fc.assert(
      fc.property(anyStart, makings, (start, list) => {
        const first = startHistory(start);
        const last = list.reduce(editing, first);
        const steps = last.past.length;
        const back = repeat(undo, steps, last);
        expect(fileOf(back.draft)).toBe(fileOf(first.draft));
        expect(undo(back)).toBe(back);
        const again = repeat(redo, steps, back);
        expect(fileOf(again.draft)).toBe(fileOf(last.draft));
        expect(redo(again)).toBe(again);
      }),
      seeded,
    );
  });

  it("mixed with undos and redos stands where the steps that were left standing lead", () => {
    const walk = fc.array(
      fc.oneof({ arbitrary: anyMaking, weight: 3 }, fc.constant("undo" as const), fc.constant("redo" as const)),
      { maxLength: 24, size: "max" },
    );
    fc.assert(
      fc.property(anyStart, walk, (start, list) => {
        let history = startHistory(start);
        // Kept apart: every draft that was come to, by number of steps, with the files they had at the time.
        let files = [fileOf(start)];
        let at = 0;
        for (const step of list) {
          if (step === "undo") {
            history = undo(history);
            at = Math.max(0, at - 1);
          } else if (step === "redo") {
            history = redo(history);
            at = Math.min(files.length - 1, at + 1);
          } else {
            const edited = edit(history, step(history.draft));
            if (!edited.ok || edited.history === history) continue;
            history = edited.history;
            files = [...files.slice(0, at + 1), fileOf(history.draft)];
            at += 1;
          }
          expect(fileOf(history.draft)).toBe(files[at]);
          expect(history.past.length).toBe(at);
          expect(history.future.length).toBe(files.length - 1 - at);
        }
      }),
      seeded,
    );
  });
});

function editing(history: History, make: Making): History {
  const edited = edit(history, make(history.draft));
  return edited.ok ? edited.history : history;
}

function repeat(step: (history: History) => History, times: number, history: History): History {
  return Array.from({ length: times }).reduce<History>(step, history);
}
