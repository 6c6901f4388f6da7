import type { PostStore } from "@/app/_parts/hand-ins/post";
import { newWaiting } from "@/app/_parts/hand-ins/waiting";
import { type Attempt, markSetOf, newAttempt } from "@/app/_parts/kept-work/attempt";
import { keepAttempt, keepFinished, keptAttempt } from "@/app/_parts/kept-work/keep";
import { isRecord, readAttempt } from "@/app/_parts/kept-work/read-attempt";
import { put, type Shelf, take } from "@/app/_parts/kept-work/shelf";
import type { Exercise } from "@/lib/exercise/exercise";
import type { MarkSet } from "@/lib/exercise/marks";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { makeRecord } from "@/lib/progress/make-record";

/** Homework that an exercise is done for, as the server gave it. */
export type Homework = {
  readonly itemId: string;
  readonly memberId: string;
  readonly title: string;
  /** Corrections and scores are not shown yet. */
  readonly held: boolean;
  readonly dueAt: string | null;
  /** Null for any number. */
  readonly attemptsLeft: number | null;
  readonly last: { readonly receivedAt: string; readonly late: boolean; readonly marks: MarkSet | null } | null;
};

/** Where an attempt is kept while it is under way, and where it goes at its end. */
export type WorkDesk = {
  readonly held: boolean;
  readonly keep: (shelf: Shelf, attempt: Attempt) => boolean;
  readonly kept: (shelf: Shelf | null, exercise: Exercise) => Attempt | null;
  readonly finish: (shelf: Shelf | null, exercise: Exercise, attempt: Attempt, when: Date) => void;
};

const HOMEWORK_KEY = "plasterline.homework.";
const TRY_KEY = "plasterline.own.attempt";

/** An exercise done for oneself. */
export const ownDesk: WorkDesk = {
  held: false,
  keep: keepAttempt,
  kept: (shelf, exercise) => shelf && keptAttempt(shelf, exercise),
  finish: (shelf, exercise, attempt, when) => {
    if (shelf) keepInRecord(shelf, exercise, attempt, when);
  },
};

/**
 * An exercise that is in no course, tried: one attempt is kept, of the exercise tried last as it was then, and nothing of it
 * comes into the record, which tells of the course.
 */
export function tryDesk(id: string | null): WorkDesk {
  return {
    held: false,
    keep: (shelf, attempt) => put(shelf, TRY_KEY, { of: id, attempt }),
    kept: (shelf, exercise) => {
      const tried = shelf && take(shelf, TRY_KEY);
      const kept = isRecord(tried) && id !== null && tried.of === id ? readAttempt(tried.attempt) : null;
      return kept && kept.exercise === exercise.id && kept.version === exercise.version ? kept : null;
    },
    finish: () => {},
  };
}

/** An exercise done for homework: kept apart from the same done for oneself, and handed in at its end. */
export function homeworkDesk(homework: Homework, post: PostStore): WorkDesk {
  const { itemId, memberId, held, last } = homework;
  const key = `${HOMEWORK_KEY}${memberId}.${itemId}`;
  return {
    held,
    keep: (shelf, attempt) => put(shelf, key, attempt),
    kept: (shelf, exercise) => {
      const kept = shelf && readAttempt(take(shelf, key));
      if (kept && kept.exercise === exercise.id && kept.version === exercise.version) return kept;
      // Handed in from another device: its result is seen from here as well.
      if (!last?.marks) return null;
      return { ...newAttempt(exercise), marks: last.marks.marks, hints: last.marks.hints ?? {} };
    },
    finish: (shelf, exercise, attempt, when) => {
      const marks = markSetOf(attempt, exercise.scale);
      post.getState().handIn(newWaiting({ itemId, memberId, title: exercise.title, marks }, when));
      // The record would tell the score that is still kept back.
      if (shelf && !held) keepInRecord(shelf, exercise, attempt, when);
    },
  };
}

/** Keeps a finished exercise in the student's own record. */
function keepInRecord(shelf: Shelf, exercise: Exercise, attempt: Attempt, when: Date): void {
  const grade = gradeMarks(exercise, markSetOf(attempt, exercise.scale));
  keepFinished(shelf, makeRecord(exercise, grade, when.toISOString(), { hints: attempt.hints }));
}
