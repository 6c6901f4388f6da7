import type { DisplayList } from "@/lib/drawing/display-list";
import { drawEdges, OWN_LINES } from "@/lib/drawing/draw-edges";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { BLANK_PLAN } from "@/lib/plan/blank-plan";
import { listEdges } from "@/lib/plan/list-edges";
import type { Plan } from "@/lib/plan/plan";
import type { PicturePoint } from "@/lib/stage/frame";
import type { Layer, Remember } from "../layers/remember";
import { allOf, type Drawn, type Touched } from "../layers/touched";

/** The empty picture: proscenium, stage, horizon and rule. */
export function frameLayer({ stage, viewer, units, scaleRatio }: Omit<Drawn, "plan">, remember: Remember): Layer {
  return remember("frame", [stage, viewer, units, scaleRatio], () =>
    drawSheetPicture({ stage, viewer, units, scaleRatio }),
  );
}

/** Of the empty picture, the lines of the stage that a set may hide: as the eye sees them they come with the set. */
const BEHIND_SET = /^picture\.stage\.(side|ceiling|back-wall|floor\.centre-line)/;

/** The empty picture without what a set may hide. */
export function frameBeforeSet(drawn: Omit<Drawn, "plan">, remember: Remember): Layer {
  const { key, list } = frameLayer(drawn, remember);
  const before = remember(`${key}.before-set`, [list], () => list.filter(({ id }) => !BEHIND_SET.test(id)));
  return { key, list: before.list };
}

/** The set's lines in the picture, thing by thing, so that only what changed is drawn anew. */
export function pictureLayers(
  { plan, stage, viewer }: Pick<Drawn, "plan" | "stage" | "viewer">,
  remember: Remember,
  touched: Touched = allOf(plan),
): readonly Layer[] {
  const draw = (key: string, deps: readonly unknown[], part: Partial<Plan>) =>
    remember(key, [...deps, stage, viewer], () => drawPart({ ...BLANK_PLAN, ...part }, stage, viewer));
  return [
    ...touched.platforms.map((each) => draw(`platform.${each.id}`, [each], { platforms: [each] })),
    ...touched.stairs.map((each) =>
      draw(`stair.${each.id}`, [each, plan.platforms], { stairs: [each], platforms: plan.platforms }),
    ),
    ...touched.furniture.map((each) => draw(`furniture.${each.id}`, [each], { furniture: [each] })),
    ...touched.columns.map((each) => draw(`column.${each.id}`, [each], { columns: [each] })),
    ...touched.masking.map((each) => draw(`masking.${each.id}`, [each], { masking: [each] })),
    ...touched.moved.map((wall) => {
      const ends = [wall.from, wall.to].map((name) => [name, plan.corners.get(name)] as const);
      const corners = new Map(ends.flatMap(([name, at]) => (at ? [[name, at] as const] : [])));
      return draw(`wall.${wall.id}`, [wall, ends[0]?.[1], ends[1]?.[1]], { walls: [wall], corners });
    }),
  ];
}

/** The lines of a few things; those of a stair are told from the platforms given with it by their own names. */
function drawPart(plan: Plan, stage: Exercise["stage"], viewer: Exercise["viewer"]): DisplayList {
  const points = exercisePoints({ plan, stage, viewer });
  const places = new Map<string, PicturePoint>();
  for (const [name, { picture }] of points) if (picture) places.set(name, picture);
  const edges = listEdges(plan, points).filter(({ kind }) => plan.stairs.length === 0 || kind === "stair");
  return drawEdges(edges, places, OWN_LINES, { plan, points });
}
