import { meet } from "../../../geometry/meet";
import { segmentsCross } from "../../../geometry/segments-cross";
import type { PlanPoint } from "../../../stage/frame";
import type { Stage } from "../../../stage/stage";
import { besideWalls, type FreeStretch } from "./beside-walls";
import type { Fan, Glimpse } from "./fan";
import type { Barrier } from "./plan-barriers";
import { beforeEye, bothOn, crossingOf, depthOn, type Eye, placeAt, SAME_CROSSING_M } from "./sight-line";

export type PlanSight = {
  /** All that is seen from the plaster line up. */
  readonly seen: readonly Fan[];
  readonly glimpses: readonly { readonly what: Glimpse; readonly fan: Fan }[];
};

/** What lies this much nearer is met first, metres: the ends of walls that meet are one place. */
const SAME_DEPTH_M = 1e-9;

/**
 * What a seat sees over the plaster line in the plan, between the sides of the opening. Exact: sight lines are sorted by the ends
 * and crossings of all that they may meet, so that between two neighbours all meet the same things in the same order.
 * The stage ends at its back wall and so far beside the opening as `stageHalfWidth` tells.
 */
export function planSight(eye: Eye, barriers: readonly Barrier[], stage: Stage): PlanSight {
  const half = stage.opening.width / 2;
  const before = barriers.flatMap((barrier) => {
    const part = beforeEye(eye, barrier.from, barrier.to);
    if (!part) return [];
    const [a, b] = [crossingOf(eye, part[0]), crossingOf(eye, part[1])];
    return [{ ...barrier, from: part[0], to: part[1], low: Math.min(a, b), high: Math.max(a, b) }];
  });
  const crossings = sortCrossings(eye, before, stage);
  const seen: Fan[] = [];
  const glimpses: { what: Glimpse; fan: Fan }[] = [];
  const free: FreeStretch[] = [];
  for (let i = 0; i + 1 < crossings.length; i++) {
    const [a, b] = [crossings[i] as number, crossings[i + 1] as number];
    const middle = (a + b) / 2;
    const met = before
      .flatMap((barrier) => {
        const depth =
          barrier.low <= middle && middle <= barrier.high ? depthOn(eye, middle, barrier.from, barrier.to) : null;
        return depth === null ? [] : [{ barrier, depth }];
      })
      .sort((one, other) => one.depth - other.depth);
    const stop = met.find(({ barrier }) => barrier.kind !== "way");
    if (stop && stop.depth <= SAME_DEPTH_M) continue;
    const way = met.find(
      ({ barrier, depth }) =>
        barrier.kind === "way" && depth < (stop?.depth ?? Number.POSITIVE_INFINITY) && !isBehind(eye, barrier),
    );
    const on = (line: readonly [PlanPoint, PlanPoint]) => bothOn(eye, a, b, line);
    const plaster = on([
      [-half, 0],
      [half, 0],
    ]);
    const edge = stageEdge(eye, middle, stage);
    const far = on(stop ? [stop.barrier.from, stop.barrier.to] : edge);
    seen.push({ crossings: [a, b], near: plaster, far });
    const what = glimpseOf(eye, middle, half, stage, stop?.barrier ?? null, way?.barrier ?? null);
    if (!stop && !way) free.push({ crossings: [a, b], far, told: what !== null });
    if (!what) continue;
    const side = middle > eye.x ? half : -half;
    const near = way
      ? on([way.barrier.from, way.barrier.to])
      : what.kind === "past"
        ? on([
            [side, 0],
            [side, stage.depth],
          ])
        : plaster;
    glimpses.push({ what, fan: { crossings: [a, b], near, far } });
  }
  return { seen, glimpses: [...glimpses, ...besideWalls(eye, free, before)] };
}

function glimpseOf(
  eye: Eye,
  crossing: number,
  half: number,
  stage: Stage,
  stop: Barrier | null,
  way: Barrier | null,
): Glimpse | null {
  if (stop) return stop.kind === "face" && isBehind(eye, stop) ? { kind: "back", thing: stop.thing } : null;
  if (way) return { kind: "through", thing: way.thing };
  const [x] = placeAt(eye, crossing, stage.depth);
  return Math.abs(x) > half ? { kind: "past", side: x < 0 ? "right" : "left" } : null;
}

/** Whether a seat is on the offstage side of a wall. */
function isBehind(eye: Eye, { from, offstage }: Barrier): boolean {
  return offstage !== null && (eye.x - from[0]) * offstage[0] + (-eye.distance - from[1]) * offstage[1] > 0;
}

/** How far the stage goes to either side of the centre line: as in the rule of seven, twice as wide as the opening (Pichel 1920). */
function stageHalfWidth({ opening }: Pick<Stage, "opening">): number {
  return opening.width;
}

/** The edge of the stage where a sight line leaves it: the back wall, or a side. */
function stageEdge(eye: Eye, crossing: number, stage: Stage): readonly [PlanPoint, PlanPoint] {
  const wide = stageHalfWidth(stage);
  const [x] = placeAt(eye, crossing, stage.depth);
  if (Math.abs(x) <= wide)
    return [
      [-wide, stage.depth],
      [wide, stage.depth],
    ];
  const side = Math.sign(x) * wide;
  return [
    [side, 0],
    [side, stage.depth],
  ];
}

/** A barrier, and between which crossings of the plaster line it lies. */
type Before = Barrier & { readonly low: number; readonly high: number };

function sortCrossings(eye: Eye, barriers: readonly Before[], stage: Stage): readonly number[] {
  const half = stage.opening.width / 2;
  const wide = stageHalfWidth(stage);
  const corners = [-wide, -half, half, wide].map((x) => crossingOf(eye, [x, stage.depth]));
  const cloths = barriers.filter(({ kind }) => kind === "cloth");
  const met = cloths.flatMap((cloth) =>
    barriers.flatMap((other) => {
      if (other === cloth || !segmentsCross([cloth.from, cloth.to], [other.from, other.to])) return [];
      const at = meet([cloth.from, cloth.to], [other.from, other.to]);
      return at ? [crossingOf(eye, at)] : [];
    }),
  );
  const all = [-half, half, ...corners, ...barriers.flatMap(({ low, high }) => [low, high]), ...met, eye.x]
    .filter((crossing) => crossing >= -half && crossing <= half)
    .sort((a, b) => a - b);
  return all.filter((crossing, i) => i === 0 || crossing - (all[i - 1] as number) > SAME_CROSSING_M);
}
