import type { PlaneBox } from "../clear-lettering";
import type { DisplayList } from "../display-list";

/** A point of a sheet of paper: millimetres from its upper left corner, right and down. */
export type PaperPoint = readonly [rightMm: number, downMm: number] & { readonly frame?: "paper" };

/** A display list laid on the paper at its own scale: several scales can stand on one sheet. */
export type Layer = {
  readonly list: DisplayList;
  /** Metres of the list to metres of paper; `PAPER_RATIO` for what is drawn in millimetres of the paper itself. */
  readonly scaleRatio: number;
  /** Where the list's [0, 0] falls. The list's second coordinate goes up the sheet. */
  readonly at: PaperPoint;
  /** What of the list is drawn, in its own metres; strokes are cut there. Left out: all. */
  readonly window?: PlaneBox;
};

/** A sheet of paper with drawings on it, in real size: what SVG, PDF and PNG are written from. */
export type PaperPage = {
  readonly title: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** In order: later ones over earlier ones. */
  readonly layers: readonly Layer[];
};

/** The ratio of a layer whose list counts millimetres of paper: one unit of the list is one millimetre. */
export const PAPER_RATIO = 1000;
