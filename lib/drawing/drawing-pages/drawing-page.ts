import type { Exercise } from "../../exercise/exercise";
import { type Scale, sheetScales } from "../../sheet/choose-scale";
import { type Paper, type PaperSize, paperSize } from "../../sheet/paper-size";
import type { Lettering } from "../display-list";
import { makeStroke } from "../make-stroke";
import { LINE_STEP, layOutText } from "../paper/lay-out-text";
import { type Layer, PAPER_RATIO, type PaperPage } from "../paper/paper-page";
import { atScale } from "../practice-sheet/at-scale";
import type { DrawingView } from "./drawing-view";
import { LEAST_WIDTH_MM, STRIP_MM, titleStrip } from "./title-strip";
import { type Drawing, type ViewDrawings, viewDrawings } from "./view-drawings";

/** From the paper's edge to the border; from there to a drawing; between two drawings; millimetres. */
const MARGIN_MM = 8;
const PAD_MM = 7;
const APART_MM = 8;
const WORDS_MM = 2.4;

export type DrawingPageOptions = {
  readonly view: DrawingView;
  /** A paper it must fit on, upright or across, at a smaller standard scale if need be; left out, a sheet just large enough. */
  readonly paper?: Paper;
  /** The point to be constructed. */
  readonly point?: string | null;
};

/** A page, and the exercise at the scale that it was drawn at. */
export type DrawnPage = { readonly page: PaperPage; readonly scale: Scale };

/**
 * A page with one view of an exercise, in real millimetres at the exercise's scale or the next standard one that fits, with
 * border, scale bar and title strip. Null when it fits on the paper at no scale.
 */
export function drawingPage(exercise: Exercise, { view, paper, point = null }: DrawingPageOptions): DrawnPage | null {
  const own: Scale = { written: exercise.scale, ratio: exercise.scaleRatio };
  if (paper === undefined) return { page: layOut(exercise, viewDrawings(exercise, view, point), null), scale: own };
  const upright: Sheet = { ...paperSize(paper), name: PAPER_NAME[paper] };
  const across: Sheet = { ...upright, widthMm: upright.heightMm, heightMm: upright.widthMm };
  for (const scale of [own, ...sheetScales(exercise.units).filter(({ ratio }) => ratio > own.ratio)]) {
    const scaled = atScale(exercise, scale);
    const drawings = viewDrawings(scaled, view, point);
    const needed = layOut(scaled, drawings, null);
    const size = [upright, across].find((each) => needed.widthMm <= each.widthMm && needed.heightMm <= each.heightMm);
    if (size) return { page: layOut(scaled, drawings, size), scale };
  }
  return null;
}

/** A paper turned as it is drawn on, and what it is called. */
type Sheet = PaperSize & { readonly name: string };

const PAPER_NAME: Readonly<Record<Paper, string>> = {
  letter: "Letter sheet",
  tabloid: "Tabloid sheet",
  a4: "A4 sheet",
  a3: "A3 sheet",
};

/** The page on a paper that is large enough, its drawings in the middle of it; without one, on the smallest that is. */
function layOut(exercise: Exercise, { name, drawings, words }: ViewDrawings, paper: Sheet | null): PaperPage {
  const mm = exercise.scaleRatio / 1000;
  // One centre line for all: how far the drawings reach to its left and right.
  const left = Math.max(...drawings.map(({ window }) => -window[0])) / mm;
  const right = Math.max(...drawings.map(({ window }) => window[2])) / mm;
  const edges = 2 * (MARGIN_MM + PAD_MM);
  const widthMm = paper?.widthMm ?? Math.max(left + right + edges, LEAST_WIDTH_MM + 2 * MARGIN_MM);
  const inner = widthMm - 2 * MARGIN_MM;
  const said = sentences(words, inner - 2 * PAD_MM);
  const wordsHigh = words.length > 0 ? said.heightMm + PAD_MM : 0;
  const drawnHigh = drawings.reduce((sum, each) => sum + heightOf(each) / mm, (drawings.length - 1) * APART_MM);
  const heightMm = paper?.heightMm ?? drawnHigh + wordsHigh + STRIP_MM + edges;
  const spare = heightMm - (drawnHigh + wordsHigh + STRIP_MM + edges);
  const centre = MARGIN_MM + PAD_MM + left + (inner - 2 * PAD_MM - left - right) / 2;
  let top = MARGIN_MM + PAD_MM + spare / 2;
  const layers = drawings.map((drawing): Layer => {
    const at = [centre, top + drawing.window[3] / mm] as const;
    top += heightOf(drawing) / mm + APART_MM;
    return { list: drawing.list, scaleRatio: exercise.scaleRatio, at, window: drawing.window };
  });
  const border = makeStroke(
    "border",
    [
      [MARGIN_MM, -MARGIN_MM],
      [widthMm - MARGIN_MM, -MARGIN_MM],
      [widthMm - MARGIN_MM, -(heightMm - MARGIN_MM)],
      [MARGIN_MM, -(heightMm - MARGIN_MM)],
    ],
    { closed: true, weight: "extra-thick" },
  );
  return {
    title: `${exercise.title}: ${name}`,
    widthMm,
    heightMm,
    layers: [
      ...layers,
      { list: [border], scaleRatio: PAPER_RATIO, at: [0, 0] },
      {
        list: said.list,
        scaleRatio: PAPER_RATIO,
        at: [MARGIN_MM + PAD_MM, heightMm - MARGIN_MM - STRIP_MM - wordsHigh],
      },
      {
        list: titleStrip(exercise, name, paper?.name ?? ownSheet(widthMm, heightMm), inner),
        scaleRatio: PAPER_RATIO,
        at: [MARGIN_MM, heightMm - MARGIN_MM],
      },
    ],
  };
}

/** What a sheet that is just large enough is called: by its size. */
function ownSheet(widthMm: number, heightMm: number): string {
  return `Sheet ${Math.ceil(widthMm)} × ${Math.ceil(heightMm)} mm`;
}

/** Sentences under one another, in millimetres right and up from the first one's upper left corner. */
function sentences(words: readonly string[], widthMm: number): { list: readonly Lettering[]; heightMm: number } {
  let top = 0;
  const list = words.flatMap((sentence, i) => {
    const said = layOutText(`words.${i}`, sentence, { at: [0, top], widthMm, heightMm: WORDS_MM });
    top = said.foot - WORDS_MM * (LINE_STEP - 1);
    return said.list;
  });
  return { list, heightMm: -top };
}

function heightOf({ window: [, bottom, , top] }: Drawing): number {
  return top - bottom;
}
