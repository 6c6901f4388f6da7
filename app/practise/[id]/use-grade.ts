"use client";

import { useMemo } from "react";
import { markSetOf } from "@/app/_parts/kept-work/attempt";
import type { Grade } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { usePractice, usePracticeRoom } from "./practice-context";

/** The grade of the marks set down so far. */
export function useGrade(): Grade {
  const { exercise } = usePracticeRoom();
  const marks = usePractice((practice) => practice.attempt.marks);
  const hints = usePractice((practice) => practice.attempt.hints);
  return useMemo(
    () =>
      gradeMarks(
        exercise,
        markSetOf({ exercise: exercise.id, version: exercise.version, marks, hints }, exercise.scale),
      ),
    [exercise, marks, hints],
  );
}

/** The mean score of the marks set down so far, or null before the first. */
export function scoreSoFar(grade: Grade): number | null {
  if (grade.marks.length === 0) return null;
  return grade.marks.reduce((sum, mark) => sum + mark.score, 0) / grade.marks.length;
}
