import type { Exercise } from "../../exercise/exercise";
import { exercisePoints } from "../../exercise/exercise-points";
import {
  type DemonstrationStep,
  NOTHING_LIT,
  SHEET_PARTS,
  type TeacherNote,
  type UnnumberedStep,
} from "./demonstration-step";
import { markSteps } from "./mark-steps";
import { sheetSteps } from "./sheet-steps";
import { teacherNotes } from "./teacher-notes";

const NO_NOTE: TeacherNote = { worth: "", watch: [], ask: "" };

/**
 * An exercise as it is shown to a room: the plan and the empty sheet, then mark by mark in the exercise's order where the point
 * is, each line that finds it from what is drawn by then, and the point set down; at the end the finished picture. Everything
 * stands at its true place. An exercise that reads a picture back runs the other way. Points that the eye cannot see, which the
 * sense checks refuse, are passed over.
 */
export function demonstrationSteps(exercise: Exercise): readonly DemonstrationStep[] {
  const { task } = exercise;
  const points = exercisePoints(exercise);
  const notes = teacherNotes(exercise);
  const seen = task.marks.flatMap((name) => {
    const point = points.get(name);
    return point?.picture ? [point] : [];
  });
  const marks = seen.flatMap((point, i) =>
    markSteps(exercise, {
      point,
      before: [...task.given, ...seen.slice(0, i).map(({ name }) => name)],
      note: notes.get(point.name) ?? NO_NOTE,
    }),
  );
  const placed = [...task.given, ...seen.map(({ name }) => name)];
  return [...sheetSteps(exercise), ...marks, finishedStep(exercise, placed)].map((step, i) => ({
    ...step,
    number: i + 1,
  }));
}

function finishedStep({ task, title }: Exercise, placed: readonly string[]): UnnumberedStep {
  const reading = task.kind === "picture-to-plan";
  return {
    kind: "finished",
    point: null,
    title: reading ? "The plan, read back" : "The finished picture",
    part: title,
    sentence: reading
      ? "Every place is found: this is the plan that the picture was drawn from."
      : "Every corner is found. Rub out the construction, draw what the eye sees, and leave out what stands behind.",
    note: {
      worth: "",
      watch: [],
      ask: reading
        ? "Which place were you surest of, and which did the picture tell least about?"
        : "Which line of this picture would you check first if it looked wrong?",
    },
    shown: {
      parts: SHEET_PARTS,
      placed,
      lines: [],
      drawn: 0,
      lit: NOTHING_LIT,
      fresh: null,
      toRead: false,
      finished: true,
    },
  };
}
