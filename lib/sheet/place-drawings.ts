import { MARKER_QUIET_MM, type MarkerPlace } from "./marker-places";
import { grow, holds, overlap, type SheetBox } from "./sheet-box";

/** A point of the sheet, millimetres from its upper left corner. */
export type SheetPlace = readonly [right: number, down: number];

/**
 * What a drawing takes up at one scale: boxes in millimetres of paper right and down from where its centre line crosses its
 * plaster line. Several, since a plan is wide at its plaster line only.
 */
export type DrawingNeeds = readonly SheetBox[];

export type PlacedDrawing = { readonly at: SheetPlace; readonly boxes: readonly SheetBox[] };
export type PlacedDrawings = { readonly picture: PlacedDrawing; readonly plan: PlacedDrawing };

/** White between one thing and the next, millimetres. */
export const APART_MM = 3;
/** Sums of lengths end a hair past the edge they were made for. */
const ROUNDING_MM = 1e-9;
/** Ways to share what height is left over: above the picture, and between picture and plan; the rest is below. */
const SHARES = [
  [0.3, 0.35],
  [0.15, 0.6],
  [0.1, 0.8],
  [0.05, 0.2],
  [0, 0.5],
  [0, 0],
  [0, 1],
  [0.5, 0.5],
  [1, 0],
] as const;

/** The picture over the plan on one centre line, the middle of a room, clear of the markers; null where they do not fit. */
export function placeDrawings(
  room: SheetBox,
  needs: { readonly picture: DrawingNeeds; readonly plan: DrawingNeeds },
  markers: readonly MarkerPlace[],
): PlacedDrawings | null {
  const [picture, plan] = [around(needs.picture), around(needs.plan)];
  const used = picture.bottom - picture.top + APART_MM + plan.bottom - plan.top;
  const spare = room.bottom - room.top - used;
  if (!(spare >= 0)) return null;
  const middle = (room.left + room.right) / 2;
  for (const [above, between] of SHARES) {
    const high = room.top + above * spare - picture.top;
    const low = high + picture.bottom + APART_MM + between * spare - plan.top;
    const placed = { picture: place([middle, high], needs.picture), plan: place([middle, low], needs.plan) };
    if ([...placed.picture.boxes, ...placed.plan.boxes].every((box) => isClear(box, room, markers))) return placed;
  }
  return null;
}

function isClear(box: SheetBox, room: SheetBox, markers: readonly MarkerPlace[]): boolean {
  return holds(grow(room, ROUNDING_MM), box) && markers.every((each) => !overlap(grow(each.box, MARKER_QUIET_MM), box));
}

function place([x, y]: SheetPlace, needs: DrawingNeeds): PlacedDrawing {
  const boxes = needs.map(({ left, top, right, bottom }) => ({
    left: left + x,
    top: top + y,
    right: right + x,
    bottom: bottom + y,
  }));
  return { at: [x, y], boxes };
}

function around(boxes: readonly SheetBox[]): SheetBox {
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
}
