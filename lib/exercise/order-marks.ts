import { project } from "../perspective/project";
import type { NamedPoint, NamedPoints, PointGroup } from "../plan/named-point";
import type { Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";
import type { TaskKind } from "./exercise";
import { insideFrame } from "./inside-frame";

/** Walls before openings before what stands on the stage. */
const GROUP_ORDER: Readonly<Record<PointGroup, number>> = {
  corner: 0,
  opening: 1,
  platform: 2,
  stair: 3,
  column: 4,
  furniture: 5,
  masking: 6,
};

export type OrderContext = {
  readonly stage: Stage;
  readonly viewer: Viewer;
  readonly given: readonly string[];
  readonly kind: TaskKind;
};

/**
 * The marks of a task that does not list them: walls before openings before furniture; within each feet before tops,
 * near before far. What is given, or falls outside the frame, is not asked; reading back asks only places on the floor.
 */
export function orderMarks(points: NamedPoints, { stage, viewer, given, kind }: OrderContext): readonly string[] {
  const asked = [...points.values()].filter((point) => {
    const seen = project(viewer, point.at);
    const askable = kind === "plan-to-picture" || point.onFloor;
    return askable && !given.includes(point.name) && seen.seen && insideFrame(stage, viewer, seen.at);
  });
  return asked.sort(compareMarks).map((point) => point.name);
}

function compareMarks(a: NamedPoint, b: NamedPoint): number {
  return GROUP_ORDER[a.group] - GROUP_ORDER[b.group] || Number(isTop(a)) - Number(isTop(b)) || a.at[1] - b.at[1];
}

function isTop({ role }: NamedPoint): boolean {
  return role === "top" || role === "head";
}
