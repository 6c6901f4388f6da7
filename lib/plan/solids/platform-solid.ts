import type { PlanPoint } from "../../stage/frame";
import type { Stage } from "../../stage/stage";
import type { Platform } from "../plan";
import { platformTop } from "../surface-level";
import { prism } from "./prism";
import type { Solid } from "./solid";

/** A platform as a closed body, its top level and its foot on the floor. */
export function platformSolid(platform: Platform, stage: Pick<Stage, "rake">): Solid {
  const { id, outline, base } = platform;
  const area = outline.reduce((sum, [x, y], i) => {
    const [u, v] = outline[(i + 1) % outline.length] as PlanPoint;
    return sum + x * v - u * y;
  }, 0);
  return prism({
    id,
    element: id,
    kind: "platform",
    outline: area < 0 ? [...outline].reverse() : outline,
    bottom: { rake: stage.rake, base },
    top: platformTop(platform, stage),
  });
}
