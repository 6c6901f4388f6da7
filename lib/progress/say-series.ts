import { sayMany } from "./say-number";
import type { Series, SeriesPoint } from "./series";
import { median } from "./theil-sen";

/** How many attempts back "now" looks. */
const NOW_LOOKS_BACK = 3;

/** A ratio within this of 1 counts as true. */
const TRUE_WITHIN = 0.05;

/** Changes smaller than these, over all attempts, are no change: millimetres, and in ratio. */
const LEAST_CHANGE_MM = 0.3;
const LEAST_CHANGE_RATIO = Math.log(1.05);

type Trend = Series["trend"];

/** The size of an error over time in words: "Off in depth: 2.1 mm of paper over your last three exercises, and getting smaller." */
export function saySize(title: string, points: readonly SeriesPoint[], trend: Trend): string {
  const now = latest(points.map(({ y }) => y));
  if (now === null) return `${title}: nothing drawn yet.`;
  const change = trend === null ? null : trend.to.y - trend.from.y;
  const going =
    change === null
      ? ""
      : Math.abs(change) < LEAST_CHANGE_MM
        ? ", and steady"
        : change < 0
          ? ", and getting smaller"
          : ", and growing";
  return `${title}: ${now.toFixed(1)} mm on paper ${over(points.length)}${going}.`;
}

/** Too shallow or too deep over time, in words: "Your depths are too shallow: drawn at 82 % of the true ones ..., and coming nearer." */
export function sayRatio(points: readonly SeriesPoint[], trend: Trend): string {
  const now = latest(points.map(({ y }) => Math.log(y)));
  if (now === null) return "No depth drawn yet.";
  const ratio = Math.exp(now);
  const percent = `${Math.round(ratio * 100)} % of the true ones ${over(points.length)}`;
  const going = sayNearing(trend);
  if (Math.abs(ratio - 1) <= TRUE_WITHIN) return `Your depths are true: drawn at ${percent}${going}.`;
  return `Your depths are too ${ratio < 1 ? "shallow" : "deep"}: drawn at ${percent}${going}.`;
}

function sayNearing(trend: Trend): string {
  if (trend === null) return "";
  const change = Math.abs(Math.log(trend.to.y)) - Math.abs(Math.log(trend.from.y));
  if (Math.abs(change) < LEAST_CHANGE_RATIO) return ", and steady";
  return change < 0 ? ", and coming nearer" : ", and moving away";
}

function latest(values: readonly number[]): number | null {
  return median(values.slice(-NOW_LOOKS_BACK));
}

function over(count: number): string {
  return count === 1 ? "in one exercise" : `over your last ${sayMany(Math.min(count, NOW_LOOKS_BACK), "exercise")}`;
}
