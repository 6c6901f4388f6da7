import { isMarkerBlack, MARKER_SQUARES } from "../../sheet/marker-bits";
import { MARKER_MM, type MarkerPlace } from "../../sheet/marker-places";
import { type SheetBox, sheetBox } from "../../sheet/sheet-box";
import type { DisplayList, Stroke, Tone } from "../display-list";
import { makeStroke } from "../make-stroke";

/** The markers of a sheet, in millimetres of paper right and up from its upper left corner: all that is black of them, in rows. */
export function drawMarkers(places: readonly MarkerPlace[]): DisplayList {
  return places.flatMap(({ id, box }) => blackRuns(id, box));
}

function blackRuns(id: number, { left, top }: SheetBox): Stroke[] {
  const side = MARKER_MM / MARKER_SQUARES;
  const runs: Stroke[] = [];
  for (let row = 0; row < MARKER_SQUARES; row++) {
    for (let from = 0; from < MARKER_SQUARES; from++) {
      let to = from;
      while (to < MARKER_SQUARES && isMarkerBlack(id, to, row)) to += 1;
      if (to === from) continue;
      const box = sheetBox(left + from * side, top + row * side, (to - from) * side, side);
      runs.push(filledBox(`marker.${id}.${row}.${from}`, box, "ink"));
      from = to;
    }
  }
  return runs;
}

/** A box of the sheet as an area of one tone without a line round it. */
export function filledBox(id: string, { left, top, right, bottom }: SheetBox, fill: Tone): Stroke {
  const corners = [
    [left, -top],
    [right, -top],
    [right, -bottom],
    [left, -bottom],
  ] as const;
  return makeStroke(id, corners, { closed: true, fill, fillOnly: true });
}
