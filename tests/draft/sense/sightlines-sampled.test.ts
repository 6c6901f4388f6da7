import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { newDraft } from "@/lib/draft/new-draft";
import type { Seat } from "@/lib/draft/sense/sightlines/seat";
import { usualSeats } from "@/lib/draft/sense/sightlines/seat";
import type { Sight } from "@/lib/draft/sense/sightlines/sight";
import { sightlines } from "@/lib/draft/sense/sightlines/sightlines";
import { insideOutline } from "@/lib/plan/surface-level";
import type { PlanPoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";
import { anyDraft, edited } from "./make-draft";

const STAGE = newDraft("m").exercise.stage;
const [HALF, DEPTH] = [STAGE.opening.width / 2, STAGE.depth];

type Flat = {
  readonly a: PlanPoint;
  readonly b: PlanPoint;
  readonly hole: readonly [number, number] | null;
  readonly base: number;
  readonly top: number;
  readonly head: number;
};

/** Evenly spread, so that hardly ever two places stand in one line: what is just at an edge may be told either way. */
const number = (min: number, max: number) =>
  fc.integer({ min: 0, max: 999_999 }).map((n) => min + ((max - min) * (n + Math.SQRT1_2)) / 1e6);
const place = fc.tuple(number(-6, 6), number(0.3, 7));
const flat: fc.Arbitrary<Flat> = fc
  .record({
    a: place,
    b: place,
    start: number(0.1, 0.5),
    share: number(0.1, 0.4),
    holed: fc.boolean(),
    top: number(2.5, 6),
    head: number(1.8, 2.4),
  })
  .filter(({ a, b }) => Math.hypot(a[0] - b[0], a[1] - b[1]) > 1)
  .map(({ a, b, start, share, holed, top, head }) => ({
    a,
    b,
    base: 0,
    top,
    head,
    hole: holed ? ([start, start + share] as const) : null,
  }));
const legs = fc.array(
  fc.tuple(place, place).filter(([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1]) > 0.5),
  { maxLength: 2 },
);
const seat: fc.Arbitrary<Seat> = fc
  .tuple(number(-7, 7), number(-15, -3), number(-0.4, 5))
  .map(([x, y, eyeHeight]) => ({ id: "s", name: "Seat", at: [x, y], eyeHeight }));

/** Walls that do not share corners, each with a passage or none, and legs. */
function build(flats: readonly Flat[], lines: readonly (readonly [PlanPoint, PlanPoint])[]): Draft {
  const edits = flats.flatMap(({ a, b, hole, top, head }, i): Edit[] => {
    const length = Math.hypot(a[0] - b[0], a[1] - b[1]);
    const wall: Edit = { edit: "add-walls", corners: [a, b], closed: false, height: top, thickness: 0 };
    if (!hole) return [wall];
    const [at, width] = [hole[0] * length, (hole[1] - hole[0]) * length];
    const opening = {
      kind: "passage",
      at,
      width,
      sill: 0,
      head,
      depth: null,
      leaves: 1,
      hinge: null,
      swing: "offstage",
    } as const;
    return [wall, { edit: "add-opening", wall: `W${i + 1}`, opening }];
  });
  const cloths = lines.map(
    (line): Edit => ({ edit: "add-masking", masking: { kind: "leg", line, trim: null, height: 6 } }),
  );
  return edited(newDraft("m"), ...edits, ...cloths);
}

/** Where the way from p to q crosses the way from a to b, as shares of both. */
function meeting(p: PlanPoint, q: PlanPoint, a: PlanPoint, b: PlanPoint): { t: number; u: number } | null {
  const det = (q[0] - p[0]) * (a[1] - b[1]) - (q[1] - p[1]) * (a[0] - b[0]);
  const t = ((a[0] - p[0]) * (a[1] - b[1]) - (a[1] - p[1]) * (a[0] - b[0])) / det;
  const u = ((q[0] - p[0]) * (a[1] - p[1]) - (q[1] - p[1]) * (a[0] - p[0])) / det;
  return t > 0 && t < 1 && u > 0 && u < 1 ? { t, u } : null;
}

const inHole = ({ hole }: Flat, u: number) => hole !== null && u > hole[0] && u < hole[1];

/** Whether one place of the plan sees another, walls and legs being all that stops it, through the opening. */
function sees(
  from: PlanPoint,
  to: PlanPoint,
  flats: readonly Flat[],
  lines: readonly (readonly [PlanPoint, PlanPoint])[],
): boolean {
  const crossing = from[0] + ((to[0] - from[0]) * -from[1]) / (to[1] - from[1]);
  if (Math.abs(crossing) > HALF) return false;
  const stopped = flats.some((one) => {
    const met = meeting(from, to, one.a, one.b);
    return met !== null && !inHole(one, met.u);
  });
  return !stopped && !lines.some(([a, b]) => meeting(from, to, a, b) !== null);
}

/** The first opening that is passed from the onstage side, which is to the right of a -> b. */
function passes(from: PlanPoint, to: PlanPoint, flats: readonly Flat[]): number | null {
  const passed = flats
    .map((one, i) => ({ i, one, met: meeting(from, to, one.a, one.b) }))
    .filter(({ one: { a, b } }) => (b[0] - a[0]) * (from[1] - a[1]) - (b[1] - a[1]) * (from[0] - a[0]) < 0)
    .filter(({ one, met }) => met !== null && inHole(one, met.u))
    .sort((x, y) => (x.met?.t ?? 0) - (y.met?.t ?? 0));
  return passed[0]?.i ?? null;
}

const inside = (outlines: readonly (readonly PlanPoint[])[], at: PlanPoint) =>
  outlines.some((one) => insideOutline(one, at));

describe("what a seat sees in the plan, against rays one by one", () => {
  it("holds for any place of the stage: seen or not, and through which opening without a backing", () => {
    fc.assert(
      fc.property(
        fc.array(flat, { maxLength: 4 }),
        legs,
        seat,
        fc.array(fc.tuple(number(-9.9, 9.9), number(0.01, DEPTH - 0.01)), { minLength: 10, maxLength: 10 }),
        (flats, lines, from, places) => {
          const [sight] = sightlines(build(flats, lines), [from]);
          for (const at of places) {
            const seen = sees(from.at, at, flats, lines);
            expect(inside(sight?.seen ?? [], at), `seen ${at}`).toBe(seen);
            const far: PlanPoint = [from.at[0] + (at[0] - from.at[0]) * 50, from.at[1] + (at[1] - from.at[1]) * 50];
            const edge = edgeOfStage(from.at, far);
            const through = seen && sees(from.at, edge, flats, lines) ? passes(from.at, at, flats) : null;
            const ways = (sight?.offstage ?? []).filter(
              ({ what, outlines }) => what.kind === "through" && inside(outlines, at),
            );
            expect(
              ways.map(({ what }) => (what.kind === "through" && what.thing.kind === "opening" ? what.thing.wall : "")),
              `through ${at}`,
            ).toEqual(through === null ? [] : [`W${through + 1}`]);
          }
        },
      ),
      seeded,
    );
  });
});

/** Where the way from a seat to a far place leaves the stage: at its back wall, or at its side, as far out as the opening is wide. */
function edgeOfStage(from: PlanPoint, far: PlanPoint): PlanPoint {
  const t = Math.min(
    (DEPTH - from[1]) / (far[1] - from[1]),
    far[0] === from[0] ? 1 : (Math.sign(far[0] - from[0]) * 2 * HALF - from[0]) / (far[0] - from[0]),
  );
  return [from[0] + (far[0] - from[0]) * t, from[1] + (far[1] - from[1]) * t];
}

describe("what a seat does not see of a wall, against rays one by one", () => {
  it("is the share of rays to its face that something stops", () => {
    fc.assert(
      fc.property(
        fc.array(flat, { minLength: 1, maxLength: 4 }),
        legs,
        seat,
        fc.integer(),
        (flats, lines, from, dice) => {
          const [sight] = sightlines(build(flats, lines), [from]);
          const target = flats[0] as Flat;
          const roll = rollFrom(dice);
          let [tried, stopped] = [0, 0];
          while (tried < RAYS) {
            const [u, z] = [roll(), roll() * target.top];
            if (inHole(target, u) && z < target.head) continue;
            tried++;
            const at: PlanPoint = [
              target.a[0] + (target.b[0] - target.a[0]) * u,
              target.a[1] + (target.b[1] - target.a[1]) * u,
            ];
            if (isStopped(from, at, z, flats.slice(1), lines)) stopped++;
          }
          const { a, b } = target;
          const onstage = (b[0] - a[0]) * (from.at[1] - a[1]) - (b[1] - a[1]) * (from.at[0] - a[0]) < 0;
          const hidden = sight?.walls[0]?.hidden ?? Number.NaN;
          expect(Math.abs(hidden - (onstage ? stopped / RAYS : 1))).toBeLessThan(SAMPLED);
        },
      ),
      { ...seeded, numRuns: Math.min(60, seeded.numRuns) },
    );
  });
});

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
function rollFrom(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const RAYS = 1500;
/** Five standard deviations of a share found with so many rays, and a column's width at either end of what hides the wall. */
const SAMPLED = 5 * Math.sqrt(0.25 / RAYS) + 0.03;

function isStopped(
  { at: from, eyeHeight }: Seat,
  at: PlanPoint,
  z: number,
  flats: readonly Flat[],
  lines: readonly (readonly [PlanPoint, PlanPoint])[],
): boolean {
  const height = (t: number) => eyeHeight + (z - eyeHeight) * t;
  const atLine = (y: number) => (y - from[1]) / (at[1] - from[1]);
  const crossing = from[0] + (at[0] - from[0]) * atLine(0);
  if (Math.abs(crossing) > HALF || height(atLine(0)) > STAGE.opening.height) return true;
  if (from[1] < -STAGE.apron && height(atLine(-STAGE.apron)) < 0) return true;
  if (lines.some(([a, b]) => height(meeting(from, at, a, b)?.t ?? 0) < 6 && meeting(from, at, a, b) !== null))
    return true;
  return flats.some((one) => {
    const met = meeting(from, at, one.a, one.b);
    if (!met || height(met.t) > one.top) return false;
    return !(inHole(one, met.u) && height(met.t) < one.head);
  });
}

describe("sight lines of any draft", () => {
  it("are finite, and say something", () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const { stage, viewer } = draft.exercise;
        for (const sight of sightlines(draft, usualSeats(stage, viewer))) {
          expect(sight.remarks.length).toBeGreaterThan(0);
          for (const { hidden } of sight.walls) expect(hidden >= 0 && hidden <= 1).toBe(true);
          expect(
            [...sight.seen, ...sight.offstage.flatMap(({ outlines }) => outlines)].flat(2).every(Number.isFinite),
          ).toBe(true);
          expect(sight.gaps.every(({ amount }) => Number.isFinite(amount))).toBe(true);
        }
      }),
      seeded,
    );
  });

  it("offer backings that can be added, and that close the opening from that seat", () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const { stage, viewer } = draft.exercise;
        const [one] = usualSeats(stage, viewer);
        const { remarks } = sightlines(draft, [one as Seat])[0] as Sight;
        for (const { say, edit } of remarks) {
          if (!edit) continue;
          const after = applyEdit(draft, edit);
          expect(after.ok).toBe(true);
          if (after.ok) expect(sightlines(after.draft, [one as Seat])[0]?.remarks.map((r) => r.say)).not.toContain(say);
        }
      }),
      seeded,
    );
  });
});
