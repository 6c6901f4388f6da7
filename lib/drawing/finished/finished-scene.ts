import type { Exercise } from "../../exercise/exercise";
import { joinSolids } from "../../plan/solids/join-solids";
import type { Face, Solid, SolidLine } from "../../plan/solids/solid";
import { solidsOfPlan } from "../../plan/solids/solids-of-plan";
import type { PlanPoint, StagePoint } from "../../stage/frame";
import type { Stage } from "../../stage/stage";
import { intersectionLines } from "../hidden-lines/intersection-lines";
import { outlineLines } from "../hidden-lines/outline-lines";
import { figureSolid } from "./figure-solid";
import { stageLines } from "./stage-lines";

/** How far the proscenium wall reaches beyond its opening, metres: past anything that stands behind it. */
const WALL_REACH_M = 1000;

/** Everything the eye may see, and the lines worth drawing from where it stands. */
export type FinishedScene = {
  readonly faces: readonly Face[];
  readonly lines: readonly SolidLine[];
};

/**
 * The set on its stage behind the proscenium wall, whose opening is a hole in it: what lies upstage is seen through the hole alone,
 * what stands on the apron stands before the wall. The wall's own lines are not among the lines.
 */
export function finishedScene(
  { plan, stage, viewer }: Pick<Exercise, "plan" | "stage" | "viewer">,
  figureAt: PlanPoint | null,
): FinishedScene {
  const set = solidsOfPlan(plan, stage);
  const pierced: Solid = {
    faces: set.faces,
    lines: [
      ...set.lines,
      ...intersectionLines(set.faces).map(
        (line): SolidLine => ({ ...line, element: set.faces[line.faces[0] as number]?.element ?? "", kind: "edge" }),
      ),
    ],
  };
  const solid = joinSolids(
    pierced,
    ...(figureAt ? [figureSolid({ plan, stage }, figureAt)] : []),
    { faces: [], lines: stageLines(plan, stage) },
    { faces: [prosceniumFace(stage)], lines: [] },
  );
  return { faces: solid.faces, lines: outlineLines(solid, viewer) };
}

function prosceniumFace({ opening }: Pick<Stage, "opening">): Face {
  const half = opening.width / 2;
  const ring = (left: number, right: number, low: number, high: number): StagePoint[] => [
    [left, 0, low],
    [right, 0, low],
    [right, 0, high],
    [left, 0, high],
  ];
  return {
    id: "proscenium",
    element: "proscenium",
    kind: "proscenium",
    outline: ring(-WALL_REACH_M, WALL_REACH_M, -WALL_REACH_M, WALL_REACH_M),
    holes: [[...ring(-half, half, 0, opening.height)].reverse()],
  };
}
