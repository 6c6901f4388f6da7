import type { Edge, EdgeKind } from "./edge";
import type { NamedPoints } from "./named-point";
import type { Plan, Wall } from "./plan";

/**
 * The straight edges of the set between named points, element by element. Only edges whose two ends are among `points`
 * are listed. A column's centre line stands for it.
 */
export function listEdges(plan: Plan, points: NamedPoints): readonly Edge[] {
  const edges = [
    ...plan.walls.flatMap((wall) => wallEdges(wall, points)),
    ...plan.platforms.flatMap((p) => boxEdges("platform", p.id, p.outline.length)),
    ...plan.stairs.flatMap((s) => stairEdges(s.id, s.steps)),
    ...plan.furniture.flatMap((f) => boxEdges("furniture", f.id, 4)),
    ...plan.columns.map((c) => edge("column", c.id, `${c.id}.centre.foot`, `${c.id}.centre.top`)),
    ...plan.masking.flatMap((m) => clothEdges(m.id, m.trim === null ? "foot" : "trim")),
  ];
  const seen = new Set<string>();
  return edges.filter(({ id, from, to }) => {
    if (seen.has(id) || !points.has(from) || !points.has(to)) return false;
    seen.add(id);
    return true;
  });
}

function edge(kind: EdgeKind, element: string, from: string, to: string): Edge {
  return { id: `${from}~${to}`, element, kind, from, to };
}

/** The name of a corner's top on one wall: `B.top`, or `B.top.W1` where the walls there end at different heights. */
export function topOfCorner(corner: string, wall: Pick<Wall, "id">, points: NamedPoints): string {
  return points.has(`${corner}.top`) ? `${corner}.top` : `${corner}.top.${wall.id}`;
}

function wallEdges(wall: Wall, points: NamedPoints): Edge[] {
  const [fromTop, toTop] = [topOfCorner(wall.from, wall, points), topOfCorner(wall.to, wall, points)];
  return [
    edge("foot", wall.id, `${wall.from}.foot`, `${wall.to}.foot`),
    edge("upright", wall.id, `${wall.from}.foot`, fromTop),
    edge("upright", wall.id, `${wall.to}.foot`, toTop),
    edge("top", wall.id, fromTop, toTop),
    ...wall.openings.flatMap((opening) => {
      const name = `${wall.id}.${opening.id}`;
      return [
        edge("opening", wall.id, `${name}.start.sill`, `${name}.start.head`),
        edge("opening", wall.id, `${name}.end.sill`, `${name}.end.head`),
        edge("opening", wall.id, `${name}.start.head`, `${name}.end.head`),
        ...(opening.sill !== 0 ? [edge("opening", wall.id, `${name}.start.sill`, `${name}.end.sill`)] : []),
      ];
    }),
  ];
}

function boxEdges(kind: EdgeKind, id: string, corners: number): Edge[] {
  return Array.from({ length: corners }, (_, i) => {
    const [here, next] = [`${id}.${i + 1}`, `${id}.${((i + 1) % corners) + 1}`];
    return [
      edge(kind, id, `${here}.foot`, `${next}.foot`),
      edge(kind, id, `${here}.foot`, `${here}.top`),
      edge(kind, id, `${here}.top`, `${next}.top`),
    ];
  }).flat();
}

function stairEdges(id: string, steps: number): Edge[] {
  return Array.from({ length: steps }, (_, i) => edge("stair", id, `${id}.${i + 1}.start`, `${id}.${i + 1}.end`));
}

function clothEdges(id: string, low: "foot" | "trim"): Edge[] {
  return [
    edge("masking", id, `${id}.1.${low}`, `${id}.2.${low}`),
    edge("masking", id, `${id}.1.${low}`, `${id}.1.top`),
    edge("masking", id, `${id}.2.${low}`, `${id}.2.top`),
    edge("masking", id, `${id}.1.top`, `${id}.2.top`),
  ];
}
