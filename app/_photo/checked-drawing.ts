import type { Place } from "@/app/_parts/kept-work/attempt";
import type { PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Mark, MarkSet } from "@/lib/exercise/marks";
import { DOUBTFUL } from "@/lib/photo/drawing-reading";
import type { SheetBox } from "@/lib/sheet/sheet-box";
import { fromSheet, type SheetFrame, sheetFrame } from "./places";
import type { ReadDrawing } from "./worker/messages";

export const CHECK_FORMAT = "plasterline.check/1";

/**
 * What is known of a point. `read`: read, and sure. `doubtful`: read, but it may be something else. `missing`: nothing was
 * found. The student makes of these `right`, `moved` or `not drawn`; a drawing with one still doubtful or missing is not marked.
 */
export const POINT_STATES = ["read", "doubtful", "missing", "right", "moved", "not drawn"] as const;
export type PointState = (typeof POINT_STATES)[number];

export type CheckedPoint = {
  readonly point: string;
  /** Where it is taken to be, metres of the drawing; null where it is nowhere. */
  readonly at: Place | null;
  /** What was read, to go back to. */
  readonly read: { readonly at: Place | null; readonly state: PointState };
  readonly state: PointState;
};

/** A straightened drawing under way: everything that a reload must bring back. */
export type CheckedDrawing = {
  readonly format: typeof CHECK_FORMAT;
  readonly exercise: string;
  readonly version: number;
  /** The sheet's own. */
  readonly scale: string;
  readonly frame: SheetFrame;
  /** What of the sheet the picture shows, millimetres. */
  readonly box: SheetBox;
  /** The photograph seen straight on, as the address of a picture that holds it. */
  readonly picture: string;
  /** In the order asked. */
  readonly points: readonly CheckedPoint[];
  /** Pencil lines that were read, metres of the drawing. */
  readonly lines: readonly (readonly [Place, Place])[];
  readonly ownEye: ReadDrawing["ownEye"];
  /** Root mean square of what the fit of the sheet leaves over, mm; null where four corners were set by hand. */
  readonly residualMm: number | null;
  /** What is doubtful about the photograph, in sentences. */
  readonly doubts: readonly string[];
  /** Only then is it marked. */
  readonly confirmed: boolean;
  /** The hand-in made of it, so that it is made once. */
  readonly handedIn: string | null;
};

/** What was read of a photograph, as the student is to confirm it. */
export function newDrawing(
  exercise: Exercise,
  sheet: PracticeSheet,
  read: ReadDrawing,
  picture: string,
  residualMm: number | null,
): CheckedDrawing {
  const frame = sheetFrame(sheet);
  const found = new Map(read.reading.points.map((each) => [each.point, each]));
  const points = exercise.task.marks.map((point): CheckedPoint => {
    const one = found.get(point);
    const at = one?.at ? fromSheet(frame, one.at) : null;
    const state: PointState = at === null ? "missing" : (one?.sure ?? 0) < DOUBTFUL ? "doubtful" : "read";
    return { point, at, read: { at, state }, state };
  });
  return {
    format: CHECK_FORMAT,
    exercise: exercise.id,
    version: exercise.version,
    scale: sheet.scale.written,
    frame,
    box: read.box,
    picture,
    points,
    lines: read.reading.lines.map(({ from, to }) => [fromSheet(frame, from), fromSheet(frame, to)] as const),
    ownEye: read.ownEye,
    residualMm,
    doubts: read.doubts,
    confirmed: false,
    handedIn: null,
  };
}

/** The first point that the student has still to look at; null when all is settled. */
export function nextOpen({ points }: Pick<CheckedDrawing, "points">): string | null {
  return points.find(isOpen)?.point ?? null;
}

export function isOpen({ state }: Pick<CheckedPoint, "state">): boolean {
  return state === "doubtful" || state === "missing";
}

/** Changes one point; anything else stays. */
export function changePoint(
  drawing: CheckedDrawing,
  point: string,
  change: (one: CheckedPoint) => CheckedPoint,
): CheckedDrawing {
  return { ...drawing, points: drawing.points.map((one) => (one.point === point ? change(one) : one)) };
}

/** What can be said of a point. */
export type Said = "right" | "not drawn" | "as read";

export const movePoint =
  (at: Place) =>
  (one: CheckedPoint): CheckedPoint => ({ ...one, at, state: "moved" });
export const notDrawn = (one: CheckedPoint): CheckedPoint => ({ ...one, at: null, state: "not drawn" });
export const asRead = (one: CheckedPoint): CheckedPoint => ({ ...one, ...one.read });
/** A doubtful reading that the student says is right. */
export const isRight = (one: CheckedPoint): CheckedPoint => (one.at ? { ...one, state: "right" } : one);

/** Whether it may be marked: every point settled, and at least one drawn. */
export function mayConfirm(drawing: CheckedDrawing): boolean {
  return nextOpen(drawing) === null && drawing.points.some(({ at }) => at !== null);
}

/** The marks as their file has them. */
export function marksOf({ exercise, version, scale, points }: CheckedDrawing): MarkSet {
  return {
    format: "plasterline.marks/1",
    exercise,
    version,
    scale,
    marks: points.flatMap(({ point, at }): Mark[] => (at ? [{ point, at: [at[0], at[1]], with: "paper" }] : [])),
  };
}
