import { layOutPracticeSheet, whyNoPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import { printScale, toPaperMm } from "@/lib/measure/scale";
import { PAPERS, type Paper } from "@/lib/sheet/paper-size";

/** The scale that the practice sheet has on a paper, as it is lettered, or why it has none there. */
export type SheetScale =
  | {
      readonly fits: true;
      readonly scale: string /** How wide the opening is in the picture. */;
      readonly openingMm: number;
    }
  | { readonly fits: false; readonly say: string };

export type SheetScales = Readonly<Record<Paper, SheetScale>>;

export function sheetScalesOf(exercise: Exercise): SheetScales {
  const scales = PAPERS.map((paper): [Paper, SheetScale] => {
    const sheet = layOutPracticeSheet(exercise, { paper });
    if (sheet) {
      const { written, ratio } = sheet.scale;
      const openingMm = toPaperMm(exercise.stage.opening.width, ratio);
      return [paper, { fits: true, scale: printScale(written), openingMm }];
    }
    return [paper, { fits: false, say: whyNoPracticeSheet(exercise, paper) ?? "" }];
  });
  return Object.fromEntries(scales) as Record<Paper, SheetScale>;
}
