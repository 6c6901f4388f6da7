import type { ExpectedDrawing, Way } from "./expected-drawing";
import type { MatchCosts } from "./match-costs";

/** Which corner each asked point was taken to be at, null for none, and what that costs. */
export type Match = { readonly corners: readonly (number | null)[]; readonly cost: number; readonly way: Way };

type State = { readonly at: readonly (number | null)[]; readonly cost: number };

/** Corners tried for one point. */
const TRIED = 12;

/** The best matches of one way the drawing may lie, the best first: point by point, keeping `kept` of the cheapest so far (a beam search). */
export function searchMatch(
  expected: ExpectedDrawing,
  costs: MatchCosts,
  corners: number,
  way: Way,
  kept: number,
): readonly Match[] {
  const order = orderOf(expected);
  let states: readonly State[] = [{ at: [], cost: 0 }];
  const placeIn = new Map(order.map((point, step) => [point, step]));
  order.forEach((point, step) => {
    const tried = Array.from({ length: corners }, (_, corner) => ({ corner, cost: costs.point(point, corner, way) }))
      .sort((a, b) => a.cost - b.cost)
      .slice(0, TRIED);
    const lines = expected.lines.flatMap(({ from, to }, line) => {
      if (from !== point && to !== point) return [];
      const other = from === point ? to : from;
      const before = placeIn.get(other);
      const given = other >= expected.asked.length;
      return given || (before !== undefined && before < step)
        ? [{ line, before: given ? null : before, first: from === point }]
        : [];
    });
    const next: State[] = [];
    for (const { at, cost } of states) {
      next.push({ at: [...at, null], cost: cost + costs.missing });
      for (const { corner, cost: own } of tried) {
        // One corner is one point, but of points that fall together.
        if (at.includes(corner)) continue;
        let sum = cost + own;
        for (const { line, before, first } of lines) {
          const other = before === null || before === undefined ? null : at[before];
          // The other end was not found: what is drawn of the line says nothing.
          if (before !== null && other === null) continue;
          sum += first
            ? costs.line(line, corner, other as number | null, way)
            : costs.line(line, other as number | null, corner, way);
        }
        next.push({ at: [...at, corner], cost: sum });
      }
    }
    states = next.sort((a, b) => a.cost - b.cost).slice(0, kept);
  });
  return states.map(({ at, cost }) => ({
    corners: expected.asked.map((_, point) => at[placeIn.get(point) as number] ?? null),
    cost,
    way,
  }));
}

/** Points in the order in which the most lines lead to what is there already: given points, then the point with the most lines, and on from it. */
function orderOf({ asked, lines }: ExpectedDrawing): readonly number[] {
  const order: number[] = [];
  const left = new Set(asked.keys());
  while (left.size > 0) {
    let [best, most] = [-1, -1];
    for (const point of left) {
      let [known, all] = [0, 0];
      for (const { from, to } of lines) {
        if (from !== point && to !== point) continue;
        const other = from === point ? to : from;
        all++;
        if (other >= asked.length || order.includes(other)) known++;
      }
      const worth = known * 10 + all;
      if (worth > most) [best, most] = [point, worth];
    }
    order.push(best);
    left.delete(best);
  }
  return order;
}
