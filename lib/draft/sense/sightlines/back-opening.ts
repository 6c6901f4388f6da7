import { FOOT_M } from "../../../measure/length";
import type { Plan } from "../../../plan/plan";
import { openingJambs, wallLine } from "../../../plan/wall-line";
import type { PlanPoint } from "../../../stage/frame";
import { floorHeight, type Stage } from "../../../stage/stage";
import type { Edit } from "../../edit";
import type { Fan } from "./fan";
import { depthOn, type Eye, placeAt } from "./sight-line";

/** A backing stands this far behind a wall, where one can pass, and reaches this far past what is seen (common practice, no source). */
const BEHIND_M = 4 * FOOT_M;
const PAST_M = FOOT_M / 2;
/** Backing flats are 8 ft high (northern.edu, th241), and higher where a head is: by this much over it. */
const BACKING_M = 8 * FOOT_M;
const OVER_HEAD_M = FOOT_M;

export type Backing = { readonly width: number; readonly behind: number; readonly edit: Edit };

/**
 * A backing along the wall, behind an opening, just wide enough for the sight lines of one seat that see through it. Null where
 * those run along the wall, so that none of a likely width would do.
 */
export function backOpening(
  plan: Plan,
  stage: Pick<Stage, "rake">,
  opening: { readonly wall: string; readonly id: string },
  eye: Eye,
  fans: readonly Fan[],
): Backing | null {
  const wall = plan.walls.find(({ id }) => id === opening.wall);
  const hole = wall?.openings.find(({ id }) => id === opening.id);
  const line = wall && wallLine(plan, wall);
  if (!hole || !line) return null;
  const behind = BEHIND_M + wall.thickness;
  const shifted = ([x, y]: PlanPoint): PlanPoint => [x + line.offstage[0] * behind, y + line.offstage[1] * behind];
  const [a, b] = [shifted(line.from), shifted(line.to)];
  const along = fans.flatMap(({ crossings }) =>
    crossings.flatMap((crossing) => {
      const depth = depthOn(eye, crossing, a, b);
      if (depth === null || depth <= -eye.distance) return [];
      const [x, y] = placeAt(eye, crossing, depth);
      return [(x - a[0]) * line.along[0] + (y - a[1]) * line.along[1]];
    }),
  );
  if (along.length < 2 * fans.length) return null;
  const [start, end] = [Math.min(...along) - PAST_M, Math.max(...along) + PAST_M];
  if (!(end - start <= WIDEST * hole.width)) return null;
  const place = (u: number): PlanPoint => [a[0] + line.along[0] * u, a[1] + line.along[1] * u];
  const ground = floorHeight(stage, openingJambs(line, hole).middle[1]) + wall.base;
  const height = Math.max(ground + BACKING_M, ground + hole.head + OVER_HEAD_M);
  return {
    width: end - start,
    behind: BEHIND_M,
    edit: { edit: "add-masking", masking: { kind: "backing", line: [place(start), place(end)], trim: null, height } },
  };
}

/** Nobody builds a backing wider than so many times its opening. */
const WIDEST = 6;
