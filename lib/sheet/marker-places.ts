import { type Paper, PRINT_MARGIN_MM, paperSize } from "./paper-size";
import { type SheetBox, sheetBox } from "./sheet-box";

/** Side of a marker, outer edge to outer edge of its black border, millimetres: eight squares of 1.5 mm. */
export const MARKER_MM = 12;
/** White round a marker, millimetres: one of its squares (AprilTag's own rule), and a little for a blurred edge. */
export const MARKER_QUIET_MM = 2;

export type MarkerPlace = {
  readonly id: number;
  /** The outer edge of its black border. */
  readonly box: SheetBox;
};

/**
 * The eight markers of a sheet: its corners and the middles of its edges, ids 0 to 7 clockwise from the upper left corner.
 * Each stands upright. Millimetres from the paper's upper left corner, right and down.
 */
export function markerPlaces(paper: Paper): readonly MarkerPlace[] {
  const { widthMm, heightMm } = paperSize(paper);
  const [left, middle, right] = thirds(widthMm);
  const [top, centre, bottom] = thirds(heightMm);
  const places = [
    [left, top],
    [middle, top],
    [right, top],
    [right, centre],
    [right, bottom],
    [middle, bottom],
    [left, bottom],
    [left, centre],
  ] as const;
  return places.map(([x, y], id) => ({ id, box: sheetBox(x, y, MARKER_MM, MARKER_MM) }));
}

/** Where markers begin along an edge: at its start, in its middle, at its end. */
function thirds(length: number): readonly [number, number, number] {
  return [PRINT_MARGIN_MM, (length - MARKER_MM) / 2, length - PRINT_MARGIN_MM - MARKER_MM];
}
