import type { Lettering } from "./display-list";
import { letteredWidthMm } from "./paper/letter-widths";

/** Cap height over font size of the lettering face we serve (measured in the browser: 66 to 69 hundredths). */
export const CAP_SHARE = 0.67;

/** Widths over letter height, measured of the same face and a little generous. */
const WIDTH = { mark: 0.5, small: 0.8, large: 0.95 } as const;
/** Clear space between lettering and its box, millimetres. */
const BOX_PAD_MM = 0.9;

/** A rectangle on paper, millimetres from the lettering's `at`, right and up. */
export type PaperBox = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

/** The room a lettering takes on paper, with the line drawn round it where it is boxed. Widths are estimates, of the plain face from its own table. */
export function letteringBox({ text, heightMm, anchor, shiftMm: [right, up], boxed, face }: Lettering): PaperBox {
  const width = face ? letteredWidthMm(text, heightMm, face) : textWidthMm(text, heightMm);
  const left = right - (anchor === "start" ? 0 : anchor === "end" ? width : width / 2);
  const pad = boxed ? BOX_PAD_MM : 0;
  return { left: left - pad, right: left + width + pad, bottom: up - pad, top: up + heightMm + pad };
}

/** How wide a text is on paper, millimetres, about. */
export function textWidthMm(text: string, heightMm: number): number {
  let width = 0;
  for (const letter of text)
    width += /[\s'".,:;|Iil1-]/.test(letter) ? WIDTH.mark : /[a-z]/.test(letter) ? WIDTH.small : WIDTH.large;
  return width * heightMm;
}

/**
 * The shift, millimetres, that sets a text of anchor `middle` beside a line through its `at`, `clearMm` off it on the side of
 * the unit vector `normal`, however the line slopes.
 */
export function shiftBeside(
  [right, up]: readonly [number, number],
  text: string,
  heightMm: number,
  clearMm: number,
): readonly [right: number, up: number] {
  const reach = (textWidthMm(text, heightMm) * Math.abs(right) + heightMm * Math.abs(up)) / 2 + clearMm;
  return [right * reach, up * reach - heightMm / 2];
}
