import type { Task } from "../../exercise/exercise";
import type { EditOf } from "../edits/changed";
import type { PointUse } from "./askable-points";
import type { MarkPlace } from "./mark-places";

/** What a press makes of a place: asked next, then given, then neither, and round again. */
export const USE_AFTER: Readonly<Record<PointUse, PointUse>> = { free: "asked", asked: "given", given: "free" };

/** The edit that gives all points of a place another use; those that come to be asked are asked last, the lowest first. */
export function putPlace(
  { marks, given }: Pick<Task, "marks" | "given">,
  { names }: Pick<MarkPlace, "names">,
  use: PointUse,
): EditOf<"set-task"> {
  const others = (list: readonly string[]) => list.filter((name) => !names.includes(name));
  return {
    edit: "set-task",
    task: {
      marks: use === "asked" ? [...others(marks), ...names] : others(marks),
      given: use === "given" ? [...others(given), ...names] : others(given),
    },
  };
}

/** The edit that asks for nothing, for the author to ask for one point after another. */
export const ASK_NOTHING: EditOf<"set-task"> = { edit: "set-task", task: { marks: [] }, marksBy: "author" };
