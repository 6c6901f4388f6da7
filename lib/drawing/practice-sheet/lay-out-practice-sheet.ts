import type { Exercise } from "../../exercise/exercise";
import { toPaperMm } from "../../measure/scale";
import { chooseScale, type Scale } from "../../sheet/choose-scale";
import { layOutSheet, type SheetLayout } from "../../sheet/lay-out-sheet";
import { type Paper, paperSize } from "../../sheet/paper-size";
import type { DrawingNeeds } from "../../sheet/place-drawings";
import { printSheetCode } from "../../sheet/sheet-code";
import { displayBounds } from "../display-bounds";
import type { DisplayList } from "../display-list";
import { atScale } from "./at-scale";
import { codeSize } from "./draw-code";
import { layOutParagraph, layOutTasks } from "./lay-out-notes";
import { sheetPicture } from "./sheet-picture";
import { numberedPlan } from "./sheet-plan";
import { taskLines } from "./task-lines";

/** A practice sheet's paper, scale and places: what prints it, and what reads a photograph of it, both start from this. */
export type PracticeSheet = {
  readonly paper: Paper;
  readonly scale: Scale;
  /** The exercise at the sheet's scale. */
  readonly exercise: Exercise;
  readonly layout: SheetLayout;
  /** What the code says. */
  readonly code: string;
};

export type PracticeSheetOptions = { readonly paper: Paper; readonly copy?: number | null };

/**
 * The practice sheet of an exercise at the largest standard scale that its paper has room for. The picture's and the plan's
 * [0, 0] stand at `layout.picture.at` and `layout.plan.at`. Null where the paper has no room for it at any scale: see
 * `whyNoPracticeSheet`.
 */
export function layOutPracticeSheet(exercise: Exercise, options: PracticeSheetOptions): PracticeSheet | null {
  return layOut(exercise, options, (printed) => {
    const asked = taskLines(printed);
    return (widthMm) => layOutTasks(asked, widthMm).heightMm;
  });
}

/**
 * Why an exercise has no practice sheet on a paper, in a sentence: its stage is too large for it, or its drawings have room there
 * but what is asked, line by line, has none beside them. Null where it has a sheet.
 */
export function whyNoPracticeSheet(exercise: Exercise, paper: Paper): string | null {
  if (layOutPracticeSheet(exercise, { paper })) return null;
  const { length } = exercise.task.marks;
  return layOut(exercise, { paper }, () => () => 0)
    ? `The ${length} points that are asked have no room beside the drawings on this paper. Take a larger one, or ask for fewer.`
    : "This stage is too large for this paper at any scale.";
}

/** The sheet where the lines of what is asked are as high as `tasksOf` says for a width, both in millimetres. */
function layOut(
  exercise: Exercise,
  { paper, copy = null }: PracticeSheetOptions,
  tasksOf: (printed: Exercise) => (widthMm: number) => number,
): PracticeSheet | null {
  const chosen = chooseScale(exercise.units, (scale) => {
    if (isTooLarge(exercise, paper, scale)) return null;
    const printed = atScale(exercise, scale);
    const { id, version } = exercise;
    const code = printSheetCode({ exercise: id, version, page: 1, paper, scale: scale.written, copy });
    const { ratio } = scale;
    const layout = layOutSheet(paper, {
      picture: drawingNeeds(sheetPicture(printed).stage, ratio),
      plan: drawingNeeds(numberedPlan(printed), ratio),
      introHeight: (widthMm) => layOutParagraph("brief", exercise.brief, widthMm).heightMm,
      tasksHeight: tasksOf(printed),
      codeMm: codeSize(code),
    });
    return layout && { exercise: printed, layout, code };
  });
  return chosen && { paper, scale: chosen.scale, ...chosen.laid };
}

/** Whether the opening over the bare stage is larger than the paper already: most scales need no more than that to be told. */
function isTooLarge({ stage }: Pick<Exercise, "stage">, paper: Paper, { ratio }: Scale): boolean {
  const { widthMm, heightMm } = paperSize(paper);
  const { opening, depth, apron } = stage;
  return toPaperMm(opening.width, ratio) > widthMm || toPaperMm(opening.height + depth + apron, ratio) > heightMm;
}

/** The box of each thing in a drawing, in millimetres of paper down the sheet: things that reach far out do so where they are. */
function drawingNeeds(list: DisplayList, ratio: number): DrawingNeeds {
  return list.flatMap((item) => {
    const box = displayBounds([item], ratio)?.map((metres) => toPaperMm(metres, ratio));
    if (!box) return [];
    const [left, bottom, right, top] = box as [number, number, number, number];
    return [{ left, top: -top, right, bottom: -bottom }];
  });
}
