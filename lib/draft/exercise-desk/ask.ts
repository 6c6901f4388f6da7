import type { Task } from "../../exercise/exercise";
import type { EditOf } from "../edits/changed";
import type { PointUse } from "./askable-points";

type Asked = Pick<Task, "marks" | "given">;

/**
 * The edit that gives a point another use: asked last of all, given on the sheet, or neither. The marks are the author's from then
 * on; only a point that becomes given leaves an order that is worked out as it is, since that order asks for no given point.
 */
export function putPoint({ marks, given }: Asked, name: string, use: PointUse): EditOf<"set-task"> {
  const without = (names: readonly string[]) => names.filter((other) => other !== name);
  const task = {
    ...(use === "asked" && !marks.includes(name) ? { marks: [...marks, name] } : {}),
    ...(use === "free" ? { marks: without(marks) } : {}),
    ...(use === "given" && !given.includes(name) ? { given: [...given, name] } : {}),
    ...(use !== "given" && given.includes(name) ? { given: without(given) } : {}),
  };
  return { edit: "set-task", task };
}

/** The edit that asks for a mark `by` places later, or earlier; at the ends of the list it stays. Null where nothing changes. */
export function moveMark({ marks }: Asked, name: string, by: number): EditOf<"set-task"> | null {
  const from = marks.indexOf(name);
  const to = Math.min(marks.length - 1, Math.max(0, from + by));
  if (from < 0 || to === from) return null;
  const rest = marks.filter((other) => other !== name);
  return { edit: "set-task", task: { marks: [...rest.slice(0, to), name, ...rest.slice(to)] } };
}

/** The edit that has the marks worked out, now and with every change of the plan. */
export const TAKE_ORDER: EditOf<"set-task"> = { edit: "set-task", task: {}, marksBy: "order" };

/** The edit that keeps the marks as they stand and makes them the author's. */
export function keepOrder({ marks }: Asked): EditOf<"set-task"> {
  return { edit: "set-task", task: { marks: [...marks] }, marksBy: "author" };
}
