"use client";

import { useCallback, useEffect } from "react";
import { newDrawing } from "@/app/_photo/checked-drawing";
import type { DrawingAnswer, FourPoints, OwnLines } from "@/app/_photo/worker/messages";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import type { SheetCode } from "@/lib/sheet/sheet-code";
import { useCheck, useCheckRoom } from "./check-context";
import type { ShownPhoto } from "./check-store";
import { asAddress, showPhoto } from "./show-photo";

type Props = {
  readonly exercise: Exercise | null;
  /** The id that the address names. */
  readonly asked: string | null;
  readonly goTo: (id: string) => void;
};

/** Takes a photograph through the worker, and its exercise from the server, to a drawing that the student can confirm. */
export function useReadPhoto({ exercise, asked, goTo }: Props) {
  const { store, worker, homework } = useCheckRoom();
  const stage = useCheck((check) => check.stage);
  const found = stage.at === "found" ? stage : null;

  const step = useCallback((words: string) => store.getState().show({ at: "working", words }), [store]);
  const refuse = useCallback(
    (say: string, remedy: string, photo: ShownPhoto | null) =>
      store.getState().show({ at: "refused", say, remedy, photo }),
    [store],
  );
  const fail = useCallback(
    (error: unknown) =>
      refuse(
        "The photograph could not be read here.",
        navigator.onLine
          ? `Load the page again and try once more. (${error instanceof Error ? error.message : String(error)})`
          : "The network is away: what reads photographs is fetched the first time. Try again when it is back.",
        null,
      ),
    [refuse],
  );

  const readPhoto = useCallback(
    async (file: Blob, look = true) => {
      step("Opening the photograph");
      try {
        const answer = await worker.readPhoto(file, look, step);
        const photo = answer.shown && (await showPhoto(answer.shown));
        if (answer.kind === "refused") return refuse(answer.say, answer.remedy, photo);
        if (!photo) throw new Error("A photograph that was read is not here.");
        if (answer.kind === "opened") return store.getState().show({ at: "corners", photo });
        const { code, residualMm } = answer;
        store.getState().show({ at: "found", code, residualMm, photo });
      } catch (error) {
        fail(error);
      }
    },
    [worker, store, step, refuse, fail],
  );

  const accept = useCallback(
    async (given: Exercise, answer: DrawingAnswer, residualMm: number | null, photo: ShownPhoto | null) => {
      if (answer.kind === "refused") return refuse(answer.say, answer.remedy, photo);
      const sheet = layOutPracticeSheet(given, { paper: answer.paper });
      if (!sheet) throw new Error("The sheet that was read has no layout.");
      store.getState().take(newDrawing(given, sheet, answer, await asAddress(answer.picture), residualMm));
    },
    [store, refuse],
  );

  const readCorners = useCallback(
    async (given: Exercise, photo: ShownPhoto, corners: FourPoints, ownLines: OwnLines | null) => {
      step("Straightening it by your corners");
      try {
        const answer = await worker.readDrawing({ ask: "corners", exercise: given, corners, ownLines }, step);
        await accept(given, answer, null, photo);
      } catch (error) {
        fail(error);
      }
    },
    [worker, step, accept, fail],
  );

  // The code names an exercise; the server gives it with the page's next address.
  useEffect(() => {
    if (!found) return;
    const { code, residualMm, photo } = found;
    const trouble = fitTrouble(code, exercise, asked, homework !== null);
    if (trouble === "fetch") goTo(code.exercise);
    else if (trouble) refuse(trouble.say, trouble.remedy, photo);
    if (trouble || !exercise) return;
    step("Reading the pencil");
    worker
      .readDrawing({ ask: "drawing", exercise, code }, step)
      .then((answer) => accept(exercise, answer, residualMm, photo))
      .catch(fail);
  }, [found, exercise, asked, homework, goTo, worker, step, accept, refuse, fail]);

  return { readPhoto, readCorners };
}

type Trouble = { readonly say: string; readonly remedy: string };

/** Why the sheet found cannot be checked with the exercise on hand: null where it can, "fetch" where that is still to come. */
export function fitTrouble(
  code: Pick<SheetCode, "exercise" | "version">,
  exercise: Pick<Exercise, "id" | "version" | "title"> | null,
  asked: string | null,
  isHomework: boolean,
): Trouble | "fetch" | null {
  if (isHomework && exercise && code.exercise !== exercise.id)
    return {
      say: `This is a sheet of another exercise. The homework asks for “${exercise.title}”.`,
      remedy: "Take a photograph of that sheet. To check this one for yourself, come to Check from the first page.",
    };
  if (asked !== code.exercise) return "fetch";
  if (!exercise)
    return {
      say: "The sheet's exercise is not among those that are here.",
      remedy: "It may have been printed at another computer. Check it there, or choose another sheet.",
    };
  if (exercise.version !== code.version)
    return {
      say: `The sheet was printed from version ${code.version} of the exercise, and here it is version ${exercise.version}.`,
      remedy: "Print the sheet anew, and draw on that one.",
    };
  return null;
}
