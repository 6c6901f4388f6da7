import type { Stroke } from "@/lib/drawing/display-list";
import { handPath } from "@/lib/drawing/hand-stroke";

type Point = readonly [x: number, y: number];
type Made = { readonly points: readonly Point[]; readonly path: Path2D };

/** A line as the hand draws it, and how far it has been moved since, millimetres of paper. */
export type ShiftedPath = { readonly path: Path2D; readonly by: Point };
export type HandPaths = (stroke: Stroke, points: readonly Point[]) => ShiftedPath;

/** A line whose points have all moved alike, to so much of a millimetre of paper, is the same line elsewhere. */
const ALIKE_MM = 1e-6;

/** The hand's lines by their strokes' names: one that is only moved is not made anew, for its form hangs on its name and its run alone. */
export function rememberHandPaths(): HandPaths {
  const made = new Map<string, Made>();
  return (stroke, points) => {
    const before = made.get(stroke.id);
    const by = before && shiftFrom(before.points, points);
    if (before && by) return { path: before.path, by };
    const path = new Path2D(handPath(points, stroke.id, { unitsPerMm: 1, closed: stroke.closed }));
    made.set(stroke.id, { points, path });
    return { path, by: [0, 0] };
  };
}

function shiftFrom(before: readonly Point[], now: readonly Point[]): Point | null {
  const [a, b] = [before[0], now[0]];
  if (!a || !b || before.length !== now.length) return null;
  const by: Point = [b[0] - a[0], b[1] - a[1]];
  const isAlike = before.every(([x, y], i) => {
    const [u, v] = now[i] as Point;
    return Math.abs(u - x - by[0]) < ALIKE_MM && Math.abs(v - y - by[1]) < ALIKE_MM;
  });
  return isAlike ? by : null;
}
