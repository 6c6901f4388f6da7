import fc from "fast-check";
import { bench, describe } from "vitest";
import type { Board } from "@/lib/construction/board";
import { constructPoint } from "@/lib/construction/construct-point";
import { boardOf } from "@/lib/exercise/exercise-board";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { namePoints } from "@/lib/plan/name-points";
import type { Plan } from "@/lib/plan/plan";
import type { PicturePoint } from "@/lib/stage/frame";
import { anyBoard } from "../construction/any-board";
import { faultsOf, projected } from "../construction/referee";

const WALLS = 40;
const RANDOM_PLANS = 100;

/** Forty walls of various lengths in a zigzag over the stage, a window in each. */
const plan: Plan = {
  corners: new Map(
    Array.from({ length: WALLS + 1 }, (_, i) => [`C${i}`, [0.3 * i - 6, i % 2 === 0 ? 5 + 0.05 * i : 2 + 0.1 * i]]),
  ),
  walls: Array.from({ length: WALLS }, (_, i) => ({
    id: `W${i}`,
    from: `C${i}`,
    to: `C${i + 1}`,
    height: 3.6,
    thickness: 0,
    base: 0,
    onstage: "right",
    openings: [
      {
        id: "window",
        kind: "window",
        at: 0.5,
        width: 0.6,
        sill: 0.8,
        head: 2,
        depth: null,
        leaves: 1,
        hinge: null,
        swing: "offstage",
      },
    ],
  })),
  platforms: [],
  stairs: [],
  furniture: [],
  columns: [],
  masking: [],
};
const empty: Board = {
  plan,
  stage: { opening: { width: 11, height: 6 }, depth: 10, apron: 1, rake: 0 },
  viewer: { distance: 11, eyeHeight: 2.4, offset: 0 },
  units: "m",
  scaleRatio: 48,
  placed: new Map(),
};

/** The board with two of every three of its points on the sheet. */
function mostlyDrawn(board: Board): Board {
  const placed = [...namePoints(board.plan, board.stage)]
    .filter((_, i) => i % 3 !== 0)
    .map(([name, { at }]): [string, PicturePoint] => [name, projected(board, at)]);
  return { ...board, placed: new Map(placed) };
}

function unplaced(board: Board): readonly string[] {
  return [...namePoints(board.plan, board.stage).keys()].filter((name) => !board.placed.has(name));
}

/** Of these points, how many each method serves; and how many have no construction, or one that the referee stops. */
function countMethods(boards: readonly (readonly [Board, readonly string[]])[]) {
  const methods = new Map<string, number>();
  let [points, failed] = [0, 0];
  for (const [board, names] of boards)
    for (const name of names) {
      points += 1;
      const result = constructPoint(board, name);
      const at = namePoints(board.plan, board.stage).get(name)?.at;
      if (!result.found || !at || faultsOf(board, result.construction, projected(board, at)).length > 0) failed += 1;
      const served = result.found ? result.construction.method.split(", ") : ["none"];
      for (const method of new Set(served)) methods.set(method, (methods.get(method) ?? 0) + 1);
    }
  return { points, failed, methods };
}

function report(title: string, { points, failed, methods }: ReturnType<typeof countMethods>): void {
  const rows = [...methods].sort(([, a], [, b]) => b - a);
  const share = (n: number) => `${((100 * n) / points).toFixed(1).padStart(5)} %`;
  console.log(
    [
      `Constructions of ${title}: ${points} points, ${failed} without a proof.`,
      "Share of points each method serves (a construction may use two):",
      ...rows.map(([method, n]) => `  ${share(n)}  ${method}`),
    ].join("\n"),
  );
}

const course = await loadExercises("exercises");
const courseBoards = course.flatMap((entry) => {
  if (!entry.ok) return [];
  const { given, marks } = entry.exercise.task;
  return marks.map((mark, i): readonly [Board, readonly string[]] => [
    boardOf(entry.exercise, [...given, ...marks.slice(0, i)]),
    [mark],
  ]);
});
report("the course's marks, each with the marks before it on the sheet", countMethods(courseBoards));
const random = fc.sample(anyBoard, { seed: 1435, numRuns: RANDOM_PLANS });
report(
  `${RANDOM_PLANS} random plans, empty and mostly drawn`,
  countMethods(random.flatMap((board) => [board, mostlyDrawn(board)].map((one) => [one, unplaced(one)] as const))),
);

/** Planned in turn, so that each run is of another point; the table's median is the median of a point. */
function takingTurns(board: Board): () => void {
  const names = unplaced(board);
  let next = 0;
  return () => {
    constructPoint(board, names[next % names.length] as string);
    next += 1;
  };
}

/** Median time to plan a point's construction, milliseconds, over all the points of a board a few times. */
function medianMs(board: Board): number {
  const names = unplaced(board);
  const times = Array.from({ length: 4 }, () => names)
    .flat()
    .map((name) => {
      const start = performance.now();
      constructPoint(board, name);
      return performance.now() - start;
    })
    .sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)] as number;
}
const medians = [empty, mostlyDrawn(empty)].map((board) => `${medianMs(board).toFixed(2)} ms`);
console.log(
  `Planning a construction on ${WALLS} walls, median of a point: ${medians[0]} on an empty sheet, ${medians[1]} on one mostly drawn.`,
);

describe(`planning a construction on a plan of ${WALLS} walls`, () => {
  bench("on an empty sheet", takingTurns(empty));
  bench("on a sheet mostly drawn", takingTurns(mostlyDrawn(empty)));
});
