import sharp from "sharp";
import { pageToSvg } from "@/lib/drawing/paper/page-to-svg";
import type { PaperPage } from "@/lib/drawing/paper/paper-page";

/** What light a page sends back, row by row, 0 to 65535 for all of it: linear, as light adds up. */
export type PageRaster = {
  readonly width: number;
  readonly height: number;
  readonly perMm: number;
  readonly light: Uint16Array;
};

/** What white paper and solid toner send back (about; common practice, no source). */
const PAPER = 0.88;
const TONER = 0.04;
/** A picture's levels over light (IEC 61966-2-1, sRGB, as a plain power, which is near enough for ink on paper). */
export const GAMMA = 2.2;

/** The printed page at about so many pixels a millimetre: at as many as make its width a whole number of them. */
export async function rasterPage(page: PaperPage, about: number): Promise<PageRaster> {
  const width = Math.round(page.widthMm * about);
  const perMm = width / page.widthMm;
  const height = Math.ceil(page.heightMm * perMm);
  // From the upper left corner, or what the height is rounded by would move the page.
  const svg = pageToSvg(page, { text: "outlines", pixels: [width, height] }).replace(
    "<svg ",
    '<svg preserveAspectRatio="xMinYMin meet" ',
  );
  const picture = sharp(Buffer.from(svg), { limitInputPixels: false }).flatten({ background: "#ffffff" }).greyscale();
  const grey = await picture.raw().toBuffer();
  const table = Uint16Array.from({ length: 256 }, (_, i) =>
    Math.round(65535 * (TONER + (PAPER - TONER) * (i / 255) ** GAMMA)),
  );
  const light = new Uint16Array(width * height);
  for (let i = 0; i < light.length; i++) light[i] = table[grey[i] ?? 255] ?? 0;
  return { width, height, perMm, light };
}
