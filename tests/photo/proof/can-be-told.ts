import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { Mark } from "@/lib/exercise/marks";
import { listEdges } from "@/lib/plan/list-edges";

type Place = readonly [number, number];
type Node = {
  readonly drawn: Place;
  readonly truly: Place;
  /** Nodes that a line joins it to, by their numbers, and given points, by their names. */
  readonly joined: ReadonlySet<number>;
  readonly given: string;
};

/** A drawing whose points lie so near to the true ones, root of the mean square, is a right one to look at: a share of the opening's width. */
const LOOKS_RIGHT = 0.015;

/**
 * Whether a wrong drawing without letters is one to look at: there is no other way of naming its points that keeps all its
 * lines and makes it a right one. Where two doors have changed sides, nobody can know who sees the drawing alone.
 */
export function canBeTold(exercise: Exercise, marks: readonly Mark[]): boolean {
  const nodes = nodesOf(exercise, marks);
  const limit = nodes.length * (LOOKS_RIGHT * exercise.stage.opening.width) ** 2;
  const own = nodes.reduce((sum, node) => sum + squareTo(node, node), 0);
  return own <= limit || !otherNaming(nodes, limit);
}

function nodesOf(exercise: Exercise, marks: readonly Mark[]): readonly Node[] {
  const points = exercisePoints(exercise);
  const reading = exercise.task.kind === "picture-to-plan";
  const edges = reading ? [] : listEdges(exercise.plan, points);
  const numbers = new Map(marks.map(({ point }, i) => [point, i]));
  return marks.map(({ point, at }) => {
    const named = points.get(point);
    const truly = reading ? named?.at : named?.picture;
    if (!truly) throw new Error(`${point} is not seen.`);
    const others = edges.flatMap(({ from, to }) => (from === point ? [to] : to === point ? [from] : []));
    return {
      drawn: [at[0], at[1]],
      truly: [truly[0], truly[1]],
      joined: new Set(others.flatMap((name) => numbers.get(name) ?? [])),
      given: others
        .filter((name) => exercise.task.given.includes(name))
        .sort()
        .join(" "),
    };
  });
}

function squareTo({ drawn }: Node, { truly }: Node): number {
  return (drawn[0] - truly[0]) ** 2 + (drawn[1] - truly[1]) ** 2;
}

/** Searches the namings that keep every line for one whose squared distances sum to less: point after point, those with most lines first. */
function otherNaming(nodes: readonly Node[], limit: number): boolean {
  const order = nodes.map((_, i) => i).sort((a, b) => (nodes[b] as Node).joined.size - (nodes[a] as Node).joined.size);
  const least = order.map((i) =>
    Math.min(
      ...nodes.filter((other) => isLike(nodes[i] as Node, other)).map((other) => squareTo(nodes[i] as Node, other)),
    ),
  );
  // What the points still to be named cost at least.
  const rest = least.map((_, k) => least.slice(k + 1).reduce((sum, each) => sum + each, 0));
  const names = new Map<number, number>();
  const taken = new Set<number>();
  const search = (k: number, sum: number): boolean => {
    if (k === order.length) return true;
    const i = order[k] as number;
    const node = nodes[i] as Node;
    for (const [j, other] of nodes.entries()) {
      const next = sum + squareTo(node, other);
      if (taken.has(j) || !isLike(node, other) || next + (rest[k] as number) >= limit) continue;
      if (![...names].every(([a, b]) => node.joined.has(a) === other.joined.has(b))) continue;
      names.set(i, j);
      taken.add(j);
      if (search(k + 1, next)) return true;
      names.delete(i);
      taken.delete(j);
    }
    return false;
  };
  return search(0, 0);
}

function isLike(a: Node, b: Node): boolean {
  return a.joined.size === b.joined.size && a.given === b.given;
}
