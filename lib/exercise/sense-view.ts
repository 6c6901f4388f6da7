import { listEdges } from "../plan/list-edges";
import type { NamedPoint } from "../plan/named-point";
import type { Exercise } from "./exercise";
import type { ProjectedPoint } from "./exercise-points";
import { type Finding, fault, note } from "./finding";
import { crossesFrame, insideFrame } from "./inside-frame";

type Points = ReadonlyMap<string, ProjectedPoint>;

/** What the eye sees of the set: nothing behind it, something in the frame. */
export function checkView(exercise: Exercise, points: Points): readonly Finding[] {
  const { stage, viewer, plan } = exercise;
  const all = [...points.values()];
  const behind = firstOfEachElement(all.filter(({ picture }) => picture === null));
  const inFrame = (point: ProjectedPoint) => point.picture !== null && insideFrame(stage, viewer, point.picture);
  const outside = firstOfEachElement(all.filter((point) => point.picture !== null && !inFrame(point)));
  const used = new Set(plan.walls.flatMap(({ from, to }) => [from, to]));
  return [
    ...(viewer.distance > 0
      ? behind.map((point) =>
          fault(
            pointerTo(exercise, point),
            `${point.name} is level with the eye or behind it`,
            "move it upstage, or the eye farther back",
          ),
        )
      : []),
    ...(all.some(inFrame) || all.length === 0 || someEdgeInFrame(exercise, points)
      ? []
      : [fault("/plan", "nothing of the plan is visible in the proscenium opening", "move the set into the opening")]),
    ...(all.length === 0
      ? [fault("/plan", "the plan is empty: nothing is visible", "give it corners, walls or furniture")]
      : []),
    ...outside.map((point) =>
      note(
        pointerTo(exercise, point),
        `${point.name} falls outside the frame of the picture`,
        "fine for returns and masking; nobody can be asked to place it there",
      ),
    ),
    ...[...plan.corners.keys()]
      .filter((name) => !used.has(name))
      .map((name) =>
        note(
          `/plan/corners/${name}`,
          `no wall uses corner "${name}"`,
          `fine for a plain point on the floor (${name}.foot)`,
        ),
      ),
  ];
}

/** A backdrop wider and taller than the opening has no corner in the frame, and yet it is all that one sees. */
function someEdgeInFrame({ plan, stage }: Exercise, points: Points): boolean {
  return listEdges(plan, points).some(({ from, to }) => {
    const [a, b] = [points.get(from)?.picture, points.get(to)?.picture];
    return a && b ? crossesFrame(stage, a, b) : false;
  });
}

function firstOfEachElement(points: readonly ProjectedPoint[]): readonly ProjectedPoint[] {
  const seen = new Set<string>();
  return points.filter(({ group, element }) => {
    const key = `${group} ${element}`;
    return seen.has(key) ? false : seen.add(key);
  });
}

/** The JSON pointer to the element a named point belongs to. */
function pointerTo({ plan }: Exercise, { group, element }: NamedPoint): string {
  const index = (list: readonly { readonly id: string }[]) => list.findIndex(({ id }) => id === element);
  switch (group) {
    case "corner":
      return `/plan/corners/${element}`;
    case "opening":
      return `/plan/walls/${index(plan.walls)}`;
    case "platform":
      return `/plan/platforms/${index(plan.platforms)}`;
    case "stair":
      return `/plan/stairs/${index(plan.stairs)}`;
    case "furniture":
      return `/plan/furniture/${index(plan.furniture)}`;
    case "column":
      return `/plan/columns/${index(plan.columns)}`;
    case "masking":
      return `/plan/masking/${index(plan.masking)}`;
  }
}
