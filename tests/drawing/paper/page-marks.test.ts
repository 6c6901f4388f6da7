import { describe, expect, it } from "vitest";
import type { DisplayList, DrawingPoint } from "@/lib/drawing/display-list";
import { makeLettering, makeStroke } from "@/lib/drawing/make-stroke";
import { pageMarks } from "@/lib/drawing/paper/page-marks";
import { type Layer, PAPER_RATIO } from "@/lib/drawing/paper/paper-page";

const marksOf = (list: DisplayList, layer: Partial<Layer> = {}) =>
  pageMarks({
    title: "",
    widthMm: 100,
    heightMm: 100,
    layers: [{ list, scaleRatio: 50, at: [10, 90], ...layer }],
  });

const SQUARE: readonly DrawingPoint[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

describe("marks of a page", () => {
  it.each([
    // 1 m at 1:50 is 20 mm; the page counts down from its upper edge.
    ["at 1:50", {}, "M10 90L30 70"],
    ["at 1:100", { scaleRatio: 100 }, "M10 90L20 80"],
    ["in millimetres of paper", { scaleRatio: PAPER_RATIO }, "M10 90L11 89"],
    ["elsewhere", { at: [0, 20] as const }, "M0 20L20 0"],
  ])("stand %s", (_, layer, d) => {
    const line = makeStroke("l", [
      [0, 0],
      [1, 1],
    ]);
    expect(marksOf([line], layer)).toMatchObject([{ kind: "line", d }]);
  });

  it("letter over a drawing's lines, and layer over layer", () => {
    const list = [makeLettering("a", [0, 0], "A"), makeStroke("l", SQUARE)];
    const layer: Layer = { list, scaleRatio: 50, at: [0, 0] };
    const kinds = pageMarks({ title: "", widthMm: 9, heightMm: 9, layers: [layer, layer] }).map(({ kind }) => kind);
    expect(kinds).toEqual(["line", "text", "line", "text"]);
  });

  it("shift lettering by millimetres of paper, whatever the scale", () => {
    const [mark] = marksOf([makeLettering("a", [1, 1], "A", { shiftMm: [3, 2] })]);
    expect(mark).toMatchObject({ kind: "text", at: [33, 68], anchor: "middle", face: "drafting", breaksLines: true });
  });

  it("break lines with the drafting face only", () => {
    const [mark] = marksOf([makeLettering("a", [0, 0], "A", { face: "plain" })]);
    expect(mark).toMatchObject({ face: "plain", breaksLines: false });
  });

  it("draw what is faint at half strength", () => {
    const list = [makeStroke("l", SQUARE, { faint: true }), makeLettering("a", [0, 0], "A", { faint: true })];
    expect(marksOf(list).map((mark) => mark.kind !== "area" && mark.strength)).toEqual([0.5, 0.5]);
  });

  it("fill before they outline, and leave out the outline of what is filled only", () => {
    const kinds = (fillOnly: boolean) =>
      marksOf([makeStroke("s", SQUARE, { closed: true, fill: "wall", ...(fillOnly ? { fillOnly } : {}) })]).map(
        ({ kind }) => kind,
      );
    expect(kinds(false)).toEqual(["area", "line"]);
    expect(kinds(true)).toEqual(["area"]);
  });

  it("join ink squares that follow one another to one area, and no other tones", () => {
    const two = (fill: "ink" | "wall") =>
      marksOf([0, 1].map((i) => makeStroke(`s${i}`, SQUARE, { closed: true, fill, fillOnly: true })));
    expect(two("ink")).toHaveLength(1);
    expect(two("wall")).toHaveLength(2);
  });

  describe("of a layer with a window", () => {
    const window = [0, 0, 0.5, 2] as const;
    it("end a closed outline there, open", () => {
      const [mark, ...more] = marksOf([makeStroke("s", SQUARE, { closed: true })], { window });
      expect(more).toHaveLength(1);
      for (const each of [mark, ...more]) expect(each?.kind === "line" && each.d.endsWith("Z")).toBe(false);
      expect(marksOf([makeStroke("s", SQUARE, { closed: true })])).toMatchObject([{ d: expect.stringMatching(/Z$/) }]);
    });

    it("drop lettering that stands outside", () => {
      const at = (x: number) => marksOf([makeLettering("a", [x, 1], "A")], { window });
      expect(at(0.4)).toHaveLength(1);
      expect(at(0.6)).toHaveLength(0);
    });

    it("drop lines and areas that lie outside", () => {
      const far = SQUARE.map(([x, y]): DrawingPoint => [x + 5, y]);
      expect(marksOf([makeStroke("s", far, { closed: true, fill: "wall" })], { window })).toEqual([]);
    });
  });

  it("are none of an empty page", () => {
    expect(pageMarks({ title: "", widthMm: 10, heightMm: 10, layers: [] })).toEqual([]);
  });
});
