import { execFileSync } from "node:child_process";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { drawingPage } from "@/lib/drawing/drawing-pages/drawing-page";
import { DRAWING_VIEWS, type DrawingView } from "@/lib/drawing/drawing-pages/drawing-view";
import { pageToPng } from "@/lib/drawing/paper/page-to-png";
import type { Paper } from "@/lib/sheet/paper-size";
import { shippedExercise } from "../practice-sheet/exercises";
import { type DarkRun, darkRuns, hasPoppler, rasterise, withPdf } from "../rasterise";

const POINT_MM = 25.4 / 72;
/** What a scale rule can tell apart on paper. */
const RULE_MM = 0.2;
/** The border and the edge of the opening are the only lines as thick as this. */
const EXTRA_THICK_MM = 0.6;

function pageOf(id: string, view: DrawingView, paper?: Paper) {
  const drawn = drawingPage(shippedExercise(id), { view, ...(paper ? { paper } : {}) });
  if (!drawn) throw new Error(`${id} has no page.`);
  return drawn;
}

const middle = ({ from, to }: DarkRun) => (from + to) / 2;
const apart = (runs: readonly DarkRun[], a: number, b: number) =>
  middle(runs.at(b) as DarkRun) - middle(runs.at(a) as DarkRun);

describe("a drawing on paper, as a printer sees it", () => {
  it.each([
    // The Tide Office's opening is 32 ft wide: 12 in at 3/8 in to the foot, 8 in at 1/4, 4 in at 1/8. The bar is 4 or 8 ft long.
    ["picture", undefined, "3/8in=1ft", 304.8, 38.1],
    ["picture", "letter", "1/4in=1ft", 203.2, 50.8],
    ["both", "letter", "1/8in=1ft", 101.6, 25.4],
  ] as const)("%s on %s is true to a rule at %s", async (view, paper, scale, openingMm, barMm) => {
    const { page, scale: used } = pageOf("the-tide-office", view, paper);
    expect(used.written).toBe(scale);
    const pixels = await rasterise(page, 600);
    const thick = (along: "row" | "column", at: number) =>
      darkRuns(pixels, along, at).filter(({ from, to }) => to - from > EXTRA_THICK_MM);
    // A row a foot under the head of the opening, which is 18 ft high, over the walls of 12 ft: border, opening, border.
    const [picture] = page.layers;
    const row = (picture?.at[1] ?? 0) - openingMm * (17 / 32);
    const across = thick("row", row);
    expect(across).toHaveLength(4);
    expect(Math.abs(apart(across, 1, 2) - openingMm)).toBeLessThan(RULE_MM);
    expect(Math.abs(apart(across, 0, -1) - (page.widthMm - 16))).toBeLessThan(RULE_MM);
    const down = thick("column", page.widthMm - 10);
    expect(Math.abs(apart(down, 0, -1) - (page.heightMm - 16))).toBeLessThan(RULE_MM);
    // The bar from its first edge to its last, and each part between: black, white, black, white and the edge that ends it.
    const bar = darkRuns(pixels, "row", page.heightMm - 8 - 13.9).filter(({ from, to }) => from > 9 && to < 66);
    expect(bar).toHaveLength(3);
    const edges = [bar[0]?.from, bar[0]?.to, bar[1]?.from, bar[1]?.to, bar[2]?.to] as number[];
    for (const [i, edge] of edges.entries())
      expect(Math.abs(edge - (edges[0] ?? 0) - (barMm * i) / 4)).toBeLessThan(RULE_MM / 2);
  });

  // The papers' sizes in points: 8 1/2 by 11 in, 11 by 17 in, 210 by 297 mm, 297 by 420 mm.
  it.runIf(hasPoppler).each([
    ["letter", 612, 792],
    ["tabloid", 792, 1224],
    ["a4", 595.276, 841.89],
    ["a3", 841.89, 1190.55],
  ] as const)("has a page of %s, by the PDF's own measure", async (paper, narrow, wide) => {
    await withPdf([pageOf("the-tide-office", "both", paper).page], (file) => {
      const said = execFileSync("pdftotext", ["-bbox", file, "-"], { encoding: "utf8" });
      const size = /<page width="([\d.]+)" height="([\d.]+)">/.exec(said)?.slice(1).map(Number) ?? [];
      const [short = 0, long = 0] = size.sort((a, b) => a - b);
      expect(short).toBeCloseTo(narrow, 1);
      expect(long).toBeCloseTo(wide, 1);
      expect(said).toContain("<title>A sheet</title>");
    });
  });

  it.runIf(hasPoppler)("has every face in the file, and every title once, in each view", async () => {
    const pages = DRAWING_VIEWS.map((view) => pageOf("the-tide-office", view).page);
    await withPdf(pages, (file) => {
      const fonts = execFileSync("pdffonts", [file], { encoding: "utf8" }).trim().split("\n").slice(2);
      expect(fonts.length).toBeGreaterThan(1);
      // Columns: embedded, subset, and a table that turns its letters back into text.
      for (const font of fonts) expect(font).toMatch(/yes\s+yes\s+yes/);
      const text = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
      expect(text.match(/The tide office/g)).toHaveLength(pages.length);
      expect(text.match(/A teaching sketch is not a construction drawing/g)).toHaveLength(pages.length);
      expect(text.match(/SCALE 3\/8" = 1'-0"/g)).toHaveLength(pages.length);
    });
  });

  it.runIf(hasPoppler)("sets its words where they were laid out", async () => {
    const { page } = pageOf("the-tide-office", "plan", "tabloid");
    await withPdf([page], (file) => {
      const boxes = execFileSync("pdftotext", ["-bbox", file, "-"], { encoding: "utf8" });
      const leftOf = (word: string) =>
        Number(new RegExp(`xMin="([\\d.]+)"[^>]*>${word}</word>`).exec(boxes)?.[1]) * POINT_MM;
      // The strip's three columns begin 3 mm inside their lines: at the border, 62 mm in, 58 mm before the other border.
      expect(Math.abs(leftOf("Feet") - (8 + 3))).toBeLessThan(RULE_MM);
      expect(Math.abs(leftOf("Ground") - (8 + 62 + 3))).toBeLessThan(RULE_MM);
      expect(Math.abs(leftOf("Drawn") - (page.widthMm - 8 - 58 + 3))).toBeLessThan(RULE_MM);
    });
  });

  it("is the same picture as PNG: the opening as wide", async () => {
    const { page } = pageOf("the-tide-office", "picture", "letter");
    const { data, info } = await sharp(Buffer.from(await pageToPng(page, { dpi: 254 })))
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const pixels = { width: info.width, height: info.height, grey: new Uint8Array(data), perMm: 10 };
    const row = (page.layers[0]?.at[1] ?? 0) - 203.2 * (17 / 32);
    const thick = darkRuns(pixels, "row", row).filter(({ from, to }) => to - from > EXTRA_THICK_MM);
    expect(Math.abs(apart(thick, 1, 2) - 203.2)).toBeLessThan(RULE_MM);
  });
});
