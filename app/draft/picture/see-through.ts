import type { DisplayList } from "@/lib/drawing/display-list";
import { drawEdges, OWN_LINES } from "@/lib/drawing/draw-edges";
import type { Exercise } from "@/lib/exercise/exercise";
import { project } from "@/lib/perspective/project";
import type { Edge } from "@/lib/plan/edge";
import { listEdges } from "@/lib/plan/list-edges";
import { namePoints } from "@/lib/plan/name-points";
import type { NamedPoints } from "@/lib/plan/named-point";
import type { PicturePoint } from "@/lib/stage/frame";

type Seen = Pick<Exercise, "plan" | "stage" | "viewer">;

/**
 * Draws the lines of a whole set in the picture as if it were of glass. What stays while the eye moves, the points on the stage
 * and the lines between them, is worked out once for a plan on a stage.
 */
export function createSeeThrough(): (seen: Seen) => DisplayList {
  let known: (Pick<Seen, "plan" | "stage"> & { readonly points: NamedPoints; readonly edges: readonly Edge[] }) | null;
  known = null;
  return ({ plan, stage, viewer }) => {
    if (known?.plan !== plan || known.stage !== stage) {
      const points = namePoints(plan, stage);
      known = { plan, stage, points, edges: listEdges(plan, points) };
    }
    const { points, edges } = known;
    const places = new Map<string, PicturePoint>();
    for (const [name, { at }] of points) {
      const seen = project(viewer, at);
      if (seen.seen && at.every(Number.isFinite)) places.set(name, seen.at);
    }
    return drawEdges(edges, places, OWN_LINES, { plan, points });
  };
}
