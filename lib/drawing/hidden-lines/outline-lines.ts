import { heightOver, planeOf } from "../../geometry/plane";
import type { Face, SolidLine } from "../../plan/solids/solid";
import { eyePoint, type Viewer } from "../../stage/viewer";
import { TOUCH_M } from "./touch";

/**
 * The lines of a body that are worth drawing from where the eye stands: all edges and details, and of the `smooth` lines
 * between the facets of a curved surface those of its outline, where exactly one of the two facets looks to the eye. A facet
 * seen edge-on does not look to the eye. A smooth line of one facet is that surface's open end, and kept.
 */
export function outlineLines(
  { faces, lines }: { readonly faces: readonly Face[]; readonly lines: readonly SolidLine[] },
  viewer: Viewer,
): readonly SolidLine[] {
  const eye = eyePoint(viewer);
  const looks = faces.map(({ outline }) => {
    const plane = planeOf(outline);
    return plane !== null && heightOver(plane, eye) > TOUCH_M;
  });
  return lines.filter((line) => {
    if (line.kind !== "smooth") return true;
    const facing = line.faces.filter((i) => looks[i]).length;
    return line.faces.length < 2 || facing === 1;
  });
}
