import type { DrawingPoint } from "../../../drawing/display-list";

/** Hatching this short is not drawn, as a share of the distance between its lines. */
const SPECK = 0.05;

/**
 * Parallel strokes at 45 degrees over an outline, `apart` metres from one another, each from edge to edge; the lines lie on one
 * ruling for the whole plane, so that outlines side by side are hatched as one. Hollow outlines are hatched in pieces.
 */
export function hatchOutline(
  outline: readonly DrawingPoint[],
  apart: number,
): readonly (readonly [DrawingPoint, DrawingPoint])[] {
  // Turned by 45 degrees the strokes are level: u counts them, v runs along them.
  const turned = outline.map(([x, y]) => [(x - y) * Math.SQRT1_2, (x + y) * Math.SQRT1_2] as const);
  const counts = turned.map(([u]) => u / apart);
  const [first, last] = [Math.ceil(Math.min(...counts)), Math.floor(Math.max(...counts))];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * apart).flatMap((u) => {
    const met = turned
      .flatMap(([au, av], i) => {
        const [bu, bv] = turned[(i + 1) % turned.length] ?? [au, av];
        return au > u !== bu > u ? [av + ((u - au) / (bu - au)) * (bv - av)] : [];
      })
      .sort((a, b) => a - b);
    const back = (v: number): DrawingPoint => [(u + v) * Math.SQRT1_2, (v - u) * Math.SQRT1_2];
    return met.flatMap((from, i) => {
      const to = met[i + 1];
      return i % 2 === 0 && to !== undefined && to - from > SPECK * apart ? [[back(from), back(to)] as const] : [];
    });
  });
}
