import { flattenLight } from "@/lib/photo/pencil/flatten-light";
import type { GreyPixels } from "@/lib/photo/pixels";
import { contextOf } from "./decode-photo";
import type { LinesAnswer } from "./messages";

/** The paper's own light is measured in squares of so many along the longer side: wider than any line of a plan, finer than a shadow. */
const SQUARES = 48;
/** `flattenLight` measures in squares of this many millimetres. */
const SQUARE_MM = 3;
/** Paper has a grain: what is no darker than this stays clear, and what is this dark is black; shares of the paper's own light. */
const PAPER = 0.06;
const BLACK = 0.55;

/** What is darker than its paper: black, as opaque as it is dark, and clear where the paper is, whatever light falls on it. */
export async function linesOf(grey: GreyPixels): Promise<LinesAnswer> {
  const { width, height } = grey;
  const pixelsPerMm = Math.max(width, height) / SQUARES / SQUARE_MM;
  const box = { left: 0, top: 0, right: width / pixelsPerMm, bottom: height / pixelsPerMm };
  const dark = flattenLight({ ...grey, pixelsPerMm, box });
  const image = new ImageData(width, height);
  for (let i = 0; i < dark.length; i++)
    image.data[4 * i + 3] = 255 * Math.min(1, Math.max(0, ((dark[i] as number) - PAPER) / (BLACK - PAPER)));
  const canvas = new OffscreenCanvas(width, height);
  contextOf(canvas).putImageData(image, 0, 0);
  return { kind: "lines", picture: await canvas.convertToBlob({ type: "image/png" }) };
}
