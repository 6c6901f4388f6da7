import { execFileSync } from "node:child_process";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { makeLettering, makeStroke } from "@/lib/drawing/make-stroke";
import { pageToPng } from "@/lib/drawing/paper/page-to-png";
import { pageToSvg } from "@/lib/drawing/paper/page-to-svg";
import { pagesToPdf } from "@/lib/drawing/paper/pages-to-pdf";
import { PAPER_RATIO, type PaperPage } from "@/lib/drawing/paper/paper-page";
import { darkRuns, hasPoppler, rasterise, withPdf } from "../rasterise";

const MOMENT = new Date(Date.UTC(2020, 0, 2));

/** A page with a 100 mm line, a 60 by 40 mm frame, words in two faces and ink squares that touch. */
const PAGE: PaperPage = {
  title: "A page to measure",
  widthMm: 150,
  heightMm: 100,
  layers: [
    {
      scaleRatio: PAPER_RATIO,
      at: [0, 0],
      list: [
        makeStroke(
          "line",
          [
            [20, -10],
            [120, -10],
          ],
          { weight: "thick" },
        ),
        makeStroke(
          "frame",
          [
            [30, -30],
            [90, -30],
            [90, -70],
            [30, -70],
          ],
          { closed: true, weight: "extra-thick" },
        ),
        makeLettering("title", [40, -85], "PLASTER LINE 3'-6\"", { anchor: "start", heightMm: 4 }),
        makeLettering("words", [40, -92], "Measure this before you draw.", { anchor: "start", face: "plain" }),
        ...[0, 1, 2, 3].map((i) =>
          makeStroke(
            `ink.${i}`,
            [
              [110 + i * 1.7, -50],
              [111.7 + i * 1.7, -50],
              [111.7 + i * 1.7, -55],
              [110 + i * 1.7, -55],
            ],
            { closed: true, fill: "ink", fillOnly: true },
          ),
        ),
      ],
    },
  ],
};

describe("a printed page", () => {
  it("is as large as it says, and so is what stands on it", async () => {
    const pixels = await rasterise(PAGE, 600);
    expect(pixels.width / pixels.perMm).toBeCloseTo(150, 1);
    expect(pixels.height / pixels.perMm).toBeCloseTo(100, 1);
    const [line] = darkRuns(pixels, "row", 10);
    // The ends are round: half a line's width more at each.
    expect(Math.abs((line?.to ?? 0) - (line?.from ?? 0) - 100.5)).toBeLessThan(0.2);
    const frame = darkRuns(pixels, "row", 50).slice(0, 2);
    const [left, right] = frame.map(({ from, to }) => (from + to) / 2) as [number, number];
    expect(Math.abs(left - 30)).toBeLessThan(0.1);
    expect(Math.abs(right - 90)).toBeLessThan(0.1);
    const [top, low] = darkRuns(pixels, "column", 60)
      .slice(1, 3)
      .map(({ from, to }) => (from + to) / 2) as [number, number];
    expect(Math.abs(low - top - 40)).toBeLessThan(0.2);
  });

  it("shows no seam between squares that touch", async () => {
    const runs = darkRuns(await rasterise(PAGE, 600), "row", 52.5).filter(({ from }) => from > 100);
    expect(runs).toHaveLength(1);
    expect((runs[0]?.to ?? 0) - (runs[0]?.from ?? 0)).toBeCloseTo(6.8, 1);
  });

  it.runIf(hasPoppler)("holds its faces, and each word once", async () => {
    await withPdf([PAGE], (file) => {
      const fonts = execFileSync("pdffonts", [file], { encoding: "utf8" }).trim().split("\n").slice(2);
      expect(fonts).toHaveLength(2);
      for (const font of fonts) expect(font).toMatch(/yes\s+yes\s+yes/);
      const words = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
      expect(words.match(/Measure this before you draw\./g)).toHaveLength(1);
      expect(words.match(/PLASTER LINE 3'-6"/g)).toHaveLength(1);
    });
  });

  it("is the same bytes when made at the same moment", async () => {
    const make = () => pagesToPdf([PAGE, PAGE], { title: "Twice", madeAt: MOMENT });
    expect(Buffer.from(await make()).equals(Buffer.from(await make()))).toBe(true);
  });

  it("asks to be printed as large as it is, under its own title", async () => {
    const pdf = Buffer.from(await pagesToPdf([PAGE], { title: "A page", author: "The drafting room" })).toString(
      "latin1",
    );
    // Wishes to the program that shows it (ISO 32000-1, 12.2, table 150; from memory).
    expect(pdf).toMatch(/\/PrintScaling \/None/);
    expect(pdf).toMatch(/\/DisplayDocTitle true/);
    expect(pdf).toContain("(The drafting room)");
    // Faint lines (transparency, 1.4) and that wish (1.6) want a version that knows them.
    expect(pdf.startsWith("%PDF-1.7")).toBe(true);
  });

  it("refuses to be a document without pages", async () => {
    await expect(pagesToPdf([], { title: "None" })).rejects.toThrow(/at least one page/);
  });

  it("is a picture with its resolution in the file", async () => {
    const { width, height, density } = await sharp(Buffer.from(await pageToPng(PAGE, { dpi: 254 }))).metadata();
    expect([width, height, density]).toEqual([1500, 1000, 254]);
    await expect(pageToPng(PAGE, { dpi: 100_000 })).rejects.toThrow(/too many pixels/);
  });

  it("is the same drawing as SVG: every line of the one is in the other", async () => {
    const svg = pageToSvg(PAGE);
    const { data, info } = await sharp(Buffer.from(svg), { density: 72 })
      .flatten()
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    // 150 mm at 72 to the inch, which is how the reader takes millimetres.
    expect(info.width).toBe(425);
    const row = Math.round((10 / 25.4) * 72);
    const dark = [...data.subarray(row * info.width, (row + 1) * info.width)].filter((grey) => grey < 128).length;
    expect((dark / 72) * 25.4).toBeCloseTo(100.5, 0);
  });

  it.each(["Ωμέγα", "漢字", "a\u0000b", "", "İstanbul", "👍"])("never fails for want of a letter: %j", async (text) => {
    const page = {
      ...PAGE,
      layers: [{ list: [makeLettering("l", [10, -10], text)], scaleRatio: PAPER_RATIO, at: [0, 0] as const }],
    };
    expect((await pagesToPdf([page], { title: text })).length).toBeGreaterThan(500);
    expect(pageToSvg(page)).toContain("</svg>");
    expect((await pageToPng(page, { dpi: 72 })).length).toBeGreaterThan(100);
  });
});
