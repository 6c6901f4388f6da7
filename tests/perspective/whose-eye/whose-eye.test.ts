import { describe, expect, it } from "vitest";
import type { WhoseEye } from "@/lib/perspective/whose-eye/eye-answer";
import type {
  DrawingLine,
  DrawingPlace,
  FloorRectangle,
  MarkedDrawing,
} from "@/lib/perspective/whose-eye/marked-drawing";
import { whoseEye } from "@/lib/perspective/whose-eye/whose-eye";
import { drawing } from "./drawn-stage";

const FOOT_M = 0.3048;
/** A foot of stage on paper at 1:48. */
const FOOT_MM = 6.35;

type Feet = readonly [number, number];

function mm([x, z]: Feet): DrawingPlace {
  return [x * FOOT_MM, z * FOOT_MM];
}

/**
 * By hand, in feet, for an eye 36 before the plaster line and 8 high, so d = 36, horizon 8, CVP 0. A place of the floor (x, y) is
 * drawn at x s, 8 - 8 s with s = 36 / (36 + y).
 */
function onFloor([x, y]: Feet): DrawingPlace {
  const s = 36 / (36 + y);
  return mm([x * s, 8 - 8 * s]);
}

function rectangle(places: readonly [Feet, Feet, Feet, Feet], proportion: number | null): FloorRectangle {
  return {
    corners: [onFloor(places[0]), onFloor(places[1]), onFloor(places[2]), onFloor(places[3])],
    proportion,
  };
}

/** 10 along the plaster line, 8 upstage. */
const SQUARE_ON: readonly [Feet, Feet, Feet, Feet] = [
  [-4, 4],
  [6, 4],
  [6, 12],
  [-4, 12],
];
/** Sides 5 (3 across and 4 upstage) and 10 (8 across the other way and 6 upstage): they vanish at 36 3/4 = 27 and -36 8/6 = -48. */
const TURNED: readonly [Feet, Feet, Feet, Feet] = [
  [0, 4],
  [3, 8],
  [-5, 14],
  [-8, 10],
];
/** Along the plaster line from the centre line to 10 ft. */
const RULE = { ends: [mm([0, 0]), mm([10, 0])] as DrawingLine, metres: 10 * FOOT_M, lies: "plaster line" as const };

type Told = Extract<WhoseEye, { readonly kind: "told" }>;

function told(marked: Partial<MarkedDrawing>): Told {
  const answer = whoseEye(drawing(marked), "ft-in");
  if (answer.kind !== "told") throw new Error(answer.say);
  return answer;
}

/** Figures in feet of the stage, null where untold. */
function feet({ figures }: Told) {
  const onPaper = (value: number | undefined) => (value === undefined ? null : value / FOOT_MM);
  const onStage = (value: number | undefined) => (value === undefined ? null : value / FOOT_M);
  return {
    horizon: onPaper(figures.horizon?.value),
    cvp: onPaper(figures.cvp?.value),
    d: onPaper(figures.distanceMm?.value),
    eyeHeight: onStage(figures.eyeHeight?.value),
    distance: onStage(figures.distance?.value),
    fromRectangle: onStage(figures.fromRectangle?.value),
  };
}

const close = (value: number) => expect.closeTo(value, 6);

describe("whose eye drew this?", () => {
  it("a rectangle seen square on gives horizon and CVP, not the distance, and says so", () => {
    const answer = told({ rectangle: rectangle(SQUARE_ON, null) });
    expect(feet(answer)).toEqual({
      horizon: close(8),
      cvp: close(0),
      d: null,
      eyeHeight: null,
      distance: null,
      fromRectangle: null,
    });
    expect(answer.untold[0]).toMatch(/not how far off the eye is/);
    expect(answer.untold[1]).toMatch(/no scale/);
  });

  it("its proportion, 10 to 8, gives the distance as well, on the paper", () => {
    const answer = told({ rectangle: rectangle(SQUARE_ON, 10 / 8) });
    expect(feet(answer)).toMatchObject({ horizon: close(8), cvp: close(0), d: close(36), eyeHeight: null });
    const again = told({
      rectangle: rectangle([SQUARE_ON[1], SQUARE_ON[2], SQUARE_ON[3], SQUARE_ON[0]], 8 / 10),
    });
    expect(feet(again)).toMatchObject({ d: close(36) });
  });

  it("ten feet of the plaster line's rule give all of it its size", () => {
    const answer = told({ rectangle: rectangle(SQUARE_ON, 10 / 8), length: RULE });
    expect(feet(answer)).toEqual({
      horizon: close(8),
      cvp: close(0),
      d: close(36),
      eyeHeight: close(8),
      distance: close(36),
      fromRectangle: close(40),
    });
    expect(answer.untold).toEqual([]);
    expect(answer.told).toContainEqual(
      expect.stringMatching(/^The eye is 8'-0" \(give or take .+\) above the floor\.$/),
    );
    expect(answer.told).toContainEqual(
      expect.stringMatching(/^It stands 36'-0" \(give or take .+\) before the plaster/),
    );
  });

  it("an upright of known length gives the eye's height even without the distance: the horizon cuts it at eye height", () => {
    // 14 high at 4 upstage: s = 0.9, from 0.8 to 8 + 6 x 0.9.
    const length = {
      ends: [mm([-9, 0.8]), mm([-9, 13.4])] as DrawingLine,
      metres: 14 * FOOT_M,
      lies: "upright" as const,
    };
    const answer = told({ rectangle: rectangle(SQUARE_ON, null), length });
    expect(feet(answer)).toMatchObject({ d: null, eyeHeight: close(8), distance: null });
  });

  it("a length along the plaster line's direction does so too, one that runs away needs the distance", () => {
    const across = {
      ends: [onFloor([-4, 4]), onFloor([6, 4])] as DrawingLine,
      metres: 10 * FOOT_M,
      lies: "floor" as const,
    };
    expect(feet(told({ rectangle: rectangle(SQUARE_ON, null), length: across })).eyeHeight).toEqual(close(8));
    const away = {
      ends: [onFloor([6, 4]), onFloor([6, 12])] as DrawingLine,
      metres: 8 * FOOT_M,
      lies: "floor" as const,
    };
    const open = told({ rectangle: rectangle(SQUARE_ON, null), length: away });
    expect(feet(open).eyeHeight).toBeNull();
    expect(open.untold.join(" ")).toMatch(
      /runs away from the viewer, and without the eye's distance it gives no scale/,
    );
    expect(feet(told({ rectangle: rectangle(SQUARE_ON, 1.25), length: away })).eyeHeight).toEqual(close(8));
  });

  it("a turned rectangle alone leaves the eye on a half circle: 75 ft across, so at most 37.5 ft off", () => {
    const answer = told({ rectangle: rectangle(TURNED, null) });
    expect(feet(answer)).toMatchObject({ horizon: close(8), cvp: null, d: null });
    expect(answer.distanceAtMostMm).toBeCloseTo(37.5 * FOOT_MM, 6);
    expect(answer.untold.join(" ")).toMatch(/can lie anywhere between .+ half circle .+ at most 238 mm/);
    expect(answer.rectangle).toEqual({ kind: "two-point" });
    expect(answer.sidesVanishAt[0]).toBeCloseTo(27 * FOOT_MM, 5);
    expect(answer.sidesVanishAt[1]).toBeCloseTo(-48 * FOOT_MM, 5);
  });

  it("its proportion, 5 to 10, puts the eye on its place: 36 = sqrt(27 x 48)", () => {
    expect(feet(told({ rectangle: rectangle(TURNED, 0.5) }))).toMatchObject({ cvp: close(0), d: close(36) });
  });

  it("and so do lines square to the plaster line; then its proportion is read off", () => {
    const square: DrawingLine[] = [
      [mm([-16, 0]), onFloor([-16, 10])],
      [mm([16, 0]), onFloor([16, 10])],
    ];
    const answer = told({ rectangle: rectangle(TURNED, null), parallels: [{ lines: square, bearingDeg: 90 }] });
    expect(feet(answer)).toMatchObject({ cvp: close(0), d: close(36) });
    expect(answer.figures.proportion?.value).toBeCloseTo(0.5, 9);
  });

  it("a right angle that cannot be one says so: both its vanishing points on one side of the CVP", () => {
    const square: DrawingLine[] = [
      [mm([-16, 0]), mm([7, 4])],
      [mm([60, 0]), mm([45, 4])],
    ]; // They meet at (30, 8), right of 27.
    const answer = told({ rectangle: rectangle(TURNED, null), parallels: [{ lines: square, bearingDeg: 90 }] });
    expect(feet(answer)).toMatchObject({ cvp: close(30), d: null });
    expect(answer.untold.join(" ")).toMatch(/cannot be right angles/);
  });

  it("lines at 45 degrees and lines square to the plaster line give CVP and distance: the distance point is d from the CVP", () => {
    const at = (bearingDeg: number, dx: number) => ({
      bearingDeg,
      lines: [-8, 2].map((x): DrawingLine => [mm([x, 0]), onFloor([x + dx * 9, 9])]),
    });
    expect(feet(told({ parallels: [at(90, 0), at(45, 1)] }))).toMatchObject({
      horizon: close(8),
      cvp: close(0),
      d: close(36),
    });
    expect(feet(told({ parallels: [at(135, -1), at(45, 1)] }))).toMatchObject({ cvp: close(0), d: close(36) });
    expect(feet(told({ parallels: [at(45, 1)] }))).toMatchObject({ horizon: close(8), cvp: null, d: null });
  });

  it("lines of an unknown direction give the horizon and no more; parallel ones not even that", () => {
    const walls = [{ bearingDeg: null, lines: [-8, 2].map((x): DrawingLine => [mm([x, 0]), onFloor([x + 4, 9])]) }];
    const answer = told({ parallels: walls });
    expect(feet(answer)).toMatchObject({ horizon: close(8), cvp: null, d: null });
    expect(answer.untold[0]).toMatch(/horizon alone does not tell/);
    const level = [{ bearingDeg: null, lines: [2, 5].map((z): DrawingLine => [mm([-8, z]), mm([8, z])]) }];
    const none = told({ parallels: level });
    expect(none.figures.horizon).toBeNull();
    expect(none.told).toEqual([]);
    expect(none.untold).toHaveLength(1);
    expect(told({}).untold).toEqual(none.untold);
  });

  it("gives no figure that a slip would double: short lines far from where they meet", () => {
    const short = [{ bearingDeg: 45, lines: [-2, 2].map((x): DrawingLine => [mm([x, 0]), onFloor([x + 2.5, 2.5])]) }];
    const square = { bearingDeg: 90, lines: [-16, 16].map((x): DrawingLine => [mm([x, 0]), onFloor([x, 20])]) };
    const answer = told({ parallels: [...short, square], sigmaMm: 0.02 });
    const rough = told({ parallels: [...short, square], sigmaMm: 0.5 });
    expect(answer.figures.distanceMm?.value).toBeCloseTo(36 * FOOT_MM, 6);
    expect(rough.figures.distanceMm).toBeNull();
    expect(rough.figures.cvp).not.toBeNull();
  });

  const upright = (x: number, lean: number): DrawingLine => [mm([x, 1]), mm([x + lean, 13])];
  it.each([
    ["uprights that lean alike", { uprights: [upright(-9, 1), upright(9, 1)] }, "drawing is turned"],
    ["uprights that draw together", { uprights: [upright(-9, 1), upright(9, -1)] }, "uprights meet"],
    [
      "walls that meet at two heights",
      {
        parallels: [8, 11].map((z) => ({
          bearingDeg: null,
          lines: [1, 6].map((foot): DrawingLine => [mm([-16, foot]), mm([-8, foot + (z - foot) / 2])]),
        })),
      },
      "no one horizon",
    ],
    [
      "corners that cross",
      { rectangle: rectangle([SQUARE_ON[0], SQUARE_ON[2], SQUARE_ON[1], SQUARE_ON[3]], null) },
      "rectangle is no outline",
    ],
    [
      "a rectangle turned with its paper",
      { rectangle: { corners: [mm([-4, 0]), mm([6, 2]), mm([4, 4]), mm([-1, 3])] as const, proportion: null } },
      "no one horizon",
    ],
    [
      "a ceiling for a rectangle on the floor",
      { rectangle: { corners: [mm([-8, 14]), mm([8, 14]), mm([4, 11]), mm([-4, 11])] as const, proportion: null } },
      "rectangle over the horizon",
    ],
    [
      "a rectangle and walls that do not agree",
      {
        parallels: [{ bearingDeg: 90, lines: [-16, 16].map((x): DrawingLine => [mm([x, 0]), mm([x / 2, 1])]) }],
        rectangle: rectangle(SQUARE_ON, null),
      },
      "no one horizon",
    ],
  ] as const)("refuses %s", (_, marked, why) => {
    const answer = whoseEye(drawing(marked as Partial<MarkedDrawing>), "m");
    expect(answer).toMatchObject({ kind: "refused", why });
    if (answer.kind === "refused") expect(answer.say).toMatch(/^[A-Z].+\.$/);
  });

  it.each([
    { sigmaMm: 0 },
    { sigmaMm: Number.NaN },
    { length: { ...RULE, metres: -1 } },
    { rectangle: rectangle(SQUARE_ON, 0) },
  ])("is not asked of a drawing without size: %o", (marked) => {
    expect(() => whoseEye(drawing(marked), "m")).toThrow(/a finite number above 0/);
  });

  it("lets uprights lean by a hand's slip", () => {
    const uprights = [upright(-9, 0.02), upright(9, -0.02)];
    expect(told({ uprights, rectangle: rectangle(SQUARE_ON, null) }).figures.horizon).not.toBeNull();
  });
});
