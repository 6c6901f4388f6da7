import { describe, expect, it } from "vitest";
import type { GreyPixels } from "@/lib/photo/pixels";
import { judgeBar } from "@/lib/photo/straighten/judge-bar";
import { measurePaper } from "@/lib/photo/straighten/measure-paper";
import { type Paper, paperSize } from "@/lib/sheet/paper-size";
import { type View, viewSheet, warpSheet } from "./view-sheet";

const PHOTO = { width: 1200, height: 1600 } as const;
const PER_MM = 4;

/** A photograph of a blank paper that a sheet laid out for another was printed on in the middle, so many times its size. */
function photographed(laidOutFor: Paper, on: Paper, share: number, grey: number, view: Partial<View> = {}) {
  const [sheet, paper] = [paperSize(laidOutFor), paperSize(on)];
  const [width, height] = [paper.widthMm * PER_MM, paper.heightMm * PER_MM].map(Math.round) as [number, number];
  const page = { width, height, grey: new Uint8Array(width * height).fill(grey), perMm: PER_MM };
  const truth = viewSheet(paper.widthMm, paper.heightMm, { ...PHOTO, fill: 0.75, ...view });
  const photo: GreyPixels = warpSheet(page, truth, PHOTO.width, PHOTO.height, 1);
  // The fit that the markers give speaks of the sheet as it was laid out.
  const [right, down] = [(paper.widthMm - sheet.widthMm * share) / 2, (paper.heightMm - sheet.heightMm * share) / 2];
  const [p, q, r] = truth.matrix.map(
    ([a, b, c]) => [a * share, b * share, a * right + b * down + c] as const,
  ) as unknown as typeof truth.matrix;
  return { photo, fit: { ...truth, matrix: [p, q, r] as const } };
}

describe("a sheet's size by the edges of its paper", () => {
  it.each<[Paper, Partial<View>]>([
    ["letter", {}],
    ["a4", { tiltDeg: 30, rollDeg: 10, k1: 0.02 }],
    ["a3", { turnDeg: 25, rollDeg: 90, fill: 0.6 }],
  ])("is full on %s seen %j", (paper, view) => {
    const { photo, fit } = photographed(paper, paper, 1, 230, view);
    expect(measurePaper(photo, fit, paper)).toEqual({ kind: "fits" });
  });

  it.each<[Paper, Paper, number]>([
    ["letter", "letter", 0.96],
    ["letter", "letter", 0.9],
    // Fitted to the other paper's printable part.
    ["a4", "letter", 0.92],
    ["letter", "a4", 0.95],
  ])("laid out for %s and printed on %s at %f is told", (laidOutFor, on, share) => {
    const { photo, fit } = photographed(laidOutFor, on, share, 230, { tiltDeg: 15, k1: 0.02, fill: 0.7 });
    const measured = measurePaper(photo, fit, laidOutFor);
    expect(measured).toMatchObject({ kind: "another size", on });
    if (measured.kind === "another size") expect(Math.abs(measured.share - share)).toBeLessThan(0.006);
  });

  it("cannot be told of A3 on A4, which are alike", () => {
    const { photo, fit } = photographed("a3", "a4", Math.SQRT1_2, 230);
    expect(measurePaper(photo, fit, "a3")).toEqual({ kind: "fits" });
  });

  it("is unknown where the paper is as grey as the table, and where an edge is out of view", () => {
    const same = photographed("letter", "letter", 1, 125);
    expect(measurePaper(same.photo, same.fit, "letter")).toEqual({ kind: "unknown" });
    const near = photographed("letter", "letter", 1, 230, { fill: 1.1 });
    expect(measurePaper(near.photo, near.fit, "letter")).toEqual({ kind: "unknown" });
  });
});

describe("a sheet's size by its bar", () => {
  it.each([
    [101.6, 101.6],
    [101.6, 102],
    [100, 99.5],
  ])("is full where %f mm measure %f", (printed, measured) => {
    expect(judgeBar(printed, measured)).toEqual({ kind: "true size" });
  });

  it("is told in words where it is another", () => {
    const judged = judgeBar(100, 97);
    expect(judged).toMatchObject({ kind: "another size", share: 0.97 });
    if (judged.kind === "another size") expect(judged.say).toBe("The sheet is printed at 97 % of its size.");
  });

  // Centimetres or inches taken for millimetres, and no number at all.
  it.each([10.1, 4, 0, -100, 1016, Number.NaN])("is not told by a bar of %f mm", (measured) => {
    expect(judgeBar(101.6, measured)).toMatchObject({ kind: "no bar" });
  });
});
