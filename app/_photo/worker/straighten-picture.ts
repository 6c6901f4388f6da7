import type { GreyPixels } from "@/lib/photo/pixels";
import { fitCorners } from "@/lib/photo/straighten/fit-corners";
import { straighten } from "@/lib/photo/straighten/straighten";
import { grow, sheetBox } from "@/lib/sheet/sheet-box";
import { pictureOf } from "./decode-photo";
import type { FourPoints, StraightAnswer } from "./messages";

/** The longer side of the straightened picture, pixels. */
const LONGER_PX = 1600;
/** So much of what lies round the rectangle is kept, a share of its longer side: it need not be the whole drawing. */
const ROUND_IT = 0.12;

/** A picture of a drawing as seen straight on, by the four corners of a rectangle that lies flat on the paper, millimetres wide and high. */
export async function straightenPicture(
  grey: GreyPixels,
  corners: FourPoints,
  [wide, high]: readonly [width: number, height: number],
): Promise<StraightAnswer> {
  const fitted = fitCorners(corners, sheetBox(0, 0, wide, high), grey);
  if (fitted.kind === "refused")
    return fitted.why === "too near"
      ? { kind: "refused", say: fitted.say, remedy: "Drag each to its own corner of the rectangle." }
      : {
          kind: "refused",
          say: "The four corners do not go round a rectangle: they cross over, or one lies between the others.",
          remedy: fitted.remedy,
        };
  const box = grow(sheetBox(0, 0, wide, high), ROUND_IT * Math.max(wide, high));
  const longer = Math.max(box.right - box.left, box.bottom - box.top);
  const page = straighten(grey, fitted.fit, box, LONGER_PX / longer);
  return {
    kind: "straight",
    picture: await pictureOf(page),
    width: page.width,
    height: page.height,
    widthMm: page.width / page.pixelsPerMm,
  };
}
