import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import { segmentsCross } from "@/lib/geometry/segments-cross";
import type { Vector2 } from "@/lib/geometry/vector";
import { furnitureCorners } from "@/lib/plan/furniture-corners";
import { wallLine } from "@/lib/plan/wall-line";
import { SHIPPED } from "./shipped";

const FOOT = 0.3048;
const INCH = 0.0254;
/** Metric sets are built to round millimetres beside the foot and the inch. */
const ROUNDING = 0.011;

type Size = { readonly what: string; readonly value: number };
type Range = {
  readonly what: string;
  readonly least: number;
  readonly most: number;
  readonly source: string;
  readonly of: (exercise: Exercise) => readonly Size[];
};

const openingsOf = ({ plan }: Exercise, kind: string) =>
  plan.walls.flatMap((wall) =>
    wall.openings
      .filter((one) => one.kind === kind)
      .map((opening) => ({ wall, opening, name: `${wall.id} ${opening.id}` })),
  );
const pieces = (exercise: Exercise, kinds: readonly string[]) =>
  exercise.plan.furniture
    .filter(({ kind }) => kinds.includes(kind))
    .map(({ id, height }) => ({ what: id, value: height }));

const RANGES: readonly Range[] = [
  {
    what: "the opening's width",
    least: 24 * FOOT,
    most: 42 * FOOT,
    source:
      "Pichel, On Building a Theatre (1920): 24 ft at least in a small theatre, 42 ft the widest by the rule of seven",
    of: ({ stage }) => [{ what: "opening", value: stage.opening.width }],
  },
  {
    what: "the opening's height",
    least: 12 * FOOT,
    most: 35 * FOOT,
    source: "Pichel (1920): 12 ft at least in a small theatre; 42 - 7 = 35 ft by the rule of seven",
    of: ({ stage }) => [{ what: "opening", value: stage.opening.height }],
  },
  {
    what: "distance over the opening's width",
    least: 0.866,
    most: 2,
    source: "Storey 1910, ch. III: a 60 degree view, and the French rule of two widths that he prefers",
    of: ({ stage, viewer }) => [{ what: "eye", value: viewer.distance / stage.opening.width }],
  },
  {
    what: "half the view",
    least: 0,
    most: 30,
    source: "TD&T Fall 1984, p. 11: 30 degrees each side, a 60 degree cone",
    of: ({ stage, viewer }) => {
      const widest = stage.opening.width / 2 + Math.abs(viewer.offset);
      return [{ what: "degrees to the farther jamb", value: (Math.atan2(widest, viewer.distance) * 180) / Math.PI }];
    },
  },
  {
    what: "eye height above the stage floor",
    least: 5.5 * FOOT,
    most: 10 * FOOT,
    source: "common practice, no source: a standing figure's eye as many teachers draw it, up to a balcony front",
    of: ({ viewer }) => [{ what: "eye", value: viewer.eyeHeight }],
  },
  {
    what: "wall heights",
    least: 10 * FOOT,
    most: 16 * FOOT,
    source: "northern.edu th241: stock flats of 12, 14, 16 ft; 10 ft by common practice, no source",
    of: ({ plan }) => plan.walls.map(({ id, height }) => ({ what: id, value: height })),
  },
  {
    what: "a door's leaf",
    least: 2.5 * FOOT,
    most: 3.5 * FOOT,
    source: "northern.edu th241: 3 x 7 ft in a flat; half a foot either way by common practice, no source",
    of: (exercise) =>
      openingsOf(exercise, "door").map(({ name, opening }) => ({ what: name, value: opening.width / opening.leaves })),
  },
  {
    what: "a door's height",
    least: 6.5 * FOOT,
    most: 8 * FOOT,
    source: "northern.edu th241: 7 ft; a pair of doors taller by common practice, no source",
    of: (exercise) =>
      openingsOf(exercise, "door").map(({ name, opening }) => ({ what: name, value: opening.head - opening.sill })),
  },
  {
    what: "a window's sill over what one stands on",
    least: 2 * FOOT,
    most: 3 * FOOT,
    source: "northern.edu th241: 2 ft; up to 3 ft by common practice, no source",
    of: (exercise) =>
      openingsOf(exercise, "window").map(({ name, opening }) => ({
        what: name,
        value: opening.sill - platformUnder(exercise),
      })),
  },
  {
    what: "a window's head over the floor",
    least: 6.5 * FOOT,
    most: 9 * FOOT,
    source: "northern.edu th241: 6 ft over a sill of 2 ft; common practice, no source, for the rest",
    of: (exercise) => openingsOf(exercise, "window").map(({ name, opening }) => ({ what: name, value: opening.head })),
  },
  {
    what: "a hearth's width",
    least: 3 * FOOT,
    most: 4 * FOOT,
    source: "northern.edu th241: 3 x 3 ft; a kitchen's wider by common practice, no source",
    of: (exercise) => openingsOf(exercise, "niche").map(({ name, opening }) => ({ what: name, value: opening.width })),
  },
  {
    what: "platform heights",
    least: 6 * INCH,
    most: 2 * FOOT,
    source: "common practice, no source",
    of: ({ plan }) => plan.platforms.map(({ id, height }) => ({ what: id, value: height })),
  },
  {
    what: "risers",
    least: 4 * INCH,
    most: 7 * INCH,
    source: "IBC 1011.5.2 as quoted: 4 in at least, 7 in at most",
    of: ({ plan }) => plan.stairs.map(({ id, riser }) => ({ what: id, value: riser })),
  },
  {
    what: "treads",
    least: 11 * INCH,
    most: 30 * INCH,
    source: "IBC 1011.5.2 as quoted: 11 in at least; 30 in for broad steps by common practice, no source",
    of: ({ plan }) => plan.stairs.map(({ id, tread }) => ({ what: id, value: tread })),
  },
  {
    what: "rakes",
    least: 1 / 48,
    most: 1 / 18,
    source: "Wikipedia, Rake (theatre): 1:48 to 1:18",
    of: ({ stage }) => (stage.rake === 0 ? [] : [{ what: "stage", value: stage.rake }]),
  },
  {
    what: "tables and desks",
    least: 28 * INCH,
    most: 31 * INCH,
    source: "TD&T Fall 1984, p. 11: a 30 in cube stands for the usual furniture",
    of: (exercise) => pieces(exercise, ["table", "desk"]),
  },
  {
    what: "seats",
    least: 14 * INCH,
    most: 19 * INCH,
    source: "TD&T Fall 1984, p. 11: a seat of 15 in; up to 19 in by common practice, no source",
    of: (exercise) => pieces(exercise, ["chair", "stool", "bench"]),
  },
];

/** Height of the platform that stands against a window's wall in two of the sets, else 0. */
function platformUnder({ id, plan }: Exercise): number {
  return ["the-tide-office", "the-upper-room"].includes(id) ? (plan.platforms[0]?.height ?? 0) : 0;
}

describe("sizes a scenic designer would believe", () => {
  it.each(RANGES)("$what ($source)", ({ least, most, of }) => {
    const all = SHIPPED.flatMap(({ exercise }) => of(exercise).map((size) => ({ ...size, in: exercise.id })));
    expect(all.length).toBeGreaterThan(0);
    expect(all.filter(({ value }) => value < least - ROUNDING || value > most + ROUNDING)).toEqual([]);
  });
});

const sides = (corners: readonly Vector2[]) =>
  corners.map((at, i) => [at, corners[(i + 1) % corners.length] as Vector2] as const);

/** The exercises that have any of what a rule is about. */
const having = (list: (exercise: Exercise) => readonly unknown[]) =>
  SHIPPED.filter(({ exercise }) => list(exercise).length > 0);

describe("sets that can be played in", () => {
  it.each(having(({ plan }) => plan.walls))("$file turns no wall's back to the house", ({ exercise: { plan } }) => {
    expect(plan.walls.filter((wall) => (wallLine(plan, wall)?.offstage[1] ?? -1) < -1e-9)).toEqual([]);
  });

  it.each(having((exercise) => openingsOf(exercise, "door")))(
    "$file opens its doors offstage, hinged upstage",
    (one) => {
      for (const { wall, opening } of openingsOf(one.exercise, "door")) {
        expect(opening.swing).toBe("offstage");
        const upstage = (wallLine(one.exercise.plan, wall)?.along[1] ?? 0) > 0 ? "end" : "start";
        expect([null, upstage]).toContain(opening.hinge);
      }
    },
  );

  it.each(having(({ plan }) => plan.furniture))("$file stands its furniture clear of walls and of itself", (one) => {
    const { plan, stage } = one.exercise;
    const lines = plan.walls.flatMap((wall) => wallLine(plan, wall) ?? []);
    const boxes = plan.furniture.map((item) => sides(furnitureCorners(item)));
    boxes.forEach((box, i) => {
      for (const side of box) {
        for (const { from, to } of lines) expect(segmentsCross(side, [from, to])).toBe(false);
        for (const other of boxes.slice(0, i).flat()) expect(segmentsCross(side, other)).toBe(false);
        expect(side[0][1]).toBeGreaterThan(0);
        expect(side[0][1]).toBeLessThan(stage.depth);
      }
    });
  });

  it.each(having(({ plan }) => plan.stairs))("$file lands every flight on a platform, or a riser below it", (one) => {
    const { stairs, platforms } = one.exercise.plan;
    for (const { steps, riser } of stairs) {
      const left = platforms.map(({ height }) => height - steps * riser);
      expect(left.some((more) => more > -1e-9 && more <= 7 * INCH)).toBe(true);
    }
  });

  it.each(having(({ plan }) => plan.masking.filter(({ kind }) => kind === "leg")))(
    "$file hides the tops of its legs behind a border or the opening's top",
    ({ exercise: { plan, stage, viewer } }) => {
      const seen = (height: number, y: number) =>
        viewer.eyeHeight + (height - viewer.eyeHeight) * (viewer.distance / (viewer.distance + y));
      const borders = plan.masking.filter(({ kind }) => kind === "border");
      for (const leg of plan.masking.filter(({ kind }) => kind === "leg")) {
        const y = leg.line[0][1];
        const before = borders.filter(({ line }) => line[0][1] <= y);
        const lowest = Math.min(stage.opening.height, ...before.map(({ trim, line }) => seen(trim ?? 0, line[0][1])));
        expect(seen(leg.height, y), leg.id).toBeGreaterThan(lowest);
      }
    },
  );
});
