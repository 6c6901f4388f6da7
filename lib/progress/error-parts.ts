import type { Exercise } from "../exercise/exercise";
import type { ProjectedPoint } from "../exercise/exercise-points";
import { cross, distance, subtract } from "../geometry/vector";
import type { GradedMark } from "../grading/grade";
import { meansPlace, standsAt } from "../grading/judge-mark";
import { toPaperMm } from "../measure/scale";
import { project } from "../perspective/project";
import type { PicturePoint } from "../stage/frame";

/** The parts of an error. `place` is all of it; `wall` is how far a mark lies off the line of its raking wall. */
export const PARTS = ["place", "depth", "across", "height", "wall"] as const;
export type Part = (typeof PARTS)[number];

/** Millimetres on paper, mark minus truth; null for a part that the mark does not have. */
export type ErrorParts = Readonly<Record<Part, number | null>>;

const NONE: ErrorParts = { place: null, depth: null, across: null, height: null, wall: null };

/**
 * A mark's error on paper, in parts, millimetres.
 *
 * A mark that means a place on the floor (or on a level) is taken apart along the true point's ray and across it: `depth`
 * is the height on paper between the two levels, positive upstage; `across` runs level from that ray to the mark, positive
 * to the viewer's right. So a mark on the right ray at a wrong depth is off in depth alone. A mark that shows no place
 * (on or above the horizon) has no `across`. A mark that means a height has `height`, positive up, and `across`, sideways on
 * paper. `wall`, where `near` (the other end of the wall, in the picture) is given, is the distance from the line near -> true.
 */
export function errorParts(
  exercise: Exercise,
  point: ProjectedPoint,
  mark: GradedMark,
  near: PicturePoint | null,
  scaleRatio: number = exercise.scaleRatio,
): ErrorParts {
  const mm = (metres: number) => toPaperMm(metres, scaleRatio);
  const reading = exercise.task.kind === "picture-to-plan";
  const place = mark.offMm;
  if (!reading && !meansPlace(point)) {
    const [X, Z] = subtract(mark.at, mark.true);
    return { ...NONE, place, across: mm(X), height: mm(Z) };
  }
  const wall = near && !reading ? offLine(near, mark.true, mark.at) : null;
  const shown = { ...NONE, place, wall: wall === null ? null : mm(wall) };
  if (mark.plan === null || !("upstage" in mark.plan))
    return reading ? shown : { ...shown, depth: mm(mark.at[1] - mark.true[1]) };
  const { across, upstage } = mark.plan;
  const [x, y] = [point.at[0], point.at[1] + upstage];
  const drawn = project(exercise.viewer, standsAt(exercise, point, [x + across, y]));
  const onRay = project(exercise.viewer, standsAt(exercise, point, [x, y]));
  if (!(drawn.seen && onRay.seen && point.picture)) return shown;
  // Above the eye what lies upstage is lower on paper: the sign is the stage's, the size the paper's.
  const level = Math.abs(onRay.at[1] - point.picture[1]);
  return { ...shown, depth: mm(Math.sign(upstage) * level), across: mm(drawn.at[0] - onRay.at[0]) };
}

/** Distance of a point from the line through two others, positive to the right of a -> b; null when the two are one. */
function offLine(a: readonly [number, number], b: readonly [number, number], at: readonly [number, number]) {
  const length = distance(a, b);
  return length > 0 ? cross(subtract(at, a), subtract(b, a)) / length : null;
}

/**
 * The parts that are wrong: of a mark within tolerance none; of another those beyond the tolerance, or the largest where none
 * alone is.
 */
export function wrongParts(parts: ErrorParts, within: boolean, toleranceMm: number): ReadonlySet<Part> {
  if (within) return new Set();
  const size = (part: Part) => Math.abs(parts[part] ?? 0);
  const beyond = PARTS.filter((part) => part !== "place" && size(part) > toleranceMm);
  const [largest] = (["depth", "across", "height"] as Part[]).sort((a, b) => size(b) - size(a));
  const blamed = beyond.length > 0 || largest === undefined || size(largest) === 0 ? beyond : [largest];
  return new Set<Part>(["place", ...blamed]);
}
