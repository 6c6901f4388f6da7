import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import type { Board } from "@/lib/construction/board";
import { constructPoint } from "@/lib/construction/construct-point";
import { boardOf } from "@/lib/exercise/exercise-board";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { namePoints } from "@/lib/plan/name-points";
import type { PicturePoint } from "@/lib/stage/frame";
import { seeded } from "../seeded";
import { anyBoard } from "./any-board";
import { faultsOf, projected } from "./referee";

// Every plan has some fifty points to construct and to referee: a busy laptop takes its time.
vi.setConfig({ testTimeout: 60_000 + 200 * seeded.numRuns });

/** What is wrong with the construction of each named point of a board, by name; only the points with something wrong. */
function wrongOn(board: Board, names: readonly string[]): Record<string, readonly string[]> {
  const points = namePoints(board.plan, board.stage);
  return Object.fromEntries(
    names.flatMap((name) => {
      const point = points.get(name);
      if (!point) return [[name, ["names no point"]]];
      const result = constructPoint(board, name);
      if (!result.found) return [[name, [result.reason]]];
      const faults = faultsOf(board, result.construction, projected(board, point.at));
      return faults.length > 0 ? [[name, faults]] : [];
    }),
  );
}

function namesOf(board: Board): readonly string[] {
  return [...namePoints(board.plan, board.stage).keys()];
}

/** The board with some of its named points on the sheet. */
function placing(board: Board, names: readonly string[]): Board {
  const points = namePoints(board.plan, board.stage);
  const placed = names.flatMap((name): (readonly [string, PicturePoint])[] => {
    const point = points.get(name);
    return point ? [[name, projected(board, point.at)]] : [];
  });
  return { ...board, placed: new Map(placed) };
}

const course = await loadExercises("exercises");

describe("every named point of the course", () => {
  it("is read from some exercises", () => {
    expect(course.length).toBeGreaterThan(5);
    expect(course.filter(({ ok }) => !ok)).toEqual([]);
  });

  it.each(course.flatMap((entry) => (entry.ok ? [[entry.file, entry.exercise] as const] : [])))(
    "%s: is proved from what is given, and from the marks before it",
    (_, exercise) => {
      const { given, marks } = exercise.task;
      const board = boardOf(exercise, given);
      expect(wrongOn(board, namesOf(board))).toEqual({});
      for (const [i, mark] of marks.entries())
        expect(wrongOn(boardOf(exercise, [...given, ...marks.slice(0, i)]), [mark])).toEqual({});
    },
  );
});

describe("every named point of any plan", () => {
  // A plan has some fifty points. A counterexample is told as it is: making it smaller would try them all a hundred times.
  const runs = { ...seeded, numRuns: Math.ceil(seeded.numRuns / 5), endOnFailure: true };

  it("is proved from an empty sheet", () => {
    fc.assert(
      fc.property(anyBoard, (board) => {
        expect(wrongOn(board, namesOf(board))).toEqual({});
      }),
      runs,
    );
  });

  it("is proved with some of the others on the sheet", () => {
    fc.assert(
      fc.property(
        anyBoard.chain((board) => fc.tuple(fc.constant(board), fc.subarray([...namesOf(board)]))),
        ([board, before]) => {
          const names = namesOf(board).filter((name) => !before.includes(name));
          expect(wrongOn(placing(board, before), names)).toEqual({});
        },
      ),
      runs,
    );
  });
});
