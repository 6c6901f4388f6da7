import type { LineHand } from "@/lib/drawing/paper/rule-pages";
import { type Paper, paperSize } from "@/lib/sheet/paper-size";
import type { Format, Key, View } from "./order";

export const VIEW_WORDS: Readonly<Record<View, string>> = {
  sheet: "The sheet to draw on",
  both: "Picture and plan",
  plan: "The plan",
  picture: "The finished picture",
  construction: "Constructions",
};

export const PAPER_WORDS: Readonly<Record<Paper, string>> = {
  letter: "Letter, 8 1/2 × 11 in",
  tabloid: "Tabloid, 11 × 17 in",
  a4: "A4, 210 × 297 mm",
  a3: "A3, 297 × 420 mm",
};

export const KEY_WORDS: Readonly<Record<Key, string>> = {
  none: "None",
  points: "True points",
  constructions: "With constructions",
  finished: "Finished picture",
  all: "All three",
};

export const LINE_WORDS: Readonly<Record<LineHand, string>> = { hand: "By hand", ruled: "Ruled" };

export const FORMAT_WORDS: Readonly<Record<Format, string>> = {
  pdf: "PDF, to print",
  svg: "SVG, to draw on with",
  png: "PNG, for a slide",
};

/** What is printed for a class. */
export const FOR_WORDS = {
  one: "One sheet",
  copies: "Numbered copies of this sheet",
  set: "A different exercise on each",
} as const;
export type For = keyof typeof FOR_WORDS;

/** Size of a paper in the browser's own pixels, 96 to the inch. */
export function paperPixels(paper: Paper): { readonly width: number; readonly height: number } {
  const { widthMm, heightMm } = paperSize(paper);
  return { width: Math.round((widthMm * 96) / 25.4), height: Math.round((heightMm * 96) / 25.4) };
}
