import type { SheetPlace } from "../sheet/place-drawings";

/** A straight pencil line on the page. */
export type PencilLine = {
  readonly from: SheetPlace;
  readonly to: SheetPlace;
  /** How much darker than the paper round it, 0 to 1. */
  readonly darkness: number;
  readonly widthMm: number;
  /** Root mean square of the stroke's distance from the line, millimetres. */
  readonly straightMm: number;
};

/** A place where lines end, meet or cross. `lines` are places in the list of lines; two strokes of a small cross count as two. */
export type PencilCorner = {
  readonly at: SheetPlace;
  readonly lines: readonly number[];
  readonly kind: "corner" | "crossing" | "end";
};

/** What was read for a point that the exercise asks. */
export type PointReading = {
  readonly point: string;
  /** Millimetres on the sheet; null where nothing was found that could be it. */
  readonly at: SheetPlace | null;
  /** 0 to 1: how far it is this point and no other thing. Under `DOUBTFUL` it is shown as doubtful. */
  readonly sure: number;
  /** The corner that it was read from, by its place in the list of corners. */
  readonly corner: number | null;
};

/** All that was read from one page; nothing of it is graded before the student has confirmed it. */
export type DrawingReading = {
  readonly lines: readonly PencilLine[];
  readonly corners: readonly PencilCorner[];
  readonly points: readonly PointReading[];
};

/** Readings less sure than this are pointed out to the student. */
export const DOUBTFUL = 0.6;
