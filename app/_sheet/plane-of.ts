import type { Exercise } from "@/lib/exercise/exercise";
import type { Plane } from "./view";

/** The drawing that the student marks: the picture, or the plan where it is read back out of the picture. */
export function planeOf({ task }: Pick<Exercise, "task">): Plane {
  return task.kind === "picture-to-plan" ? "plan" : "picture";
}
