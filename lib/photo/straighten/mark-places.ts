import type { PracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import type { SheetPlace } from "../../sheet/place-drawings";
import type { PicturePoint, PlanPoint } from "../../stage/frame";

const MM_PER_METRE = 1000;

/** What a place on a sheet marks: [X, Z] of its picture, or of an exercise that is read back [x, y] of its plan; metres. */
export function markFromSheet(sheet: PracticeSheet, [right, down]: SheetPlace): PicturePoint | PlanPoint {
  const [zeroRight, zeroDown] = drawnOn(sheet).at;
  const metres = sheet.scale.ratio / MM_PER_METRE;
  return [(right - zeroRight) * metres, (zeroDown - down) * metres];
}

/** Where a mark stands on a sheet, millimetres. */
export function sheetFromMark(sheet: PracticeSheet, [across, up]: PicturePoint | PlanPoint): SheetPlace {
  const [zeroRight, zeroDown] = drawnOn(sheet).at;
  const mm = MM_PER_METRE / sheet.scale.ratio;
  return [zeroRight + across * mm, zeroDown - up * mm];
}

function drawnOn({ exercise, layout }: PracticeSheet) {
  return exercise.task.kind === "picture-to-plan" ? layout.plan : layout.picture;
}
