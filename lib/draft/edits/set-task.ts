import type { Task } from "../../exercise/exercise";
import { MAX_ELEMENTS, MAX_LETTERS, MAX_LEVEL } from "../../exercise/limits";
import type { Draft } from "../draft";
import { type Changed, type EditOf, refuse } from "./changed";
import { refuseName } from "./names";

/**
 * Changes what is asked. Marks that are listed are the author's from then on, unless it is said otherwise. A point is asked
 * or given, not both: of one that was the one and is to be the other, the new word holds.
 */
export function setTask(draft: Draft, { task: change, marksBy }: EditOf<"set-task">): Changed {
  const task = notBoth({ ...draft.exercise.task, ...change }, change);
  if (Math.max(task.marks.length, task.given.length) > MAX_ELEMENTS)
    return refuse(`A task has at most ${MAX_ELEMENTS.toLocaleString("en")} marks.`);
  const by = marksBy ?? (change.marks ? "author" : draft.marksBy);
  return { ok: true, draft: { ...draft, exercise: { ...draft.exercise, task }, marksBy: by }, made: [] };
}

function notBoth(task: Task, change: Partial<Task>): Task {
  const given = change.given ? task.given : task.given.filter((name) => !change.marks?.includes(name));
  const asked = new Set(given);
  return { ...task, given, marks: task.marks.filter((name) => !asked.has(name)) };
}

/** Changes the words around the plan, its unit and level. */
export function setWords(draft: Draft, { words }: EditOf<"set-words">): Changed {
  const { id, level, unit: _unit, ...texts } = words;
  const say = id === undefined ? null : refuseName(id, new Set());
  if (say) return refuse(say);
  if (level !== undefined && !(Number.isInteger(level) && level >= 1 && level <= MAX_LEVEL))
    return refuse(`A level is 1 to ${MAX_LEVEL}.`);
  if (Object.values(texts).some((text) => text.length > MAX_LETTERS))
    return refuse(`That is more than ${MAX_LETTERS.toLocaleString("en")} letters. Shorten it.`);
  return { ok: true, draft: { ...draft, exercise: { ...draft.exercise, ...words } }, made: [] };
}
