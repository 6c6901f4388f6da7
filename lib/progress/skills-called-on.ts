import type { Exercise } from "../exercise/exercise";
import type { ProjectedPoint } from "../exercise/exercise-points";
import { meansPlace } from "../grading/judge-mark";
import type { Part } from "./error-parts";
import { SKILLS } from "./skills";

/** A skill that a mark is evidence for, and the part of its error that tells. */
export type Call = { readonly skill: string; readonly part: Part };

/** What was on the sheet when a point was asked, as far as it matters here. */
export type Sheet = {
  /** The point can be carried from an end of its raking wall. */
  readonly onRakingWall: boolean;
  /** The point straight below it is there. */
  readonly overPlaced: boolean;
};

/** Nearer than this a point stands on the plaster line, metres. */
const ON_THE_LINE_M = 0.001;

/**
 * Which skills a mark is evidence for, and by which part of its error. What a point calls on follows from what it is:
 *
 * | point | skill (part) |
 * | --- | --- |
 * | any, when reading back to the plan | reading-back (place), and as for a foot |
 * | what stands on the plaster line | true-size (place, or height) |
 * | what stands before it | apron (place, or height) |
 * | a foot upstage, a nosing | depth-by-eye, diagonals, on a rake rake (depth); ray-to-cvp, with the eye off the centre line off-centre-eye (across) |
 * | a foot on a raking wall, or at a raking side of furniture or a platform, an end of which is on the sheet | raking-wall (wall), in place of the rays |
 * | a top or head on one | raking-wall (height) |
 * | a top, head, trim, or a sill over the floor | height (height) |
 * | a nosing, whose level on paper is its depth and its risers together | height (depth) |
 * | a jamb's lowest point on the sheet | opening (place on the floor, across over it) |
 * | furniture, a platform or a wall on one, a stair, masking | furniture, platform, stairs, masking (place, or height) |
 * | any, in a whole set | whole-set (place) |
 *
 * Of these an exercise counts the skills it lists; one that lists none counts them all. A listed skill that the course
 * does not know, of a teacher's own, is judged by every mark's place.
 */
export function skillsCalledOn(exercise: Exercise, point: ProjectedPoint, sheet: Sheet): readonly Call[] {
  const listed = new Set(exercise.skills);
  const own = [...listed].filter((id) => !SKILLS.some((skill) => skill.id === id));
  const calls = [...callsOf(exercise, point, sheet), ...own.map((id): Call => call(id, "place"))];
  return calls.filter(({ skill }) => listed.size === 0 || listed.has(skill));
}

function callsOf(exercise: Exercise, point: ProjectedPoint, sheet: Sheet): readonly Call[] {
  const whole = exercise.unit === "sets" || exercise.skills.includes("whole-set") ? [call("whole-set", "place")] : [];
  if (exercise.task.kind === "picture-to-plan") return [...readingCalls(exercise, point), ...whole];
  const part: Part = meansPlace(point) ? "place" : "height";
  const y = point.at[1];
  return [
    ...(Math.abs(y) < ON_THE_LINE_M ? [call("true-size", part)] : []),
    ...(y <= -ON_THE_LINE_M ? [call("apron", part)] : []),
    ...(part === "place" && y >= ON_THE_LINE_M ? placeCalls(exercise, point, sheet) : []),
    ...(part === "height" ? [call("height", "height")] : []),
    ...(part === "height" && sheet.onRakingWall ? [call("raking-wall", "height")] : []),
    ...elementCalls(point, part, sheet),
    ...whole,
  ];
}

/** A mark on the plan always means a place; what else it calls on is the same as of a mark in the picture. */
function readingCalls(exercise: Exercise, point: ProjectedPoint): readonly Call[] {
  const sheet = { onRakingWall: false, overPlaced: false };
  const upstage = point.at[1] >= ON_THE_LINE_M ? placeCalls(exercise, { ...point, role: "foot" }, sheet) : [];
  return [call("reading-back", "place"), ...upstage, ...elementCalls(point, "place", sheet)];
}

function placeCalls(exercise: Exercise, point: ProjectedPoint, sheet: Sheet): readonly Call[] {
  if (sheet.onRakingWall && point.group === "opening") return [call("raking-wall", "wall")];
  if (point.group === "opening") return [];
  const depths = ["depth-by-eye", "diagonals", ...(exercise.stage.rake === 0 ? [] : ["rake"])];
  const rays = ["ray-to-cvp", ...(exercise.viewer.offset === 0 ? [] : ["off-centre-eye"])];
  return [
    ...depths.map((id) => call(id, "depth")),
    ...(sheet.onRakingWall ? [call("raking-wall", "wall")] : rays.map((id) => call(id, "across"))),
    ...(point.role === "nosing" ? [call("height", "depth")] : []),
  ];
}

function elementCalls(point: ProjectedPoint, part: Part, sheet: Sheet): readonly Call[] {
  switch (point.group) {
    case "opening":
      return sheet.overPlaced ? [] : [call("opening", part === "place" ? "place" : "across")];
    case "furniture":
      return [call("furniture", part)];
    case "platform":
      return [call("platform", part)];
    case "stair":
      return [call("stairs", part)];
    case "masking":
      return [call("masking", part)];
    default:
      return point.base > 0 ? [call("platform", part)] : [];
  }
}

function call(skill: string, part: Part): Call {
  return { skill, part };
}
