import { between } from "../../geometry/vector";
import type { PlaneBox } from "../clear-lettering";
import type { DrawingPoint, Stroke } from "../display-list";

/** The stretch of a line inside a box; null where there is none. */
export function cutSegment(
  [a, b]: readonly [DrawingPoint, DrawingPoint],
  [left, bottom, right, top]: PlaneBox,
): readonly [DrawingPoint, DrawingPoint] | null {
  let [first, last] = [0, 1];
  for (const [start, run, least, most] of [
    [a[0], b[0] - a[0], left, right],
    [a[1], b[1] - a[1], bottom, top],
  ] as const) {
    if (run === 0) {
      if (start < least || start > most) return null;
      continue;
    }
    const [one, other] = [(least - start) / run, (most - start) / run];
    first = Math.max(first, Math.min(one, other));
    last = Math.min(last, Math.max(one, other));
  }
  return first < last ? [between(a, b, first), between(a, b, last)] : null;
}

/** What of an open stroke lies inside a box, piece by piece; one that lies inside it whole stays as it is. */
export function cutStroke(stroke: Stroke, box: PlaneBox): readonly Stroke[] {
  if (stroke.points.every((point) => isInBox(point, box))) return [stroke];
  return stroke.points.slice(1).flatMap((point, i) => {
    const piece = cutSegment([stroke.points[i] as DrawingPoint, point], box);
    return piece ? [{ ...stroke, id: `${stroke.id}.${i}`, points: piece }] : [];
  });
}

export function isInBox([x, y]: DrawingPoint, [left, bottom, right, top]: PlaneBox): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}
