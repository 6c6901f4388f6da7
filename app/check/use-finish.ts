"use client";

import { newWaiting } from "@/app/_parts/hand-ins/waiting";
import { keepFinished } from "@/app/_parts/kept-work/keep";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { marksOf } from "@/app/_photo/checked-drawing";
import type { Exercise } from "@/lib/exercise/exercise";
import { makeRecord } from "@/lib/progress/make-record";
import { type Due, useCheckRoom } from "./check-context";
import { gradeDrawing } from "./grade-drawing";

/** The end of confirming: the marks are kept in the student's record, and of homework handed in. */
export function useFinish(exercise: Exercise): (() => void) & { readonly words: string } {
  const { store, homework } = useCheckRoom();
  const handIn = useHandIn(exercise);
  const finish = () => {
    if (!store.getState().confirm()) return;
    const { drawing } = store.getState();
    if (!drawing) return;
    if (homework?.held) return handIn(homework);
    const shelf = findShelf();
    const { grade } = gradeDrawing(exercise, drawing);
    // A drawing for the student's own eye is another task than the exercise's.
    if (shelf && drawing.ownEye === null) keepFinished(shelf, makeRecord(exercise, grade, new Date().toISOString()));
  };
  return Object.assign(finish, { words: homework?.held ? "That is it: hand it in" : "That is it: mark it" });
}

/** Hands the confirmed marks in, once. */
export function useHandIn(exercise: Exercise): (due: Due) => void {
  const { store, post } = useCheckRoom();
  return ({ itemId, memberId }) => {
    const { drawing, handedIn } = store.getState();
    if (!drawing?.confirmed || drawing.handedIn !== null) return;
    const marks = marksOf(drawing);
    const waiting = newWaiting({ itemId, memberId, title: exercise.title, marks }, new Date());
    post.getState().handIn(waiting);
    handedIn(waiting.id);
  };
}
