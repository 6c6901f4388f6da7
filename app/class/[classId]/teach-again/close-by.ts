import type { Bounds } from "@/app/_sheet/view";
import type { ClassMark } from "@/lib/classroom/teach-again/read-teach-again";
import { SHARES } from "@/lib/classroom/teach-again/say-figures";
import { ellipseAxes, type Spread } from "@/lib/classroom/teach-again/spread-ellipse";

/** The close view is so many times as wide as high, and shows this much paper at least, millimetres. */
const WIDE = 1.6;
const LEAST_HALF_MM = 6;
const ROOM_MM = 3;

/** The part of the sheet that holds the marks, the larger ellipse and the truth, with paper round them. */
export function closeBy(
  cloud: readonly ClassMark[],
  spread: Spread,
  truth: readonly [number, number] | undefined,
  scaleRatio: number,
): Bounds {
  const mm = scaleRatio / 1000;
  const reach = spread.kind === "spread" ? ellipseAxes(spread, SHARES[1])[0] : 0;
  const about = spread.kind === "few" ? [] : [spread.mean];
  const places = [...cloud.map(({ at }) => at), ...(truth ? [truth] : []), ...about];
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const ends = (values: readonly number[], mean: number | undefined): readonly [number, number] =>
    mean === undefined
      ? [Math.min(...values), Math.max(...values)]
      : [Math.min(...values, mean - reach), Math.max(...values, mean + reach)];
  const [[left, right], [bottom, top]] = [ends(xs, about[0]?.[0]), ends(ys, about[0]?.[1])];
  const halfUp = Math.max((top - bottom) / 2, (right - left) / 2 / WIDE, LEAST_HALF_MM * mm) + ROOM_MM * mm;
  const [x, y] = [(left + right) / 2, (bottom + top) / 2];
  return { left: x - halfUp * WIDE, right: x + halfUp * WIDE, bottom: y - halfUp, top: y + halfUp };
}
