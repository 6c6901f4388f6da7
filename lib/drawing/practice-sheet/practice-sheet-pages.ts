import type { Exercise } from "../../exercise/exercise";
import type { Paper } from "../../sheet/paper-size";
import type { PaperPage } from "../paper/paper-page";
import { answerKeyPages, KEY_DEGREES, type KeyDegree } from "./answer-key-pages";
import { layOutPracticeSheet } from "./lay-out-practice-sheet";
import { studentPage } from "./student-page";

/** No key, one degree of it, or all three. */
export type KeyChoice = false | KeyDegree | "all";

export type PracticeSheetPagesOptions = {
  readonly paper: Paper;
  readonly key?: KeyChoice;
  /** The number that tells this sheet from others of a pile, from 1. */
  readonly copy?: number | null;
};

/**
 * The printed practice sheet of an exercise: the page that is drawn on, then the pages of its answer key. Empty for a stage
 * too large for the paper at the smallest scale.
 *
 * Usage: `pagesToPdf(practiceSheetPages(exercise, { paper: "letter", key: "points" }), { title: exercise.title })`.
 */
export function practiceSheetPages(
  exercise: Exercise,
  { paper, key = false, copy = null }: PracticeSheetPagesOptions,
): readonly PaperPage[] {
  const { student, keys } = sheetAndKeys(exercise, { paper, key, copy });
  return [...student, ...keys];
}

/** The same with the two kinds of page apart, for a set that has all keys at its end. */
export function sheetAndKeys(
  exercise: Exercise,
  { paper, key = false, copy = null }: PracticeSheetPagesOptions,
): { readonly student: readonly PaperPage[]; readonly keys: readonly PaperPage[] } {
  const sheet = layOutPracticeSheet(exercise, { paper, copy });
  if (!sheet) return { student: [], keys: [] };
  const degrees = key === false ? [] : key === "all" ? KEY_DEGREES : [key];
  return { student: [studentPage(sheet, copy)], keys: answerKeyPages(sheet, degrees, copy) };
}
