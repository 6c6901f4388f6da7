import type { PageFit } from "@/lib/photo/page-fit";
import type { GreyPixels } from "@/lib/photo/pixels";
import type { StraightPage } from "@/lib/photo/straight-page";
import { fitCorners } from "@/lib/photo/straighten/fit-corners";
import { photoFromSheet, sheetFromPhoto } from "@/lib/photo/straighten/map-page";
import { straighten } from "@/lib/photo/straighten/straighten";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { grow, type SheetBox, sheetBox } from "@/lib/sheet/sheet-box";
import { pictureOf } from "./decode-photo";
import type { Asked, StraightAnswer } from "./messages";

/** The longer side of the straightened picture, pixels. */
const LONGER_PX = 1600;
/** So much of what lies round the rectangle is kept, a share of its longer side: it need not be the whole drawing. */
const ROUND_IT = 0.12;
/** Where all of it is kept, no more than so many times that side: toward the horizon a photograph has the paper without end. */
const MOST_ROUND = 2;
const WHITE = 255;

/** A picture of a drawing as seen straight on, by the four corners of a rectangle that lies flat on the paper, millimetres wide and high. */
export async function straightenPicture(
  grey: GreyPixels,
  { corners, size: [wide, high], round, longerPx = LONGER_PX }: Extract<Asked, { readonly ask: "straighten" }>,
): Promise<StraightAnswer> {
  const rectangle = sheetBox(0, 0, wide, high);
  const fitted = fitCorners(corners, rectangle, grey);
  if (fitted.kind === "refused")
    return fitted.why === "too near"
      ? { kind: "refused", say: fitted.say, remedy: "Drag each to its own corner of the rectangle." }
      : {
          kind: "refused",
          say: "The four corners do not go round a rectangle: they cross over, or one lies between the others.",
          remedy: fitted.remedy,
        };
  const { fit } = fitted;
  const longer = Math.max(wide, high);
  const box =
    round === "all" ? allSeen(grey, fit, grow(rectangle, MOST_ROUND * longer)) : grow(rectangle, ROUND_IT * longer);
  const page = straighten(grey, fit, box, longerPx / Math.max(box.right - box.left, box.bottom - box.top));
  if (round === "all") clearOutside(page, grey, fit);
  return {
    kind: "straight",
    picture: await pictureOf(page),
    width: page.width,
    height: page.height,
    widthMm: page.width / page.pixelsPerMm,
  };
}

/** The box of what a photograph shows of the paper's plane, within limits. */
function allSeen({ width, height }: GreyPixels, fit: PageFit, limits: SheetBox): SheetBox {
  const places = (
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ] as const
  ).map((at) => sheetFromPhoto(fit, at));
  // Past the horizon there is no place: as much is kept as may be.
  if (places.some((place) => place === null)) return limits;
  const seen = places as readonly SheetPlace[];
  const [xs, ys] = [seen.map(([x]) => x), seen.map(([, y]) => y)];
  return {
    left: Math.max(limits.left, Math.min(...xs)),
    top: Math.max(limits.top, Math.min(...ys)),
    right: Math.min(limits.right, Math.max(...xs)),
    bottom: Math.min(limits.bottom, Math.max(...ys)),
  };
}

/** Past the photograph's edge its last pixels would go on and look like lines: there the picture is white. */
function clearOutside({ grey, width, height, box, pixelsPerMm }: StraightPage, photo: GreyPixels, fit: PageFit): void {
  for (let j = 0; j < height; j++)
    for (let i = 0; i < width; i++) {
      const at = photoFromSheet(fit, [box.left + (i + 0.5) / pixelsPerMm, box.top + (j + 0.5) / pixelsPerMm]);
      const inside = at && at[0] >= 0 && at[1] >= 0 && at[0] <= photo.width && at[1] <= photo.height;
      if (!inside) grey[j * width + i] = WHITE;
    }
}
