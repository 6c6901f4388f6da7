import type { Place } from "@/lib/classroom/live/cloud";
import type { VoteResult } from "@/lib/classroom/live/vote-result";

/** The part of the drawing where the marks are: a circle, metres. */
export type CloudRoom = { readonly centre: Place; readonly radius: number };

/** A mark far off from all others, a slip or a joke, does not make the others small: so many of them must be in it. */
const SHARE_SEEN = 0.9;
/** As much round a cloud that is hardly any larger than a point, in tolerances. */
const LEAST_TOLERANCES = 3;

/** Where the marks of the rounds that are drawn lie, the true point with them once it is told; null without a mark. */
export function cloudRoom({ rounds, truth, toleranceMm }: VoteResult, scaleRatio: number): CloudRoom | null {
  const marks = rounds.slice(-2).flatMap((round) => round.marks);
  if (marks.length === 0) return null;
  const centre: Place = [median(marks.map(([across]) => across)), median(marks.map(([, up]) => up))];
  const away = ([across, up]: Place) => Math.hypot(across - centre[0], up - centre[1]);
  const far = marks.map(away).sort((a, b) => a - b)[Math.ceil(SHARE_SEEN * marks.length) - 1] ?? 0;
  const least = (LEAST_TOLERANCES * toleranceMm * scaleRatio) / 1000;
  return { centre, radius: Math.max(far, truth ? away(truth) : 0, least) };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [sorted[(sorted.length - 1) >> 1] ?? 0, sorted[sorted.length >> 1] ?? 0];
  return (low + high) / 2;
}
