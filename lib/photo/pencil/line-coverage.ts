import type { SheetPlace } from "../../sheet/place-drawings";
import type { PencilLine } from "../drawing-reading";

/** A pencil line goes along a way if no part of it that does lies farther off than this, millimetres. */
const BESIDE_MM = 1;
/** And turns less than this from it, radians; from a short way by a hand's unsteadiness of this many millimetres more. */
const TURN = 0.1;
const UNSTEADY_MM = 0.9;
/** A line may stop so short of either end, millimetres. */
const STOPS_SHORT_MM = 0.8;

/** How much of a way is drawn: the share of it, 0 to 1, and how far from either end the drawing begins, millimetres. */
export type Coverage = { readonly share: number; readonly short: readonly [from: number, to: number] };

/** How far pencil lines go along the straight way between two places. */
export function lineCoverage(lines: readonly PencilLine[], a: SheetPlace, b: SheetPlace): Coverage {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length === 0) return { share: 0, short: [0, 0] };
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const short = Math.min(STOPS_SHORT_MM, length / 4);
  const [first, last] = [short, length - short];
  const stretches: [number, number][] = [];
  let [begins, ends] = [length, 0];
  for (const { from, to } of lines) {
    let s = (from[0] - a[0]) * ux + (from[1] - a[1]) * uy;
    let t = (to[0] - a[0]) * ux + (to[1] - a[1]) * uy;
    let p = (from[1] - a[1]) * ux - (from[0] - a[0]) * uy;
    let q = (to[1] - a[1]) * ux - (to[0] - a[0]) * uy;
    if (s > t) [s, t, p, q] = [t, s, q, p];
    if (t < first || s > last || t - s < 0.5) continue;
    const slope = (q - p) / (t - s);
    if (Math.abs(slope) > TURN + UNSTEADY_MM / Math.min(length, t - s)) continue;
    const [from1, to1] = [Math.max(s, 0), Math.min(t, length)];
    if (Math.abs(p + slope * (from1 - s)) > BESIDE_MM || Math.abs(p + slope * (to1 - s)) > BESIDE_MM) continue;
    if (Math.min(t, last) <= Math.max(s, first)) continue;
    stretches.push([Math.max(s, first), Math.min(t, last)]);
    [begins, ends] = [Math.min(begins, from1), Math.max(ends, to1)];
  }
  stretches.sort((x, y) => x[0] - y[0]);
  let [covered, reached] = [0, first];
  for (const [from, to] of stretches) {
    covered += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return { share: covered / (last - first), short: [begins, length - ends] };
}
