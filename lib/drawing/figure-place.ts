import type { PlanPoint } from "../stage/frame";
import type { Stage } from "../stage/stage";

/** How far across the opening it stands, as a share of its width from the centre line: at the viewer's left, out of most sets. */
const SHARE = -0.43;

/** Where the figure for scale usually stands: on the plaster line, where everything is true size, toward stage right. */
export function figurePlace({ opening }: Pick<Stage, "opening">): PlanPoint {
  return [opening.width * SHARE, 0];
}
