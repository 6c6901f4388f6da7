import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { courseText } from "@/lib/classroom/homework/course-text";
import { findHomework } from "@/lib/classroom/homework/find-homework";
import { handIn } from "@/lib/classroom/homework/hand-in";
import type { SetHomework } from "@/lib/classroom/homework/requests";
import { setHomework } from "@/lib/classroom/homework/set-homework";
import type { Store } from "@/lib/classroom/store/store";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { MarkSet } from "@/lib/exercise/marks";
import { readExercise } from "@/lib/exercise/read-exercise";
import { join, openRoom, type Room } from "../accounts/room";

export const WALLS = readFileSync("exercises/walls/01-square-and-parallel.json", "utf8");
const reading = readExercise(WALLS);
if (!reading.ok) throw new Error("The course cannot be read.");
export const wallsExercise = reading.exercise;

export const AT = (clock: string) => new Date(`2026-11-25T${clock}:00.000Z`);

/** Homework with everything left as it comes, and what a test wants otherwise. */
export function wanted(classId: string, other: Partial<SetHomework> = {}): SetHomework {
  return {
    classId,
    title: "Week one",
    items: [{ source: "course", exerciseId: wallsExercise.id, weight: 1 }],
    dueAt: AT("12:00").toISOString(),
    attempts: 0,
    counts: "best",
    feedback: "at-once",
    strictness: null,
    hints: "allowed",
    weight: 1,
    criteria: [],
    toWhom: { kind: "all" },
    ...other,
  };
}

export async function set(store: Store, classId: string, other: Partial<SetHomework> = {}, now = AT("08:00")) {
  const done = await setHomework(store, wanted(classId, other), (id) => courseText("exercises", id), now);
  if (!done.ok) throw new Error(done.sentence);
  const items = await store.db
    .selectFrom("homework_item")
    .selectAll()
    .where("homework_id", "=", done.homeworkId)
    .orderBy("place")
    .execute();
  const found = await findHomework(store.db, done.homeworkId);
  if (!found) throw new Error("What was set is gone.");
  return { homeworkId: done.homeworkId, items, itemId: items[0]?.id ?? "", ...found };
}

/** Marks for an exercise: all true but for being so far to one side, metres of the drawing. */
export function marksOf(exercise: Exercise, aside = 0): MarkSet {
  const points = exercisePoints(exercise);
  const marks = exercise.task.marks.map((point) => {
    const known = points.get(point);
    const at = exercise.task.kind === "picture-to-plan" ? known?.at : known?.picture;
    if (!at) throw new Error(`${point} is not seen.`);
    return { point, at: [at[0] + aside, at[1]] as const, with: "mouse" as const };
  });
  return {
    format: "plasterline.marks/1",
    exercise: exercise.id,
    version: exercise.version,
    marks,
  } as unknown as MarkSet;
}

/** Hands in, with everything right but what a test wants otherwise. */
export function give(
  store: Store,
  itemId: string,
  memberId: string,
  { id = randomUUID(), marks = marksOf(wallsExercise) as unknown, at = AT("09:00") } = {},
) {
  return handIn(store, { id, itemId, memberId, marks, madeAt: AT("08:59").toISOString() }, at);
}

/** A class of two. */
export async function two(store: Store): Promise<{ room: Room; wim: string; tess: string }> {
  const room = await openRoom(store);
  return { room, wim: (await join(room, "Wim")).memberId, tess: (await join(room, "Tess")).memberId };
}
