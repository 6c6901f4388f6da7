import type { Exercise, Strictness } from "../../exercise/exercise";
import { PENCIL_MM } from "../../exercise/tolerance";
import type { Vector2 } from "../../geometry/vector";
import type { DrawnLine } from "../../perspective/whose-eye/drawn-line";

/** How far an end of a pencil line may lie off the line that was meant, across it, one standard deviation, mm: a pencil's width. */
export const LINE_END_MM = PENCIL_MM;

/**
 * How far the direction of a line laid by eye may be off besides, one standard deviation, degrees. An upright or a level
 * line is judged to between half a degree and one (from memory); a line ruled to a point on the sheet to a fraction of it.
 */
const HAND_DEG: Readonly<Record<Strictness, number>> = { thumbnail: 1, sketch: 0.5, drafted: 0.2 };

/** More than this many standard deviations is said to the student, as in the tolerance of marks. */
export const CLEAR_SIGMAS = 2;

/** A line shorter than this has no direction worth judging, mm: the strokes of a cross that marks a single point are. */
export const SHORTEST_LINE_MM = 5;

/** A line of the picture with the precision that is asked of it, metres. */
export function withPrecision(
  ends: readonly [Vector2, Vector2],
  { task }: Pick<Exercise, "task">,
  scaleRatio: number,
): DrawnLine {
  const length = Math.hypot(ends[1][0] - ends[0][0], ends[1][1] - ends[0][1]);
  // A turn of the whole line, as slips of its two ends: each has its half of the variance.
  const turn = (length * Math.tan((HAND_DEG[task.strictness] * Math.PI) / 180)) / Math.SQRT2;
  return { ends, sigma: Math.hypot((LINE_END_MM * scaleRatio) / 1000, turn) };
}

/** The 99 % point of the normal distribution. */
const ONE_IN_A_HUNDRED = 2.3263;

/**
 * The most that a hand leaves over, once in a hundred drawings: root mean square in sigmas over so many lines more than
 * figures were fitted. The root of chi-square's 99 % point over its degrees of freedom (Wilson and Hilferty 1931, from memory).
 */
export function mostMisfit(free: number): number {
  const share = 2 / (9 * free);
  return (1 - share + ONE_IN_A_HUNDRED * Math.sqrt(share)) ** 1.5;
}

/** By this much more of squared misses than the best meeting leaves, another is refused: chi-square of two, 99 %. */
export const SAME_MEETING = 9.21;

/** The same for its height alone: chi-square of one, 99 %. */
export const SAME_HEIGHT = 6.63;
