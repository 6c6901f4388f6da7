import type { Exercise } from "../../exercise/exercise";
import type { Face, Solid, SolidLine } from "../../plan/solids/solid";
import { surfaceLevel } from "../../plan/surface-level";
import type { PlanPoint, StagePoint } from "../../stage/frame";
import { FIGURE_HEIGHT_M } from "../draw-figure";
import { figureOutline } from "../picture-parts/figure-outline";

/** Each part of the figure stands this far before the last, metres, so that a coat hides the tops of the legs in it. */
const LAYER_M = 0.002;

/**
 * A standing person at a place of the plan as flat shapes facing the audience, metres, stage frame, on whatever is there to stand
 * on: each closed outline a face of kind `figure`, what is drawn on the coat a detail.
 */
export function figureSolid({ plan, stage }: Pick<Exercise, "plan" | "stage">, [x, y]: PlanPoint): Solid {
  const level = surfaceLevel(plan, stage, [x, y]);
  const faces: Face[] = [];
  const lines: SolidLine[] = [];
  for (const { part, points, closed } of figureOutline()) {
    const id = `figure.${part}`;
    const depth = y - LAYER_M * (closed ? faces.length + 1 : faces.length);
    const ring = points.map(([u, v]): StagePoint => [x + u * FIGURE_HEIGHT_M, depth, level + v * FIGURE_HEIGHT_M]);
    if (closed) faces.push({ id, element: "figure", kind: "figure", outline: facing(ring), holes: [] });
    const on = faces.length - 1;
    ring.forEach((from, i) => {
      const to = ring[i + 1] ?? (closed ? ring[0] : undefined);
      if (to)
        lines.push({
          id: `${id}.${i + 1}`,
          element: "figure",
          from,
          to,
          faces: [on],
          kind: closed ? "edge" : "detail",
        });
    });
  }
  return { faces, lines };
}

/** Counter-clockwise seen from the audience. */
function facing(ring: readonly StagePoint[]): readonly StagePoint[] {
  const area = ring.reduce((sum, [x, , z], i) => {
    const [u, , w] = ring[(i + 1) % ring.length] as StagePoint;
    return sum + x * w - u * z;
  }, 0);
  return area > 0 ? ring : [...ring].reverse();
}
