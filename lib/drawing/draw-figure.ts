import type { Exercise } from "../exercise/exercise";
import { project } from "../perspective/project";
import { surfaceLevel } from "../plan/surface-level";
import type { PlanPoint } from "../stage/frame";
import type { DisplayList, DrawingPoint } from "./display-list";
import { makeStroke } from "./make-stroke";
import { figureOutline } from "./picture-parts/figure-outline";

/**
 * Height of the figure for scale, metres: midway between the mean statures of men, 1.756 m, and women, 1.629 m (ANSUR II,
 * 2012), unshod.
 */
export const FIGURE_HEIGHT_M = (1.756 + 1.629) / 2;

export type FigureOptions = {
  /** What its ids start with; one figure's must differ from another's. */
  readonly id?: string;
  readonly heightM?: number;
};

/**
 * A standing person at a place of the plan, facing the audience, projected: a display list in picture metres, [X, Z]. It
 * stands on whatever is there to stand on, floor, platform or tread. Empty where the eye cannot see it.
 *
 * Usage: `drawFigure(exercise, [x, y])` over the sheet's picture.
 */
export function drawFigure(
  { plan, stage, viewer }: Pick<Exercise, "plan" | "stage" | "viewer">,
  [x, y]: PlanPoint,
  { id = "figure", heightM = FIGURE_HEIGHT_M }: FigureOptions = {},
): DisplayList {
  const level = surfaceLevel(plan, stage, [x, y]);
  const feet = project(viewer, [x, y, level]);
  if (!feet.seen) return [];
  // A figure parallel to the picture plane keeps its shape: it only shrinks by s.
  const size = heightM * feet.s;
  const place = ([u, v]: DrawingPoint): DrawingPoint => [feet.at[0] + u * size, feet.at[1] + v * size];
  return figureOutline().map(({ part, points, closed }) =>
    makeStroke(`${id}.${part}`, points.map(place), { closed, fill: closed ? "paper" : "none", hand: true }),
  );
}
