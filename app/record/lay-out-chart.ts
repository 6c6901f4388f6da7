import type { Series, SeriesPoint } from "@/lib/progress/series";
import { type Axis, attemptAxis, MOST_SHOWN, ratioAxis, sizeAxis } from "./axes";
import type { Form } from "./symbol";

/** A series with how it is drawn. */
export type Drawn = { readonly series: Series; readonly name: string; readonly form: Form };

/** The attempts shown, the same in every chart: the first and the last, with their days. */
export type Span = { readonly first: Pick<SeriesPoint, "x" | "when">; readonly last: Pick<SeriesPoint, "x" | "when"> };

/** The last attempts of all series together; null where nothing is drawn. */
export function spanOf(series: readonly Series[]): Span | null {
  const points = series.flatMap((each) => each.points).sort((a, b) => a.x - b.x);
  const last = points.at(-1);
  const first = last && points.find(({ x }) => x > last.x - MOST_SHOWN);
  return first && last ? { first, last } : null;
}

/** A chart laid out: its axes, its edges in pixels, and the height of its letters. */
export type Frame = {
  readonly x: Axis;
  readonly y: Axis;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly em: number;
  readonly span: Span;
};

/** Lays a chart out in so many pixels; null where there is no point to draw. */
export function layOut(drawn: readonly Drawn[], span: Span, width: number, height: number, em: number): Frame | null {
  const [kind] = drawn;
  const { first, last } = span;
  if (!kind || drawn.every(({ series }) => series.points.length === 0)) return null;
  const values = drawn.flatMap(({ series }) => series.points.filter(({ x }) => x >= first.x).map(({ y }) => y));
  const [left, right, top, bottom] = [3 * em, width - nameRoom(drawn) * em, 1.9 * em, height - 4.6 * em];
  const up = { from: bottom, to: top, room: kind.series.scale === "log" ? 1.5 * em : 2.4 * em };
  return {
    x: attemptAxis(first.x, last.x, { from: left, to: right, room: 2.6 * em }),
    y: kind.series.scale === "log" ? ratioAxis(values, up) : sizeAxis(values, up),
    left,
    right,
    top,
    bottom,
    em,
    span,
  };
}

/** Names at the ends of the lines need room beside them, in letters. */
function nameRoom(drawn: readonly Drawn[]): number {
  return drawn.length > 1 ? 4.6 : 0.8;
}
