import type { Edge } from "../../plan/edge";
import type { NamedPoint, NamedPoints } from "../../plan/named-point";
import { sayPoint } from "../../plan/say-point";

/** A line between two named points in words: "the foot of W2", "the upright at B", "the top of desk from corner 1 to 2"; one that is no edge by both its points. */
export function nameLine(edges: readonly Edge[], points: NamedPoints, from: string, to: string): string {
  const edge = edgeBetween(edges, from, to);
  const [a, b] = [points.get(from), points.get(to)];
  if (!a || !b) throw new Error(`A line runs from ${from} to ${to}, and one of them names no point of the plan.`);
  switch (edge?.kind) {
    case "foot":
    case "top":
      return `the ${edge.kind} of ${edge.element}`;
    case "upright":
      return `the upright at ${a.element}`;
    case "opening":
      return nameOpeningLine(a, b);
    case "platform":
    case "furniture":
      return nameBoxLine(a, b);
    case "stair":
      return `nosing ${a.name.split(".")[1]} of ${edge.element}`;
    case "column":
      return `the upright of ${edge.element}`;
    default:
      return `the line from ${sayPoint(a)} to ${sayPoint(b)}`;
  }
}

function nameOpeningLine(a: NamedPoint, b: NamedPoint): string {
  const [wall = "", opening = "", side = ""] = a.name.split(".");
  const whole = `${wall}'s ${opening}`;
  return a.role === b.role ? `the ${a.role} of ${whole}` : `the jamb of ${whole} at its ${side}`;
}

function nameBoxLine(a: NamedPoint, b: NamedPoint): string {
  const [here, there] = [a.name.split(".")[1], b.name.split(".")[1]];
  return here === there
    ? `the upright at ${a.element}'s corner ${here}`
    : `the ${a.role} of ${a.element} from corner ${here} to ${there}`;
}

/** The edge between two named points, whichever way it runs. */
export function edgeBetween(edges: readonly Edge[], from: string, to: string): Edge | undefined {
  return edges.find((edge) => (edge.from === from && edge.to === to) || (edge.from === to && edge.to === from));
}

/** Words in a row: "W1", "W1 and W3", "W1, W3 and desk". */
export function inARow(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
