import { describe, expect, it } from "vitest";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { toleranceForDistance, tolerances } from "@/lib/exercise/tolerance";
import { type Change, readTideOffice } from "../fixtures/tide-office";

const FOOT_M = 0.3048;

/** Paper millimetres of picture feet at 1 to `ratio`. */
function paperMm(feet: number, ratio = 48): number {
  return (feet * FOOT_M * 1000) / ratio;
}

/** Two sigma of a pencil's width and a share of the distance judged, by the design's own words. */
function twoSigma(mm: number, weber: number, most: number): number {
  return Math.min(2 * Math.sqrt(0.25 + (weber * mm) ** 2), most);
}

function toleranceOf(name: string, scaleRatio: number | undefined, ...changes: readonly Change[]): number {
  const exercise = readTideOffice(...changes);
  return tolerances(exercise, exercisePoints(exercise), scaleRatio).get(name) ?? Number.NaN;
}

describe("toleranceForDistance", () => {
  // 2 sqrt(0.5^2 + (w d)^2), at most so many mm; w and caps as the design gives them
  it.each([
    [0, "thumbnail", 1],
    [10, "thumbnail", 2 * Math.sqrt(0.25 + 0.36)],
    [20, "thumbnail", 2 * Math.sqrt(0.25 + 1.44)],
    [24, "thumbnail", 3],
    [1000, "thumbnail", 3],
    [0, "sketch", 1],
    [20, "sketch", 2 * Math.sqrt(0.25 + 0.36)],
    [100, "sketch", 2],
    [0, "drafted", 1],
    [5, "drafted", 1],
    [100, "drafted", 1],
  ] as const)("over %s mm, %s, is %s mm", (mm, strictness, expected) => {
    expect(toleranceForDistance(mm, strictness)).toBeCloseTo(expected, 12);
  });
});

describe("the tolerance of a mark", () => {
  // Picture feet: s = 36 / (36 + y), X = x s, Z = 8 + (z - 8) s.
  // B.foot (-7, 14): s = 0.72, X = -5.04, Z = 2.24; the nearest known point is the rule's tick at -5 ft.
  const overB = Math.hypot(0.04, 2.24);
  // A.foot (-12, 3): s = 36/39, X = -11.0769, Z = 0.6154; nearest the tick at -11 ft.
  const overA = Math.hypot((12 * 36) / 39 - 11, 8 - (8 * 36) / 39);

  it("is the example's own, 1.98 mm at B.foot", () => {
    expect(toleranceOf("B.foot", undefined)).toBeCloseTo(1.978, 3);
  });

  it.each([
    ["A.foot", paperMm(overA), []],
    ["B.foot", paperMm(overB), []],
    // C.foot (9, 14): X = 6.48, Z = 2.24
    ["C.foot", paperMm(Math.hypot(0.48, 2.24)), [["/task/marks", ["C.foot"]]]],
    // the farther a plan goes back, the nearer it comes to the corner of the back wall: (16, 26), s = 36/62
    [
      "C.foot",
      paperMm((0.5 * 36) / 62),
      [
        ["/plan/corners/C", [15.5, 26]],
        ["/task/marks", ["C.foot"]],
      ],
    ],
    // a given point: B.foot's own neighbour half a foot to the left on the paper
    [
      "B.foot",
      paperMm(0.36),
      [
        ["/plan/corners/Q", [-7.5, 14]],
        ["/task/given", ["Q.foot"]],
      ],
    ],
    // a mark asked before it, placed or not
    [
      "B.foot",
      paperMm(0.36),
      [
        ["/plan/corners/Q", [-7.5, 14]],
        ["/task/marks", ["Q.foot", "B.foot"]],
      ],
    ],
    // one asked after it is not there yet
    [
      "B.foot",
      paperMm(overB),
      [
        ["/plan/corners/Q", [-7.5, 14]],
        ["/task/marks", ["B.foot", "Q.foot"]],
      ],
    ],
    // a point that is neither given nor asked is not there at all
    ["B.foot", paperMm(overB), [["/plan/corners/Q", [-7.5, 14]]]],
    // the CVP, at (0, 8): a window's corner half a foot above it at s = 0.72
    [
      "D.top",
      paperMm(Math.hypot(0.36, 0.36)),
      [
        ["/plan/corners/D", [0.5, 14]],
        ["/plan/corners/F", [2, 14]],
        ["/plan/walls/4", { id: "W5", from: "D", to: "F", height: 8.5 }],
        ["/task/marks", ["D.top"]],
      ],
    ],
    // a corner of the opening, (-16, 20)
    [
      "D.top",
      paperMm(Math.hypot(1, 1)),
      [
        ["/plan/corners/D", [-15, 0]],
        ["/plan/corners/F", [-14, 0]],
        ["/plan/walls/4", { id: "W5", from: "D", to: "F", height: 19 }],
        ["/task/marks", ["D.top"]],
      ],
    ],
    // on a tick: a pencil's width, two sigma
    [
      "Q.foot",
      0,
      [
        ["/plan/corners/Q", [3, 0]],
        ["/task/marks", ["Q.foot"]],
      ],
    ],
    // between two ticks
    [
      "Q.foot",
      paperMm(0.5),
      [
        ["/plan/corners/Q", [3.5, 0]],
        ["/task/marks", ["Q.foot"]],
      ],
    ],
    // outside the opening there is no rule: 2 ft from its last tick, which is the opening's corner
    [
      "Q.foot",
      paperMm(2),
      [
        ["/plan/corners/Q", [18, 0]],
        ["/task/marks", ["Q.foot"]],
      ],
    ],
  ] as readonly (readonly [string, number, readonly Change[]])[])("at %s is judged over %s mm", (name, mm, changes) => {
    expect(toleranceOf(name, undefined, ...changes)).toBeCloseTo(twoSigma(mm, 0.06, 3), 9);
    const sketch = toleranceOf(name, undefined, ...changes, ["/task/strictness", "sketch"]);
    expect(sketch).toBeCloseTo(twoSigma(mm, 0.03, 2), 9);
    const drafted = toleranceOf(name, undefined, ...changes, ["/task/strictness", "drafted"]);
    expect(drafted).toBeCloseTo(twoSigma(mm, 0.01, 1), 9);
  });

  it("judges metric files by half metres of the rule", () => {
    // plaster line, x = 1.2 m: the nearest tick stands at 1 m; 200 mm at 1:48
    const changes: readonly Change[] = [
      ["/units", "m"],
      ["/plan/corners/Q", [1.2, 0]],
      ["/task/marks", ["Q.foot"]],
    ];
    expect(toleranceOf("Q.foot", undefined, ...changes)).toBeCloseTo(twoSigma(200 / 48, 0.06, 3), 9);
  });

  it("follows the scale of the sheet that was drawn on", () => {
    expect(toleranceOf("B.foot", 96)).toBeCloseTo(twoSigma(paperMm(overB, 96), 0.06, 3), 9);
    expect(toleranceOf("B.foot", 24)).toBeCloseTo(twoSigma(paperMm(overB, 24), 0.06, 3), 9);
  });

  it("leaves out what is behind the eye", () => {
    expect(toleranceOf("Q.foot", undefined, ["/plan/corners/Q", [0, -40]], ["/task/marks", ["Q.foot"]])).toBeNaN();
  });
});
