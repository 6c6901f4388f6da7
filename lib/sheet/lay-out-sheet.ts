import { MARKER_MM, MARKER_QUIET_MM, type MarkerPlace, markerPlaces } from "./marker-places";
import { type Paper, type PaperSize, PRINT_MARGIN_MM, paperSize } from "./paper-size";
import { APART_MM, type DrawingNeeds, type PlacedDrawings, placeDrawings } from "./place-drawings";
import { grow, type SheetBox, sheetBox } from "./sheet-box";

export type SheetNeeds = {
  readonly picture: DrawingNeeds;
  readonly plan: DrawingNeeds;
  /** How high the words are when they may be so wide, millimetres: what the sheet is about, and what it asks. */
  readonly introHeight: (widthMm: number) => number;
  readonly tasksHeight: (widthMm: number) => number;
  /** Side of the code, its quiet zone included, millimetres. */
  readonly codeMm: number;
};

/** Where everything on a sheet stands. Nothing overlaps, and all is within what a printer reaches. */
export type SheetLayout = PaperSize &
  PlacedDrawings &
  Band & {
    readonly printable: SheetBox;
    readonly markers: readonly MarkerPlace[];
    /** At the head, left and right of the middle marker: what the sheet is, and whose. */
    readonly title: SheetBox;
    readonly name: SheetBox;
    /** At the foot, left and right of the middle marker: scale and sheet, and the caution. */
    readonly scale: SheetBox;
    readonly caution: SheetBox;
  };

type Band = {
  readonly intro: SheetBox;
  readonly tasks: SheetBox;
  /** The bar that is measured, with the words that say so. */
  readonly bar: SheetBox;
  readonly code: SheetBox;
};

const BAR_HEIGHT_MM = 9.5;
/** Widths of a column of words beside the drawings, the first that leaves them room is taken, millimetres. */
const COLUMNS_MM = [86, 74, 64, 56] as const;
/** White between what the sheet is about and what it asks, millimetres. */
const PARAGRAPH_MM = 2.4;
/** How far the rows of markers at the head and the foot reach in from the paper's edge, the white under them included. */
const STRIP_MM = PRINT_MARGIN_MM + MARKER_MM + MARKER_QUIET_MM;

/**
 * The picture above, the plan below on the same centre line. The words stand under them across the sheet, where the drawings
 * are in its middle; or, where that leaves too little height, beside them. Null where the drawings do not fit at their
 * scale either way.
 */
export function layOutSheet(paper: Paper, needs: SheetNeeds): SheetLayout | null {
  const size = paperSize(paper);
  const markers = markerPlaces(paper);
  const printable = grow({ left: 0, top: 0, right: size.widthMm, bottom: size.heightMm }, -PRINT_MARGIN_MM);
  const inside = { ...printable, top: STRIP_MM, bottom: size.heightMm - STRIP_MM - 1 };
  const laid =
    layOutUnder(inside, needs, markers) ?? layOutBeside(inside, needs, markers) ?? layOutColumn(inside, needs, markers);
  if (!laid) return null;
  const [title, name] = besideMarkers(size.widthMm, printable.top);
  const [scale, caution] = besideMarkers(size.widthMm, printable.bottom - MARKER_MM);
  return { ...size, printable, markers, title, name, scale, caution, ...laid };
}

type Arranged = (Band & PlacedDrawings) | null;

/** Words over the bar at the left and the code at the right, standing on the foot; the drawings above. */
function layOutUnder(inside: SheetBox, needs: SheetNeeds, markers: readonly MarkerPlace[]): Arranged {
  const { left, right, bottom } = inside;
  const { codeMm } = needs;
  const width = right - left - codeMm - APART_MM;
  const [intro, tasks] = [needs.introHeight(width), needs.tasksHeight(width)];
  const top = bottom - Math.max(codeMm, intro + PARAGRAPH_MM + tasks + APART_MM + BAR_HEIGHT_MM);
  // Words that reach up to the markers at half height are too many for this way.
  const halfway = markers.filter(({ box }) => box.left === left && box.bottom < bottom);
  if (halfway.some(({ box }) => box.bottom + MARKER_QUIET_MM > top)) return null;
  const drawings = placeDrawings({ ...inside, bottom: top - APART_MM }, needs, markers);
  return (
    drawings && {
      ...drawings,
      intro: sheetBox(left, top, width, intro),
      tasks: sheetBox(left, top + intro + PARAGRAPH_MM, width, tasks),
      bar: sheetBox(left, bottom - BAR_HEIGHT_MM, width, BAR_HEIGHT_MM),
      code: sheetBox(right - codeMm, bottom - codeMm, codeMm, codeMm),
    }
  );
}

/**
 * A column at the right, over and under the marker there: beside the picture the code and what the sheet is about, beside the
 * plan what it asks. The drawings stand at the left, the bar across the foot.
 */
function layOutBeside(inside: SheetBox, needs: SheetNeeds, markers: readonly MarkerPlace[]): Arranged {
  const { left, top, right, bottom } = inside;
  const { codeMm } = needs;
  const bar = sheetBox(left, bottom - BAR_HEIGHT_MM, right - left, BAR_HEIGHT_MM);
  const code = sheetBox(right - codeMm, top, codeMm, codeMm);
  const marker = markers.find(({ box }) => box.right === right && box.top > top)?.box ?? code;
  for (const width of COLUMNS_MM) {
    const intro = sheetBox(right - width, code.bottom + APART_MM, width, needs.introHeight(width));
    const under = marker.bottom + MARKER_QUIET_MM + APART_MM;
    const tasks = sheetBox(right - width, under, width, needs.tasksHeight(width));
    if (intro.bottom > marker.top - MARKER_QUIET_MM - APART_MM || tasks.bottom > bar.top - APART_MM) continue;
    const room = { ...inside, right: tasks.left - APART_MM, bottom: bar.top - APART_MM };
    // Where the drawing is wide at half height, it stands in from the marker at the left.
    const drawings = placeDrawings(room, needs, markers) ?? placeDrawings({ ...room, left: STRIP_MM }, needs, markers);
    if (drawings) return { ...drawings, intro, tasks, bar, code };
  }
  return null;
}

/** The same with the words in one column, left of the marker: where there are too many for the room under it. */
function layOutColumn(inside: SheetBox, needs: SheetNeeds, markers: readonly MarkerPlace[]): Arranged {
  const { left, top, right, bottom } = inside;
  const bar = sheetBox(left, bottom - BAR_HEIGHT_MM, right - left, BAR_HEIGHT_MM);
  const code = sheetBox(right - needs.codeMm, top, needs.codeMm, needs.codeMm);
  const end = right - MARKER_MM - MARKER_QUIET_MM - APART_MM;
  for (const width of COLUMNS_MM) {
    const intro = sheetBox(end - width, code.bottom + APART_MM, width, needs.introHeight(width));
    const tasks = sheetBox(end - width, intro.bottom + PARAGRAPH_MM, width, needs.tasksHeight(width));
    if (tasks.bottom > bar.top - APART_MM) continue;
    const room = { ...inside, right: tasks.left - APART_MM, bottom: bar.top - APART_MM };
    const drawings = placeDrawings(room, needs, markers) ?? placeDrawings({ ...room, left: STRIP_MM }, needs, markers);
    if (drawings) return { ...drawings, intro, tasks, bar, code };
  }
  return null;
}

/** The boxes left and right of the middle marker of a row of three. */
function besideMarkers(widthMm: number, top: number): readonly [SheetBox, SheetBox] {
  const middle = widthMm / 2;
  const past = MARKER_MM / 2 + MARKER_QUIET_MM + 1;
  const width = middle - past - STRIP_MM - 1;
  return [sheetBox(STRIP_MM + 1, top, width, MARKER_MM), sheetBox(middle + past, top, width, MARKER_MM)];
}
