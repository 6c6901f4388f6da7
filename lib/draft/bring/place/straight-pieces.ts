import { distanceToSegment } from "../../../geometry/segments-cross";
import { distance } from "../../../geometry/vector";
import type { PlanPoint } from "../../../stage/frame";
import type { WallPiece } from "./wall-piece";

/** A bent wall becomes straight ones that leave its line by no more than this, metres. */
const BENT_WALL_M = 0.03;

/** The straight walls that a line stands for. A bent one becomes as few as stay near it. */
export function straightPieces({
  points,
  curved,
}: {
  points: readonly PlanPoint[];
  curved: boolean;
}): readonly WallPiece[] {
  const corners = curved ? fewer(points) : points;
  return corners.slice(1).flatMap((b, i): WallPiece[] => {
    const a = corners[i] as PlanPoint;
    return distance(a, b) > 0 ? [{ a, b, thickness: 0, offstage: null }] : [];
  });
}

/** The points of a line that matter, by the way of Ramer, Douglas and Peucker (1972, 1973, from memory). */
function fewer(points: readonly PlanPoint[]): readonly PlanPoint[] {
  const kept = new Set([0, points.length - 1]);
  const spans: [number, number][] = [[0, points.length - 1]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [from, to] = span;
    let [farthest, reach] = [-1, BENT_WALL_M];
    for (let i = from + 1; i < to; i += 1) {
      const away = distanceToSegment(points[i] as PlanPoint, [points[from] as PlanPoint, points[to] as PlanPoint]);
      if (away > reach) [farthest, reach] = [i, away];
    }
    if (farthest < 0) continue;
    kept.add(farthest);
    spans.push([from, farthest], [farthest, to]);
  }
  return points.filter((_, i) => kept.has(i));
}
