import { distance } from "../../../geometry/vector";
import type { PlanPoint } from "../../../stage/frame";
import type { Fan } from "./fan";

/** Corners of an outline nearer than this are one, metres. */
const SAME_CORNER_M = 1e-9;
/** A region smaller than this in one direction is a line, metres: a hundredth of a millimetre. */
const NO_BREADTH_M = 1e-5;

/** Fans that lie beside one another as outlines in the plan: those that touch are one. Given from house left to house right. */
export function mergeFans(fans: readonly Fan[]): readonly (readonly PlanPoint[])[] {
  const runs: Fan[][] = [];
  for (const fan of fans) {
    const last = runs.at(-1)?.at(-1);
    if (last && fan.crossings[0] <= last.crossings[1] + SAME_CORNER_M) runs.at(-1)?.push(fan);
    else runs.push([fan]);
  }
  return runs
    .map((run) =>
      eachOnce([...run.flatMap(({ near }) => near), ...run.toReversed().flatMap(({ far }) => far.toReversed())]),
    )
    .filter((outline) => outline.length > 2 && breadth(outline) > NO_BREADTH_M);
}

function eachOnce(outline: readonly PlanPoint[]): readonly PlanPoint[] {
  return outline.filter((corner, i) => distance(corner, outline.at(i - 1) as PlanPoint) > SAME_CORNER_M);
}

/** Area over extent: how broad an outline is. */
function breadth(outline: readonly PlanPoint[]): number {
  const reach = outline.reduce((most, corner) => Math.max(most, distance(corner, outline[0] as PlanPoint)), 0);
  return reach === 0 ? 0 : Math.abs(areaOf(outline)) / reach;
}

/** Area of an outline, metres squared: positive when it runs counter-clockwise. */
export function areaOf(outline: readonly PlanPoint[]): number {
  return outline.reduce((sum, [x, y], i) => {
    const [u, v] = outline[(i + 1) % outline.length] as PlanPoint;
    return sum + (x * v - u * y) / 2;
  }, 0);
}
