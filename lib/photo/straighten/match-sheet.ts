import { layOutPracticeSheet, type PracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "../../exercise/exercise";
import type { SheetPlace } from "../../sheet/place-drawings";
import { printSheetCode, type SheetCode } from "../../sheet/sheet-code";

export type SheetMatch =
  | { readonly kind: "matched"; readonly sheet: PracticeSheet }
  | {
      readonly kind: "refused";
      readonly why: "other exercise" | "other version" | "other layout" | "misplaced";
      readonly say: string;
      readonly remedy: string;
    };

/** The code's middle lies at most so far from its printed place, millimetres: past that the page is not where the markers say. */
const MISPLACED_MM = 2;

/**
 * The sheet that a photographed code stands for, laid out again from its exercise: what is printed on it, and where. Refused
 * where the exercise is another one, or has been changed since the sheet was printed so that the sheet is no longer the same, or where the code does not
 * lie in the page's fit where it was printed (`codeAt`, millimetres of the sheet).
 */
export function matchSheet(
  exercise: Exercise,
  { code, codeAt }: { readonly code: SheetCode; readonly codeAt: SheetPlace },
): SheetMatch {
  if (code.exercise !== exercise.id)
    return {
      kind: "refused",
      why: "other exercise",
      say: `The sheet is of the exercise ${code.exercise}, not of ${exercise.id}.`,
      remedy: "Check it with its own exercise.",
    };
  if (code.version !== exercise.version)
    return {
      kind: "refused",
      why: "other version",
      say: `The sheet was printed from version ${code.version} of the exercise, and this is version ${exercise.version}.`,
      remedy: "Check it with the version it was printed from, or print the sheet again.",
    };
  const sheet = layOutPracticeSheet(exercise, { paper: code.paper, copy: code.copy });
  if (!sheet || sheet.code !== printSheetCode(code))
    return {
      kind: "refused",
      why: "other layout",
      say: `The sheet was printed at ${code.scale}, and the exercise as it is now is not: it was changed since.`,
      remedy: "Print the sheet again.",
    };
  const { left, top, right, bottom } = sheet.layout.code;
  const off = Math.hypot(codeAt[0] - (left + right) / 2, codeAt[1] - (top + bottom) / 2);
  if (!(off <= MISPLACED_MM))
    return {
      kind: "refused",
      why: "misplaced",
      say: "The code on the sheet does not stand where this exercise's sheet has it now: one of the two was changed.",
      remedy:
        "Lay the sheet flat with no other one in view, and photograph it from above. If the exercise was changed since, print it again.",
    };
  return { kind: "matched", sheet };
}
