import type { Series } from "@/lib/progress/series";
import { type Axis, attemptAxis, MOST_SHOWN, ratioAxis, sizeAxis } from "./axes";
import type { Form } from "./symbol";

/** A series with how it is drawn. */
export type Drawn = { readonly series: Series; readonly name: string; readonly form: Form };

/** A chart laid out: its axes, its edges in pixels, and the height of its letters. */
export type Frame = {
  readonly x: Axis;
  readonly y: Axis;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly em: number;
};

/** Lays a chart out in so many pixels; null where there is no point to draw. */
export function layOut(drawn: readonly Drawn[], width: number, height: number, em: number): Frame | null {
  const numbers = drawn.flatMap(({ series }) => series.points.map(({ x }) => x));
  const [kind] = drawn;
  if (!kind || numbers.length === 0) return null;
  const last = Math.max(...numbers);
  const first = Math.max(1, last - MOST_SHOWN + 1, Math.min(...numbers));
  const values = drawn.flatMap(({ series }) => series.points.filter(({ x }) => x >= first).map(({ y }) => y));
  const [left, right, top, bottom] = [3 * em, width - nameRoom(drawn) * em, 1.9 * em, height - 3.4 * em];
  const up = { from: bottom, to: top, room: kind.series.scale === "log" ? 1.5 * em : 2.4 * em };
  return {
    x: attemptAxis(first, last, { from: left, to: right, room: 2.6 * em }),
    y: kind.series.scale === "log" ? ratioAxis(values, up) : sizeAxis(values, up),
    left,
    right,
    top,
    bottom,
    em,
  };
}

/** Names at the ends of the lines need room beside them, in letters. */
function nameRoom(drawn: readonly Drawn[]): number {
  return drawn.length > 1 ? 4.6 : 0.8;
}
