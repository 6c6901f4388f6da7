import { heightOver, type Plane } from "../../geometry/plane";
import type { Face } from "../../plan/solids/solid";
import { TOUCH_M } from "./touch";

/**
 * Whether what a line bounds is behind a plane that the line lies in: none of its faces comes before the plane, and one at
 * least goes behind. So a line drawn on the plane's surface is not, and a foot standing on it is not; the edge of a body that
 * touches the surface from the other side is.
 */
export function liesBehind(bounded: readonly number[], faces: readonly Face[], plane: Plane): boolean {
  let behind = false;
  for (const i of bounded) {
    for (const point of faces[i]?.outline ?? []) {
      const height = heightOver(plane, point);
      if (height > TOUCH_M) return false;
      if (height < -TOUCH_M) behind = true;
    }
  }
  return behind;
}
