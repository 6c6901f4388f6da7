import { describe, expect, it } from "vitest";
import { displayBounds } from "@/lib/drawing/display-bounds";
import { drawingPage } from "@/lib/drawing/drawing-pages/drawing-page";
import { DRAWING_VIEWS } from "@/lib/drawing/drawing-pages/drawing-view";
import { scaleBar } from "@/lib/drawing/drawing-pages/scale-bar";
import { PAPERS, paperSize } from "@/lib/sheet/paper-size";
import { SHIPPED } from "@/tests/exercises/shipped";
import { shippedExercise } from "../practice-sheet/exercises";

const HAIR_MM = 1e-6;

describe("a page with a drawing", () => {
  it.each(DRAWING_VIEWS)("has all of %s on it, for every exercise of the course", (view) => {
    for (const { exercise } of SHIPPED) {
      const drawn = drawingPage(exercise, { view });
      if (!drawn) throw new Error("Without a paper every drawing has its page.");
      expect(drawn.scale.written).toBe(exercise.scale);
      const { widthMm, heightMm, layers } = drawn.page;
      for (const { list, scaleRatio, at, window } of layers) {
        const [left, bottom, right, top] = window ?? displayBounds(list, scaleRatio) ?? [0, 0, 0, 0];
        const mm = scaleRatio / 1000;
        expect(at[0] + left / mm).toBeGreaterThanOrEqual(-HAIR_MM);
        expect(at[0] + right / mm).toBeLessThanOrEqual(widthMm + HAIR_MM);
        expect(at[1] - top / mm).toBeGreaterThanOrEqual(-HAIR_MM);
        expect(at[1] - bottom / mm).toBeLessThanOrEqual(heightMm + HAIR_MM);
      }
    }
  });

  it.each(PAPERS)("fits on %s, upright or across, at a standard scale", (paper) => {
    const { widthMm, heightMm } = paperSize(paper);
    for (const { exercise } of SHIPPED) {
      const drawn = drawingPage(exercise, { view: "both", paper });
      if (!drawn) throw new Error(`${exercise.id} does not fit on ${paper}.`);
      expect([widthMm, heightMm].sort()).toEqual([drawn.page.widthMm, drawn.page.heightMm].sort());
      expect(drawn.scale.ratio).toBeGreaterThanOrEqual(exercise.scaleRatio);
    }
  });

  it("puts picture and plan on one centre line", () => {
    const drawn = drawingPage(shippedExercise("the-tide-office"), { view: "both" });
    const [picture, plan] = drawn?.page.layers ?? [];
    expect(picture?.at[0]).toBe(plan?.at[0]);
    expect(picture?.at[1]).toBeLessThan(plan?.at[1] ?? 0);
  });

  it("letters the steps of one construction in order, and says when there is none", () => {
    const words = (point: string) =>
      (drawingPage(shippedExercise("alcove"), { view: "construction", point })?.page.layers ?? [])
        .flatMap(({ list }) => list)
        .flatMap((item) => (item.kind === "lettering" && item.id.startsWith("words.") ? [item.text] : []));
    expect(words("B.foot")[0]).toMatch(/^1\. /);
    expect(words("B.foot").length).toBeGreaterThan(2);
  });
});

describe("the scale bar", () => {
  it.each([
    // 4 ft at 1/2 in to the foot are 2 in; 8 ft at 1/4; 20 ft at 1/16 are 1 1/4.
    ["ft-in", 24, 4, 4 * 12.7, "4'"],
    ["ft-in", 48, 4, 8 * 6.35, "8'"],
    ["ft-in", 192, 4, 20 * 1.5875, "20'"],
    ["m", 50, 4, 40, "2 m"],
    ["m", 100, 4, 40, "4 m"],
  ] as const)("in %s at 1:%s has %s parts, %s mm in all, and says %s", (units, ratio, parts, longMm, last) => {
    const list = scaleBar(units, ratio, [0, 0]);
    const boxes = list.filter((item) => item.kind === "stroke");
    // A pen would go half its width over the ends.
    expect(boxes.every((box) => box.fillOnly)).toBe(true);
    const xs = boxes.flatMap(({ points }) => points.map(([x]) => x));
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([0, expect.closeTo(longMm, 9)]);
    const black = boxes.filter(({ id }) => /^bar\.\d$/.test(id)).map(({ points }) => points.map(([x]) => x));
    expect(black).toHaveLength(parts / 2);
    for (const each of black) expect(Math.max(...each) - Math.min(...each)).toBeCloseTo(longMm / parts, 9);
    const figures = list.flatMap((item) => (item.kind === "lettering" ? [item.text] : []));
    expect(figures.at(-1)).toBe(last);
    expect(figures[0]).toBe("0");
  });
});
