import type { SheetBox } from "../../sheet/sheet-box";
import type { PageFit } from "../page-fit";
import type { GreyPixels, PhotoPoint } from "../pixels";
import { fitPairs } from "./fit-pairs";
import { boxCorners, isClockwise, isSeenFromAbove } from "./seen-box";

export type CornersFit =
  | { readonly kind: "fitted"; readonly fit: PageFit }
  | {
      readonly kind: "refused";
      readonly why: "too near" | "not four-sided";
      readonly say: string;
      readonly remedy: string;
    };

/** Corners nearer to each other than this set nothing, pixels. */
const NEAREST_PX = 20;

/**
 * Where a drawing lies in a photograph, from four points set by hand on the corners of a box of it (the proscenium opening's): upper left, upper
 * right, lower right, lower left. The box is in millimetres right and down in the drawing's own frame. A homography meets four
 * points exactly, so nothing is said of the lens, and `residualMm` is null.
 */
export function fitCorners(
  corners: readonly [PhotoPoint, PhotoPoint, PhotoPoint, PhotoPoint],
  box: SheetBox,
  photo: Pick<GreyPixels, "width" | "height">,
): CornersFit {
  const near = corners.some((a, i) =>
    corners.some((b, k) => k > i && Math.hypot(a[0] - b[0], a[1] - b[1]) < NEAREST_PX),
  );
  if (near)
    return {
      kind: "refused",
      why: "too near",
      say: "Two of the four corners lie nearly on one another.",
      remedy: "Drag each to its own corner of the opening.",
    };
  const places = boxCorners(box);
  const fit = fitPairs(
    corners.map((point, i) => ({ place: places[i] as (typeof places)[number], point })),
    photo,
    "flat",
  );
  if (!fit || !isClockwise(corners) || !isSeenFromAbove(fit, box))
    return {
      kind: "refused",
      why: "not four-sided",
      say: "The four corners do not go round an opening: they cross over, or one lies between the others.",
      remedy: "Set them clockwise: upper left, upper right, lower right, lower left.",
    };
  return { kind: "fitted", fit };
}
