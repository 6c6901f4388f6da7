import { faultsOf } from "../../exercise/check-sense";
import type { Exercise } from "../../exercise/exercise";
import { PENCIL_MM } from "../../exercise/tolerance";
import { distanceForBackWallRise } from "../../stage/viewer";

/** What the student drew of their own eye, metres of the picture above the plaster line. */
export type OwnEye = {
  /** The horizon. */
  readonly horizonZ: number;
  /** The foot of the back wall. */
  readonly backWallFootZ: number;
};

export type OwnEyeRefusal =
  /** The task reads a given picture back, and that was drawn for the exercise's eye. */
  | "picture is given"
  | "no number"
  /** The horizon on or under the plaster line's foot. */
  | "horizon under the floor"
  | "foot above the horizon"
  /** The back wall's foot no higher than the plaster line's, or than a raked floor's end seen from infinitely far. */
  | "foot under the floor"
  /** A pencil's width of either line would make quite another eye of it. */
  | "too near to tell"
  /** From there something of the set is beside or behind the eye, or nothing of it in the frame. */
  | "set not seen";

export type ExerciseForOwnEye =
  | {
      readonly kind: "ready";
      /** The same exercise, its viewer replaced: marks, habits and lines are graded against it as against any other. */
      readonly exercise: Exercise;
      /** One sigma of the distance of that eye for a pencil's width in either line, metres. */
      readonly distanceGive: number;
    }
  | { readonly kind: "refused"; readonly why: OwnEyeRefusal; readonly say: string };

/** An eye is not told when a pencil's width leaves its distance uncertain (one sigma) by more than this share of itself. */
const CANNOT_TELL = 0.5;

/**
 * An exercise as it is for the eye that a student drew: of the horizon and the foot of the back wall in their own drawing,
 * both in metres above the plaster line, h = horizon and D = depth (h - r) / (r - rake depth), from similar triangles. The
 * eye stays as far from the centre line as the exercise's. `scaleRatio` is the drawing's own scale.
 */
export function exerciseForOwnEye(
  exercise: Exercise,
  { horizonZ, backWallFootZ }: OwnEye,
  scaleRatio: number = exercise.scaleRatio,
): ExerciseForOwnEye {
  const { stage, viewer, task } = exercise;
  if (task.kind === "picture-to-plan") return refuse("picture is given");
  if (!(Number.isFinite(horizonZ) && Number.isFinite(backWallFootZ))) return refuse("no number");
  if (!(horizonZ > 0)) return refuse("horizon under the floor");
  if (!(backWallFootZ < horizonZ)) return refuse("foot above the horizon");
  const distance = distanceForBackWallRise(stage, horizonZ, backWallFootZ);
  if (distance === null) return refuse("foot under the floor");
  const distanceGive = giveOf(exercise, horizonZ, backWallFootZ, (PENCIL_MM * scaleRatio) / 1000);
  if (!(distanceGive <= CANNOT_TELL * distance)) return refuse("too near to tell");
  const own: Exercise = { ...exercise, viewer: { ...viewer, distance, eyeHeight: horizonZ } };
  const known = new Set(faultsOf(exercise).map(({ message }) => message));
  if (faultsOf(own).some(({ message }) => !known.has(message))) return refuse("set not seen");
  return { kind: "ready", exercise: own, distanceGive };
}

/** One sigma of D = depth (h - r) / (r - f) when h and r each have this one, metres: the root of the squares of both slopes. */
function giveOf({ stage }: Exercise, horizon: number, rise: number, sigma: number): number {
  const over = rise - stage.rake * stage.depth;
  const byHorizon = stage.depth / over;
  const byRise = (stage.depth * (horizon - rise + over)) / over ** 2;
  return sigma * Math.hypot(byHorizon, byRise);
}

const SAY: Readonly<Record<OwnEyeRefusal, string>> = {
  "picture is given":
    "This task reads a given picture back, and that picture was drawn for one eye. It is graded for that eye.",
  "no number": "Your horizon and the foot of your back wall are not both on the drawing yet. Set both.",
  "horizon under the floor":
    "Your horizon lies no higher than the plaster line: the eye would be in the floor and see none of it. Set the horizon above the plaster line, at the height of the eye.",
  "foot above the horizon":
    "The foot of your back wall lies on the horizon or above it. A floor ends at the horizon at the latest: set the foot of the back wall below it.",
  "foot under the floor":
    "The foot of your back wall lies too low: a floor that goes upstage rises in the picture, and no eye sees its far end there. Set the foot of the back wall higher.",
  "too near to tell":
    "The foot of your back wall lies so close to the horizon, or to its lowest place, that a pencil's width there moves the eye by half its distance. Set it between the two, or have the drawing graded for the exercise's own eye.",
  "set not seen":
    "From the eye that you drew, part of this set stands beside the eye or behind it. Check the horizon and the foot of the back wall, or have the drawing graded for the exercise's own eye.",
};

function refuse(why: OwnEyeRefusal): ExerciseForOwnEye {
  return { kind: "refused", why, say: SAY[why] };
}
