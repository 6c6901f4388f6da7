import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { hasPoppler as findPoppler, NO_POPPLER } from "@/lib/cli/get-poppler.mjs";
import { pageToPng } from "@/lib/drawing/paper/page-to-png";
import { pagesToPdf } from "@/lib/drawing/paper/pages-to-pdf";
import type { PaperPage } from "@/lib/drawing/paper/paper-page";

/** Grey pixels of a page, row by row from its upper left corner. */
export type Pixels = {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
  readonly perMm: number;
};

const MM_PER_INCH = 25.4;

/** Whether this computer has poppler, whose programs read a PDF as any printer's would; where it has not, that is said. */
export const hasPoppler = findPoppler();
if (!hasPoppler) console.warn(NO_POPPLER);

/** A page as a printer would see it: from its PDF by poppler, or, on a computer without it, from its picture. */
export async function rasterise(page: PaperPage, dpi: number): Promise<Pixels> {
  const perMm = dpi / MM_PER_INCH;
  if (hasPoppler) {
    const pgm = await withPdf([page], (file) =>
      execFileSync("pdftoppm", ["-gray", "-r", String(dpi), file], { maxBuffer: 200_000_000 }),
    );
    const [head = "", width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString("latin1")) ?? [];
    return { width: Number(width), height: Number(height), grey: new Uint8Array(pgm.subarray(head.length)), perMm };
  }
  const image = sharp(Buffer.from(await pageToPng(page, { dpi })), { limitInputPixels: false });
  const { data, info } = await image.greyscale().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, grey: new Uint8Array(data), perMm };
}

/** Does something with pages written as a PDF file. */
export async function withPdf<Result>(pages: readonly PaperPage[], use: (file: string) => Result): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), "plasterline-sheet-"));
  try {
    const file = join(folder, "sheet.pdf");
    writeFileSync(file, await pagesToPdf(pages, { title: "A sheet" }));
    return use(file);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A stretch of dark pixels, millimetres from where the line looked along begins. */
export type DarkRun = { readonly from: number; readonly to: number };

/** Darker than this is ink. */
const DARK = 128;

/** The dark stretches along a row of a page, so far down it, millimetres; or along a column, so far in. */
export function darkRuns({ width, height, grey, perMm }: Pixels, along: "row" | "column", at: number): DarkRun[] {
  const line = Math.floor(at * perMm);
  const length = along === "row" ? width : height;
  const isDark = (i: number) => (grey[along === "row" ? line * width + i : i * width + line] ?? 255) < DARK;
  const runs: DarkRun[] = [];
  for (let i = 0; i < length; i++) {
    let end = i;
    while (end < length && isDark(end)) end += 1;
    if (end > i) runs.push({ from: i / perMm, to: end / perMm });
    i = Math.max(i, end);
  }
  return runs;
}
