import type { DisplayItem, DrawingPoint, Lettering, Stroke } from "./display-list";
import { letteringBox } from "./lettering-box";
import { LETTER_MM, makeLettering } from "./make-stroke";

/** A rectangle on the plane, metres. */
export type PlaneBox = readonly [left: number, bottom: number, right: number, top: number];

/**
 * Places tried for a name, best first: turned from the wanted direction, degrees, at a distance from the point to the
 * middle of the letters, millimetres of paper. Farther out on the right side is better than near on a wrong one.
 */
const NAME_PLACES = [
  { turns: [0, 25, -25], distances: [3.6, 4.8, 6.4, 8] },
  { turns: [50, -50, 75, -75], distances: [3.6, 4.8, 6.4] },
  { turns: [110, -110, 145, -145, 180], distances: [3.6, 4.8] },
] as const;
/** What lettering keeps clear of lines, millimetres. */
const CLEAR_MM = 0.5;
/** A faint line under lettering is a smaller evil. */
const FAINT_COST = 0.4;
/** Lettering over lettering cannot be read. */
const LETTERING_COST = 4;

/** A name beside a point, on the side `away`, where it crosses least of what is drawn. */
export function letterName(id: string, at: DrawingPoint, away: DrawingPoint, text: string, drawn: Drawn): Lettering {
  const heightMm = LETTER_MM.name;
  const angle = Math.atan2(away[1], away[0]);
  const places = NAME_PLACES.flatMap(({ turns, distances }) =>
    distances.flatMap((reach) =>
      turns.map((turn) => {
        const toward = angle + (turn * Math.PI) / 180;
        const shiftMm = [reach * Math.cos(toward), reach * Math.sin(toward) - heightMm / 2] as const;
        return makeLettering(id, at, text, { heightMm, shiftMm });
      }),
    ),
  );
  return clearest(places, drawn);
}

/** What is on the sheet already, and the scale that ties its metres to lettering in millimetres. */
export type Drawn = { readonly items: readonly DisplayItem[]; readonly scaleRatio: number };

/** The first of the places for a lettering that crosses least of what is drawn. Throws when given none. */
export function clearest(places: readonly Lettering[], { items, scaleRatio }: Drawn): Lettering {
  let best: { place: Lettering; cost: number } | null = null;
  for (const place of places) {
    const cost = crossings(planeBox(place, scaleRatio, CLEAR_MM), items, scaleRatio);
    if (cost === 0) return place;
    if (!best || cost < best.cost) best = { place, cost };
  }
  if (!best) throw new Error("A lettering needs at least one place to choose from.");
  return best.place;
}

/** The room a lettering takes on the plane at a drawing scale, metres, with a margin round it. */
export function planeBox(lettering: Lettering, scaleRatio: number, marginMm = 0): PlaneBox {
  const mm = scaleRatio / 1000;
  const box = letteringBox(lettering);
  const [x, y] = lettering.at;
  return [
    x + (box.left - marginMm) * mm,
    y + (box.bottom - marginMm) * mm,
    x + (box.right + marginMm) * mm,
    y + (box.top + marginMm) * mm,
  ];
}

function crossings(box: PlaneBox, items: readonly DisplayItem[], scaleRatio: number): number {
  let cost = 0;
  for (const item of items) {
    if (item.kind === "lettering") cost += overlap(box, planeBox(item, scaleRatio)) ? LETTERING_COST : 0;
    else if (!item.fillOnly && strokeTouches(item, box)) cost += item.faint ? FAINT_COST : 1;
  }
  return cost;
}

function overlap(a: PlaneBox, b: PlaneBox): boolean {
  return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
}

function strokeTouches({ points, closed }: Stroke, box: PlaneBox): boolean {
  const last = points.at(-1);
  if (closed && last && points[0] && segmentTouches(last, points[0], box)) return true;
  return points.some((point, i) => i > 0 && segmentTouches(points[i - 1] as DrawingPoint, point, box));
}

/** Clips the segment to the box side by side (the usual parametric clipping); some of it left means it touches. */
function segmentTouches(a: DrawingPoint, b: DrawingPoint, [left, bottom, right, top]: PlaneBox): boolean {
  let [enter, leave] = [0, 1];
  const limits = [
    [left - a[0], right - a[0], b[0] - a[0]],
    [bottom - a[1], top - a[1], b[1] - a[1]],
  ] as const;
  for (const [low, high, run] of limits) {
    if (run === 0) {
      if (low > 0 || high < 0) return false;
      continue;
    }
    enter = Math.max(enter, Math.min(low / run, high / run));
    leave = Math.min(leave, Math.max(low / run, high / run));
  }
  return enter <= leave;
}
