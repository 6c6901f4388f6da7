import type { Exercise } from "../../exercise/exercise";
import { readExercise } from "../../exercise/read-exercise";
import type { Grade } from "../../grading/grade";
import type { Subject } from "../access/person";
import type { Store } from "../store/store";
import type { Cell, Criterion } from "./gradebook";
import { makeGradebook } from "./make-gradebook";
import { readGradebook, titleOf } from "./read-gradebook";
import { type Remark, readRemark } from "./remarks";

/** One attempt, opened. */
export type OpenedWork = {
  readonly subject: Subject;
  readonly name: string;
  readonly homeworkId: string;
  readonly homework: string;
  readonly title: string;
  /** Null where the file cannot be read by this version. */
  readonly exercise: Exercise | null;
  readonly grade: Grade;
  readonly score: number | null;
  readonly receivedAt: string;
  /** By the student's own clock. */
  readonly madeAt: string;
  /** Whether this attempt came in after it was due, and why it counts as in time all the same. */
  readonly cameLate: boolean;
  readonly inTimeReason: string | null;
  readonly remark: Remark;
  readonly criteria: readonly Criterion[];
  readonly cell: Cell;
  /** The student's other attempts at the same, oldest first, this one among them. */
  readonly attempts: readonly { readonly id: string; readonly score: number | null }[];
};

/**
 * An attempt with all that a teacher needs beside it; nothing where there is none. A student may see results as soon as they
 * are handed in, or once the student's own due date is past, as the homework says.
 */
export async function readWork(store: Store, handInId: string, now: string): Promise<OpenedWork | undefined> {
  const { db } = store;
  const found = await db
    .selectFrom("hand_in")
    .innerJoin("homework_item", "homework_item.id", "hand_in.item_id")
    .innerJoin("homework", "homework.id", "homework_item.homework_id")
    .innerJoin("class", "class.id", "homework.class_id")
    .innerJoin("member", "member.id", "hand_in.member_id")
    .selectAll("hand_in")
    .select(["homework.id as homeworkId", "homework.title as homework", "homework.feedback", "homework.strictness"])
    .select(["homework_item.exercise as file", "homework_item.exercise_id", "unit", "level"])
    .select(["class.id as classId", "class.teacher_id as teacherId", "member.name"])
    .where("hand_in.id", "=", handInId)
    .executeTakeFirst();
  if (!found) return undefined;
  const rows = await readGradebook(store, found.classId);
  const cell = makeGradebook(rows, now)
    .rows.flatMap(({ cells }) => cells)
    .find(({ itemId, memberId }) => itemId === found.item_id && memberId === found.member_id);
  const work = rows.work.find(({ id }) => id === found.homeworkId);
  if (!cell || !work) return undefined;
  const reading = readExercise(found.exercise);
  const { strictness } = found;
  const exercise = reading.ok
    ? { ...reading.exercise, task: { ...reading.exercise.task, ...(strictness === null ? {} : { strictness }) } }
    : null;
  return {
    subject: {
      classId: found.classId,
      teacherId: found.teacherId,
      memberId: found.member_id,
      // Homework kept back until it is due, and never due, is kept back.
      released: found.feedback === "at-once" || (cell.dueAt !== null && now > cell.dueAt),
    },
    name: found.name,
    homeworkId: found.homeworkId,
    homework: found.homework,
    title: titleOf({ exercise: found.file ?? found.exercise, exercise_id: found.exercise_id, unit: null, level: null }),
    exercise,
    grade: JSON.parse(found.grade) as Grade,
    score: found.score,
    receivedAt: found.received_at,
    madeAt: found.made_at,
    cameLate: cell.dueAt !== null && found.received_at > cell.dueAt,
    inTimeReason: found.in_time_reason,
    remark: await readRemark(store, handInId),
    criteria: work.criteria,
    cell,
    attempts: rows.attempts
      .filter(({ itemId, memberId }) => itemId === found.item_id && memberId === found.member_id)
      .sort((a, b) => (a.receivedAt < b.receivedAt ? -1 : 1))
      .map(({ id, score }) => ({ id, score })),
  };
}
