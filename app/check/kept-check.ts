import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { CHECK_KEY, put, type Shelf, take } from "@/app/_parts/kept-work/shelf";
import { CHECK_FORMAT, type CheckedDrawing, POINT_STATES } from "@/app/_photo/checked-drawing";

/** Whose drawing it is: one for oneself, and one for each exercise of homework. */
export type CheckDesk = { readonly itemId: string; readonly memberId: string } | null;

/** Keeps the drawing under way; false when the storage refuses. */
export function keepCheck(shelf: Shelf, desk: CheckDesk, drawing: CheckedDrawing): boolean {
  return put(shelf, keyOf(desk), drawing);
}

/** The drawing under way, or null. */
export function keptCheck(shelf: Shelf, desk: CheckDesk): CheckedDrawing | null {
  return readCheck(take(shelf, keyOf(desk)));
}

export function forgetCheck(shelf: Shelf, desk: CheckDesk): void {
  shelf.removeItem(keyOf(desk));
}

function keyOf(desk: CheckDesk): string {
  return desk ? `${CHECK_KEY}.${desk.memberId}.${desk.itemId}` : CHECK_KEY;
}

/** A drawing out of the browser's storage; null for anything that is not one. */
export function readCheck(value: unknown): CheckedDrawing | null {
  if (!isRecord(value) || value.format !== CHECK_FORMAT) return null;
  const {
    exercise,
    version,
    scale,
    frame,
    box,
    picture,
    points,
    lines,
    ownEye,
    residualMm,
    doubts,
    confirmed,
    handedIn,
  } = value;
  const sound =
    typeof exercise === "string" &&
    typeof version === "number" &&
    typeof scale === "string" &&
    isRecord(frame) &&
    typeof frame.ratio === "number" &&
    isPlace(frame.at) &&
    isRecord(box) &&
    [box.left, box.top, box.right, box.bottom].every((side) => Number.isFinite(side)) &&
    typeof picture === "string" &&
    picture.startsWith("data:image/") &&
    Array.isArray(points) &&
    points.every(isPoint) &&
    Array.isArray(lines) &&
    lines.every((line) => Array.isArray(line) && line.length === 2 && line.every(isPlace)) &&
    (ownEye === null || isRecord(ownEye)) &&
    (residualMm === null || typeof residualMm === "number") &&
    Array.isArray(doubts) &&
    doubts.every((each) => typeof each === "string") &&
    typeof confirmed === "boolean" &&
    (handedIn === null || typeof handedIn === "string");
  return sound ? (value as CheckedDrawing) : null;
}

function isPoint(value: unknown): boolean {
  return (
    isRecord(value) &&
    typeof value.point === "string" &&
    (value.at === null || isPlace(value.at)) &&
    POINT_STATES.some((state) => state === value.state) &&
    isRecord(value.read)
  );
}

function isPlace(value: unknown): boolean {
  return Array.isArray(value) && value.length === 2 && value.every((each) => Number.isFinite(each));
}
