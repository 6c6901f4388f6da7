import { describe, expect, it } from "vitest";
import type { Board } from "@/lib/construction/board";
import type { Construction, Step } from "@/lib/construction/step";
import { faultsOf, projected } from "./referee";

/**
 * A stage 8 m wide and 8 m deep, an eye 8 m before it and 2 m up. The point (1, 4, 0) by hand: s = 8/12, so X = 2/3 and
 * Z = 2 - 2 x 2/3 = 2/3.
 */
const board: Board = {
  plan: {
    corners: new Map([["Q", [1, 4]]]),
    walls: [],
    platforms: [],
    stairs: [],
    furniture: [],
    columns: [],
    masking: [],
  },
  stage: { opening: { width: 8, height: 5 }, depth: 8, apron: 1, rake: 0 },
  viewer: { distance: 8, eyeHeight: 2, offset: 0 },
  units: "m",
  scaleRatio: 50,
  placed: new Map(),
};
const truth = [2 / 3, 2 / 3] as const;

const say = "Do it.";
const honest: readonly Step[] = [
  { do: "measure", on: "plaster line", from: "centre line", length: 1, at: [1, 0], say },
  {
    do: "line",
    through: [
      [1, 0],
      [0, 2],
    ],
    toward: "centre vanishing point",
    say,
  },
  { do: "measure", on: "plaster line", from: 1, length: -4, at: [-3, 0], say },
  {
    do: "line",
    through: [
      [-3, 0],
      [8, 2],
    ],
    toward: "distance point",
    say,
  },
  { do: "meet", lines: [2, 4], at: [2 / 3, 2 / 3], say },
];

function faults(change: (steps: Step[]) => void): readonly string[] {
  const steps = [...honest];
  change(steps);
  const construction: Construction = { point: "Q.foot", method: "distance point", steps };
  return faultsOf(board, construction, truth);
}

describe("the referee", () => {
  it("projects as the hand does", () => {
    expect(projected(board, [1, 4, 0])[0]).toBeCloseTo(2 / 3, 12);
    expect(projected(board, [1, 4, 0])[1]).toBeCloseTo(2 / 3, 12);
  });

  it("passes an honest construction", () => {
    expect(faults(() => {})).toEqual([]);
  });

  it.each<[string, (steps: Step[]) => void, string]>([
    [
      "a line through the projected point",
      (steps) => {
        steps[3] = {
          do: "line",
          through: [
            [2 / 3, 2 / 3],
            [8, 2],
          ],
          toward: "distance point",
          say,
        };
      },
      "which is not on the sheet",
    ],
    [
      "an upright that leans",
      (steps) => {
        steps[3] = {
          do: "line",
          through: [
            [1, 0],
            [0.9, 1],
          ],
          toward: "upright",
          say,
        };
      },
      "which is not on the sheet",
    ],
    [
      "a length that is not what it says",
      (steps) => {
        steps[2] = { do: "measure", on: "plaster line", from: 1, length: -4.1, at: [-3, 0], say };
      },
      "is not the length it says",
    ],
    [
      "a measure that begins in the air",
      (steps) => {
        steps.push({ do: "measure", on: "upright", from: 5, length: 1, at: [2 / 3, 5 / 3], say });
      },
      "does not begin on the plaster line",
    ],
    [
      "a crossing that is put elsewhere",
      (steps) => {
        steps[4] = { do: "meet", lines: [2, 4], at: [2 / 3, 2 / 3 + 1e-8], say };
      },
      "is not where its lines cross",
    ],
    [
      "a crossing of a later line",
      (steps) => {
        steps[4] = { do: "meet", lines: [2, 6], at: [2 / 3, 2 / 3], say };
      },
      "is of lines that are not drawn",
    ],
    [
      "a mark of a point that is not there",
      (steps) => {
        steps[4] = { do: "mark", at: [2 / 3, 2 / 3], say };
      },
      "names a point that is not on the sheet",
    ],
    [
      "a measuring point of no wall",
      (steps) => {
        steps[3] = {
          do: "line",
          through: [
            [-3, 0],
            [3.3, 2],
          ],
          toward: "measuring point",
          say,
        };
      },
      "which is not on the sheet",
    ],
    ["an end beside the point", (steps) => void steps.pop(), "the last step puts down no point"],
    ["a point elsewhere", (steps) => void steps.push({ do: "mark", at: [1, 0], say }), "from the projection"],
    [
      "a figure that is no number",
      (steps) => {
        steps[4] = { do: "meet", lines: [2, 4], at: [Number.NaN, 0], say };
      },
      "has a figure that is no number",
    ],
  ])("stops %s", (_, change, what) => {
    expect(faults(change).join("\n")).toContain(what);
  });
});
