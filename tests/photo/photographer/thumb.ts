import { MARKER_MM, markerPlaces } from "@/lib/sheet/marker-places";
import { type Paper, paperSize } from "@/lib/sheet/paper-size";

/** A thumb that holds the sheet down, from beyond its edge on to one marker. Sheet millimetres. */
export type Thumb = {
  readonly tip: readonly [number, number];
  readonly root: readonly [number, number];
};

/** What light skin sends back (about; common practice, no source). */
export const THUMB_LIGHT = 0.38;
/** A thumb's half width: it hides a marker, and nothing of the drawing. */
const HALF_MM = 10;
const LONG_MM = 60;

export function layThumb(paper: Paper, marker: number): Thumb {
  const box = markerPlaces(paper).find(({ id }) => id === marker)?.box;
  if (!box) throw new Error(`A sheet has no marker ${marker}.`);
  const { widthMm, heightMm } = paperSize(paper);
  const tip = [box.left + MARKER_MM / 2, box.top + MARKER_MM / 2] as const;
  // Outwards from the sheet's middle, by the nearer edges.
  const side = (at: number, long: number) => (at < long / 4 ? -1 : at > (3 * long) / 4 ? 1 : 0);
  const out = [side(tip[0], widthMm), side(tip[1], heightMm)] as const;
  const length = Math.hypot(...out);
  return { tip, root: [tip[0] + (LONG_MM * out[0]) / length, tip[1] + (LONG_MM * out[1]) / length] };
}

export function onThumb({ tip, root }: Thumb, x: number, y: number): boolean {
  const [dx, dy] = [root[0] - tip[0], root[1] - tip[1]];
  const t = Math.min(1, Math.max(0, ((x - tip[0]) * dx + (y - tip[1]) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - tip[0] - t * dx, y - tip[1] - t * dy) < HALF_MM;
}
