import type { BringReading, Brought, BroughtLine, BroughtPoint } from "@/lib/draft/bring/brought";

export function broughtOf(reading: BringReading): Brought {
  if (!reading.ok) throw new Error(`Not read: ${reading.problem.where}: ${reading.problem.message}`);
  return reading.brought;
}

export function linesOn(brought: Brought, layer: string): readonly BroughtLine[] {
  return brought.layers.find(({ name }) => name === layer)?.lines ?? [];
}

/** How far a place is from a line, in the line's own unit. */
export function distanceTo({ points }: BroughtLine, [x, y]: BroughtPoint): number {
  const pieces = points.slice(1).map((to, i) => {
    const [ax, ay] = points[i] as BroughtPoint;
    const [ux, uy] = [to[0] - ax, to[1] - ay];
    const along = ux * ux + uy * uy;
    const t = along > 0 ? Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / along)) : 0;
    return Math.hypot(x - ax - t * ux, y - ay - t * uy);
  });
  return Math.min(...pieces);
}
