import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import { printScale } from "@/lib/measure/scale";
import { PAPERS, type Paper } from "@/lib/sheet/paper-size";

/** The scale that the practice sheet has on each paper, as it is lettered; null where the stage is too large for it. */
export type SheetScales = Readonly<Record<Paper, string | null>>;

export function sheetScalesOf(exercise: Exercise): SheetScales {
  const scales = PAPERS.map((paper): [Paper, string | null] => {
    const sheet = layOutPracticeSheet(exercise, { paper });
    return [paper, sheet && printScale(sheet.scale.written)];
  });
  return Object.fromEntries(scales) as Record<Paper, string | null>;
}
