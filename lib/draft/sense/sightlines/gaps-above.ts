import type { Exercise } from "../../../exercise/exercise";
import { type Interval, unite } from "../../../geometry/intervals";
import type { Thing } from "../../draft";
import { hiddenByFrame, meetScreen, standing } from "./hidden-share";
import type { Screen } from "./screens";
import type { Seat } from "./seat";
import { placeAt } from "./sight-line";

/** A gap over the set through which a seat sees what hangs above or stands behind; `under` null is the proscenium's own header. */
export type GapAbove = {
  readonly over: Thing;
  readonly under: Thing | null;
  /** How much is seen over the top of `over`, measured upright over it, where it is most, metres. */
  readonly amount: number;
};

/** Sight lines tried across the opening. */
const COLUMNS = 120;
/** Gaps smaller than this are none, metres. */
const LEAST_GAP_M = 0.01;
/** Far behind everything: a share of the way to there tells the order of things, times the stage's depth. */
const FAR_BEHIND = 4;

/**
 * What a seat sees over the tops of walls and standing masking, under borders and header: in each of many sight lines across the
 * opening, exactly in height. A sight line that meets nothing standing sees the wings or the back of the stage, not a gap.
 */
export function gapsAbove(screens: readonly Screen[], seat: Seat, exercise: Exercise): readonly GapAbove[] {
  const { stage } = exercise;
  const half = stage.opening.width / 2;
  const eye = { x: seat.at[0], distance: -seat.at[1] };
  const most = new Map<string, GapAbove>();
  for (let i = 0; i < COLUMNS; i++) {
    const crossing = -half + ((i + 0.5) / COLUMNS) * stage.opening.width;
    const far = placeAt(eye, crossing, FAR_BEHIND * stage.depth);
    const depth = far[1] - seat.at[1];
    // Heights are carried on to the far place, where all can be compared.
    const covers = screens.flatMap((screen) => {
      const met = screen.kind === "body" ? null : meetScreen(screen, seat.at, far);
      if (!met) return [];
      const behind = (height: number) => seat.eyeHeight + (height - seat.eyeHeight) / met.share;
      return standing(screen, met.along).map(([low, high]) => ({ screen, met, from: behind(low), to: behind(high) }));
    });
    const tops = covers.filter(({ screen, to, met }) => screen.kind !== "border" && isTop(screen, to, met.share, seat));
    const [, sky] = windowAt(seat, far, exercise);
    const highest = tops.reduce((top, { to }) => Math.max(top, to), Number.NEGATIVE_INFINITY);
    if (!Number.isFinite(highest)) continue;
    const closed = unite(covers.map(({ from, to }): Interval => [from, to]));
    const open = gapsBetween(closed, highest, sky);
    for (const [from, to] of open) {
      const over = covers.find((cover) => cover.to === from) ?? tops.find((cover) => cover.to === highest);
      if (!over || from >= sky) continue;
      const under = covers.find((cover) => cover.from === to)?.screen.thing ?? null;
      const amount = (to - from) * over.met.share;
      const key = JSON.stringify([over.screen.thing, under]);
      if (amount > Math.max(LEAST_GAP_M, most.get(key)?.amount ?? 0) && depth > 0)
        most.set(key, { over: over.screen.thing, under, amount });
    }
  }
  return [...most.values()].sort((a, b) => b.amount - a.amount);
}

/** Whether a cover ends with the top of what it belongs to, not with the sill of an opening in it. */
function isTop({ high }: Screen, to: number, share: number, { eyeHeight }: Seat): boolean {
  return to === eyeHeight + (high - eyeHeight) / share;
}

/** Between which heights at a place the frame lets a seat see. */
function windowAt(seat: Seat, place: readonly [number, number], exercise: Exercise): Interval {
  const hidden = hiddenByFrame(seat, place, exercise);
  const low = hidden.find(([from]) => from === Number.NEGATIVE_INFINITY)?.[1] ?? Number.NEGATIVE_INFINITY;
  const high = hidden.find(([, to]) => to === Number.POSITIVE_INFINITY)?.[0] ?? Number.POSITIVE_INFINITY;
  return [low, high];
}

/** What lies open from one height to another between covered stretches, in order and apart. */
function gapsBetween(covered: readonly Interval[], from: number, to: number): readonly Interval[] {
  const gaps: Interval[] = [];
  let at = from;
  for (const [start, end] of covered) {
    if (end <= at) continue;
    if (start > at && at < to) gaps.push([at, Math.min(start, to)]);
    at = Math.max(at, end);
  }
  if (at < to) gaps.push([at, to]);
  return gaps;
}
