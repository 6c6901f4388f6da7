import type { ExpectedDrawing, Way } from "./expected-drawing";
import type { MatchCosts } from "./match-costs";
import type { Match } from "./search-match";
import type { Unexplained } from "./unexplained";

/** Corners tried for one point in another's stead. */
const TRIED = 14;
/** Rounds over all points; two nearly always are enough. */
const ROUNDS = 3;

/** What taking corners for points costs in all: the points, their lines, and what is left over of the drawing. */
export type WholeCost = (taken: readonly (number | null)[], way: Way) => number;

export function wholeCost(expected: ExpectedDrawing, costs: MatchCosts, unexplained: Unexplained): WholeCost {
  return (taken, way) => {
    let sum = unexplained(taken);
    for (const [point, corner] of taken.entries())
      sum += corner === null ? costs.missing : costs.point(point, corner, way);
    expected.lines.forEach(({ from, to }, line) => {
      const [a, b] = [from, to].map((point) => (point < expected.asked.length ? (taken[point] ?? null) : null)) as [
        number | null,
        number | null,
      ];
      const missed = (point: number, corner: number | null) => point < expected.asked.length && corner === null;
      if (missed(from, a) || missed(to, b)) return;
      sum += costs.line(line, a, b, way);
    });
    return sum;
  };
}

/** The corners that lie best for each point by themselves, the likeliest first. */
export function likelyCorners(
  expected: ExpectedDrawing,
  costs: MatchCosts,
  corners: number,
  way: Way,
): readonly (readonly number[])[] {
  return expected.asked.map((_, point) =>
    Array.from({ length: corners }, (_, corner) => ({ corner, cost: costs.point(point, corner, way) }))
      .sort((a, b) => a.cost - b.cost)
      .slice(0, TRIED)
      .map(({ corner }) => corner),
  );
}

/** Moves one point after another to the corner, or to none, where the whole costs least, until none moves. */
export function settleMatch(match: Match, likely: readonly (readonly number[])[], whole: WholeCost): Match {
  const taken = [...match.corners];
  let cost = whole(taken, match.way);
  for (let round = 0; round < ROUNDS; round++) {
    const before = cost;
    for (const [point, tried] of likely.entries()) {
      let kept = taken[point] ?? null;
      for (const corner of [null, ...tried]) {
        if (corner === kept || (corner !== null && taken.includes(corner))) continue;
        taken[point] = corner;
        const now = whole(taken, match.way);
        if (now < cost) [kept, cost] = [corner, now];
        taken[point] = kept;
      }
    }
    if (cost === before) break;
  }
  return { corners: taken, cost, way: match.way };
}
