import sharp from "sharp";
import type { Ground } from "./page-colours";
import { pageToSvg } from "./page-to-svg";
import type { PaperPage } from "./paper-page";

const MM_PER_INCH = 25.4;
/** The largest picture made, pixels: more than a screen or a printed sheet can use. */
export const MOST_PIXELS = 60_000_000;

export type PngOptions = { readonly dpi: number; readonly ground?: Ground };

/** How many pixels a page has at a resolution. */
export function pixelsOf({ widthMm, heightMm }: Pick<PaperPage, "widthMm" | "heightMm">, dpi: number): number {
  return Math.round((widthMm * dpi) / MM_PER_INCH) * Math.round((heightMm * dpi) / MM_PER_INCH);
}

/** A page as a PNG of a resolution, which the file carries, so that it prints in real size. Throws past `MOST_PIXELS`. */
export async function pageToPng(page: PaperPage, { dpi, ground = "white" }: PngOptions): Promise<Uint8Array> {
  if (!(pixelsOf(page, dpi) <= MOST_PIXELS)) throw new Error(`A page of this size has too many pixels at ${dpi} dpi.`);
  const pixels = [page.widthMm, page.heightMm].map((mm) => Math.round((mm * dpi) / MM_PER_INCH)) as [number, number];
  const svg = Buffer.from(pageToSvg(page, { ground, text: "outlines", pixels }));
  return new Uint8Array(
    await sharp(svg, { limitInputPixels: MOST_PIXELS })
      .flatten({ background: ground === "white" ? "#ffffff" : "#f6f0df" })
      .withMetadata({ density: dpi })
      .png()
      .toBuffer(),
  );
}
