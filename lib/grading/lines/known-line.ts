import type { Exercise } from "../../exercise/exercise";
import { cross3, subtract3 } from "../../geometry/vector3";
import { toPaperMm } from "../../measure/scale";
import type { DrawnLine } from "../../perspective/whose-eye/drawn-line";
import type { Edge } from "../../plan/edge";
import type { NamedPoints } from "../../plan/named-point";
import type { StageDirection } from "../../stage/frame";
import { directionFrom, ruleOf } from "./judge-line";
import type { LineRule, PaperLine } from "./judgement";
import { SHORTEST_LINE_MM, withPrecision } from "./line-precision";
import { edgeBetween, nameLine } from "./name-line";

/** Directions that leave each other by less than this sine are parallel on the stage. */
const PARALLEL_SINE = 1e-6;

/** A line with what it is on the stage; `line` runs from its end nearer to the viewer. */
export type KnownLine = {
  readonly drawn: PaperLine;
  readonly line: DrawnLine;
  readonly direction: StageDirection;
  readonly rule: LineRule;
  /** In words, and the wall or piece it belongs to. */
  readonly name: string;
  readonly element: string;
};

/** What a drawn line is on the stage; null for one too short to judge, or none there. */
export function knowLine(
  exercise: Exercise,
  drawn: PaperLine,
  scaleRatio: number,
  points: NamedPoints,
  edges: readonly Edge[],
): KnownLine | null {
  const [from, to] = [points.get(drawn.from), points.get(drawn.to)];
  if (!from || !to)
    throw new Error(`A line runs from ${drawn.from} to ${drawn.to}, and one of them names no point of the plan.`);
  const [a, b] = drawn.at;
  const length = toPaperMm(Math.hypot(b[0] - a[0], b[1] - a[1]), scaleRatio);
  const turned = from.at[1] > to.at[1];
  const direction = directionFrom(turned ? subtract3(from.at, to.at) : subtract3(to.at, from.at));
  const rule = ruleOf(direction);
  if (rule === null || !(length >= SHORTEST_LINE_MM)) return null;
  const element = edgeBetween(edges, drawn.from, drawn.to)?.element ?? from.element;
  return {
    drawn,
    line: withPrecision(turned ? [b, a] : [a, b], exercise, scaleRatio),
    direction,
    rule,
    name: nameLine(edges, points, drawn.from, drawn.to),
    element,
  };
}

/** Places in the list of the receding lines that are parallel on the stage, two and more together. */
export function parallelGroups(known: readonly KnownLine[]): readonly (readonly number[])[] {
  const groups: number[][] = [];
  known.forEach(({ rule, direction }, i) => {
    if (rule !== "receding") return;
    const group = groups.find(([first]) => areParallel((known[first as number] as KnownLine).direction, direction));
    if (group) group.push(i);
    else groups.push([i]);
  });
  return groups.filter((group) => group.length > 1);
}

function areParallel(one: StageDirection, other: StageDirection): boolean {
  return Math.hypot(...cross3(one, other)) < PARALLEL_SINE * Math.hypot(...one) * Math.hypot(...other);
}
