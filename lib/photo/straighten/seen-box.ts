import type { SheetPlace } from "../../sheet/place-drawings";
import type { SheetBox } from "../../sheet/sheet-box";
import type { PageFit } from "../page-fit";
import type { GreyPixels, PhotoPoint } from "../pixels";
import { photoFromSheet } from "./map-page";

/** A box's corners clockwise from its upper left, the order in which a marker's come. */
export function boxCorners({ left, top, right, bottom }: SheetBox): readonly SheetPlace[] {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

/** How far a place lies outside a box, millimetres; 0 within it. */
export function awayFrom({ left, top, right, bottom }: SheetBox, [x, y]: SheetPlace): number {
  return Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
}

/** Whether a box lies before the camera with its printed side to it: its corners clockwise in the photograph as on the paper. */
export function isSeenFromAbove(fit: PageFit, box: SheetBox): boolean {
  const seen = boxCorners(box).map((place) => photoFromSheet(fit, place));
  return seen.every((each): each is PhotoPoint => each !== null) && isClockwise(seen);
}

/** Whether points of a photograph turn to the right at every one of them, as the corners of a sheet seen from above do. */
export function isClockwise(points: readonly PhotoPoint[]): boolean {
  return points.every((b, i) => {
    const a = points.at(i - 1) as PhotoPoint;
    const c = points[(i + 1) % points.length] as PhotoPoint;
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]) > 0;
  });
}

/** Whether a photograph has all of a box of the sheet. Edges are straight enough for its corners to tell. */
export function hasBox({ width, height }: Pick<GreyPixels, "width" | "height">, fit: PageFit, box: SheetBox): boolean {
  return boxCorners(box).every((place) => {
    const at = photoFromSheet(fit, place);
    return at !== null && at[0] >= 0 && at[1] >= 0 && at[0] <= width && at[1] <= height;
  });
}
