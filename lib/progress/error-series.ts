import { type AttemptRecord, inOrder, type MarkRecord } from "./record";
import { sayRatio, saySize } from "./say-series";
import type { End, Series, SeriesPoint } from "./series";
import { median, theilSen } from "./theil-sen";

/** With fewer attempts than these a trend is chance. */
const LEAST_FOR_TREND = 4;

/** A trend is that of the last attempts, at most so many: what was drawn long before says little of where it goes now. */
const MOST_FOR_TREND = 60;

type Kind = Pick<Series, "id" | "title" | "yTitle" | "unit" | "scale" | "ideal"> & {
  of(mark: MarkRecord): number | null;
};

const KINDS: readonly Kind[] = [
  { ...size("depth", "Off in depth"), of: ({ depthMm }) => absolute(depthMm) },
  { ...size("across", "Off across"), of: ({ acrossMm }) => absolute(acrossMm) },
  { ...size("height", "Off in height"), of: ({ heightMm }) => absolute(heightMm) },
  {
    id: "ratio",
    title: "Too shallow, too deep",
    yTitle: "Drawn depth / true depth",
    unit: "ratio",
    scale: "log",
    ideal: 1,
    of: ({ depthRatio }) => depthRatio,
  },
];

/**
 * Errors over time, one value an attempt: the median over its marks of the error's size on paper, in millimetres, in depth,
 * across and in height; and the median ratio of drawn depth to true depth, on a logarithmic scale, where half as deep and
 * twice as deep lie equally far from right. Trends by Theil and Sen over the numbers of the last
 * attempts, of the ratio's logarithm.
 */
export function errorSeries(records: readonly AttemptRecord[]): readonly Series[] {
  const attempts = inOrder(records).filter(({ marks }) => marks.length > 0);
  return KINDS.map(({ of, ...kind }) => {
    const points = attempts.flatMap(({ exercise, when, marks }, i) => {
      const values = marks.flatMap((mark) => of(mark) ?? []).map((value) => onScale(kind.scale, value));
      const middle = median(values);
      if (middle === null) return [];
      return [{ x: i + 1, y: offScale(kind.scale, middle), exercise, when, marks: values.length }];
    });
    const trend = trendOf(points, kind.scale);
    const words = kind.unit === "ratio" ? sayRatio(points, trend) : saySize(kind.title, points, trend);
    return { ...kind, xTitle: "Exercises drawn", points, trend, words };
  });
}

function size(id: "depth" | "across" | "height", title: string): Omit<Kind, "of"> {
  return { id, title, yTitle: "mm on paper", unit: "mm", scale: "linear", ideal: 0 };
}

function trendOf(all: readonly SeriesPoint[], scale: Series["scale"]): Series["trend"] {
  const points = all.slice(-MOST_FOR_TREND);
  const [first, last] = [points[0], points.at(-1)];
  const line = theilSen(points.map(({ x, y }) => [x, onScale(scale, y)] as const));
  if (points.length < LEAST_FOR_TREND || !first || !last || !line.found) return null;
  const at = (x: number) => line.intercept + line.slope * x;
  // A size is never less than nothing, though a steep line may be.
  const end = (x: number): End => ({ x, y: scale === "log" ? Math.exp(at(x)) : Math.max(0, at(x)) });
  return { from: end(first.x), to: end(last.x) };
}

function onScale(scale: Series["scale"], value: number): number {
  return scale === "log" ? Math.log(value) : value;
}

function offScale(scale: Series["scale"], value: number): number {
  return scale === "log" ? Math.exp(value) : value;
}

function absolute(value: number | null): number | null {
  return value === null ? null : Math.abs(value);
}
