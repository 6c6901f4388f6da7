import type { SheetPlace } from "../../sheet/place-drawings";
import type { PencilCorner, PencilLine, PointReading } from "../drawing-reading";
import type { ExpectedDrawing, Way } from "./expected-drawing";
import { type MatchCosts, matchCosts, type Seen } from "./match-costs";
import { type Match, searchMatch } from "./search-match";
import { likelyCorners, settleMatch, wholeCost } from "./settle-match";
import { unexplainedCost } from "./unexplained";

/** Kept of the search of each way at first, and of the few that fit best. */
const KEPT_FIRST = 16;
const KEPT = 100;
const BEST_WAYS = 5;
/** What a wrong idea must make up for to be taken instead of the truth. */
const HABIT_COSTS = 2;
/** Corners nearer than this are one reading, millimetres. */
const SAME_MM = 0.8;
/**
 * The logarithm of the odds that a reading is right, by how much dearer the next best match without it is, by the point's own
 * cost, and by how far it lies from where its neighbours' displacements lead (millimetres, as log(1 + x)). A logistic regression
 * over 1,740 readings of rendered photographs, checked on exercises left out of it. A point that no line meets has no drawn
 * line to lower its cost; where one line alone leads to it, its end is all that tells.
 */
const ODDS = { all: 2.87, perLead: 0.34, perOwn: -0.89, perAstray: -2.5, noLine: 3.96, oneLine: -0.34 };
/** Beyond these a lead or a cost says no more. */
const LEAD = [-2, 6] as const;
const OWN = [-4, 8] as const;
const ASTRAY_MOST_MM = 15;
/** Readings that are likelier wrong than right are not given at all: the logarithm of even odds. */
const LEAST_ODDS = 0;
/** Readings must be right seven times in eight, about, not to be doubtful: so much is taken off their odds. */
const DOUBT = 1.6;
/** How far around a point the others' displacements speak for its own, millimetres. */
const ALIKE_MM = 25;

/**
 * Which corner was meant for each asked point, by the lines that meet there and lead to the other points, and by where it may lie;
 * null for a point of which nothing was found, or nothing that is likelier it than not.
 */
export function matchPoints(
  expected: ExpectedDrawing,
  lines: readonly PencilLine[],
  corners: readonly PencilCorner[],
  seen: Seen,
): readonly PointReading[] {
  const costs = matchCosts(expected, lines, corners, seen);
  const unexplained = unexplainedCost(expected, lines, corners);
  const whole = wholeCost(expected, costs, unexplained);
  const search = (way: Way, kept: number) =>
    searchMatch(expected, costs, corners.length, way, kept).map((match) => withPrice(match));
  const first = expected.ways.map((way) => search(way, KEPT_FIRST)).sort((a, b) => cheapest(a) - cheapest(b));
  const again = first.slice(0, BEST_WAYS).flatMap((found) => {
    const best = found[0];
    if (!best) return [];
    return [...search(best.way, KEPT), ...search(drawnAlike(best, corners), KEPT)];
  });
  const found = [...first.flat(), ...again]
    .map((match) => ({ ...match, cost: match.cost + unexplained(match.corners) }))
    .sort((a, b) => a.cost - b.cost);
  const settled = bestOfEachWay(found).map((match) =>
    withPrice(settleMatch(match, likelyCorners(expected, costs, corners.length, match.way), whole)),
  );
  const all = [...settled, ...found].sort((a, b) => a.cost - b.cost);
  const best = all[0];
  if (!best) return [];
  const alike = drawnAlike(best, corners);
  return expected.asked.map((point, i) => {
    const corner = best.corners[i] ?? null;
    const at = corner === null ? undefined : corners[corner]?.at;
    if (corner === null || !at) return { point, at: null, sure: 0, corner: null };
    const others = all.filter(({ corners: others }) => {
      const elsewhere = others[i] ?? null;
      return elsewhere === null || apart((corners[elsewhere] as PencilCorner).at, at) > SAME_MM;
    });
    // The other way to read the drawing is held against this one for what it shows alone: a wrong idea is as likely as not.
    const odds = oddsOf({
      lead: Math.min(...others.map(plainCost)) - plainCost(best),
      own: ownCost(i, corner, best, expected, costs),
      astray: apart(at, alike.places[i] as SheetPlace),
      lines: expected.lines.filter(({ from, to }) => from === i || to === i).length,
    });
    if (odds < LEAST_ODDS) return { point, at: null, sure: 0, corner: null };
    return { point, at, sure: 1 / (1 + Math.exp(DOUBT - odds)), corner };
  });
}

function oddsOf(seen: {
  readonly lead: number;
  readonly own: number;
  readonly astray: number;
  readonly lines: number;
}): number {
  const within = (value: number, [least, most]: readonly [number, number]) => Math.max(least, Math.min(most, value));
  return (
    ODDS.all +
    ODDS.perLead * within(seen.lead, LEAD) +
    ODDS.perOwn * within(seen.own, OWN) +
    ODDS.perAstray * Math.log1p(Math.min(ASTRAY_MOST_MM, seen.astray)) +
    (seen.lines === 0 ? ODDS.noLine : seen.lines === 1 ? ODDS.oneLine : 0)
  );
}

function withPrice(match: Match): Match {
  return match.way.true ? match : { ...match, cost: match.cost + HABIT_COSTS };
}

function plainCost({ cost, way }: Match): number {
  return way.true ? cost : cost - HABIT_COSTS;
}

function cheapest(found: readonly Match[]): number {
  return found[0]?.cost ?? Infinity;
}

/** What the match costs at one point: its place, and half of each of its lines. */
function ownCost(point: number, corner: number, match: Match, expected: ExpectedDrawing, costs: MatchCosts): number {
  return costs.point(point, corner, match.way) + linesCost(point, corner, match, expected, costs) / 2;
}

function linesCost(point: number, corner: number, match: Match, expected: ExpectedDrawing, costs: MatchCosts): number {
  let sum = 0;
  expected.lines.forEach(({ from, to }, line) => {
    if (from !== point && to !== point) return;
    const other = from === point ? to : from;
    const at = other >= expected.asked.length ? null : match.corners[other];
    if (at === undefined || (at === null && other < expected.asked.length)) return;
    sum += from === point ? costs.line(line, corner, at, match.way) : costs.line(line, at, corner, match.way);
  });
  return sum;
}

/** The cheapest matches of the few ways that fit best. */
function bestOfEachWay(found: readonly Match[]): readonly Match[] {
  const ways = new Map<Way, Match>();
  for (const match of found) if (ways.size < BEST_WAYS && !ways.has(match.way)) ways.set(match.way, match);
  return [...ways.values()];
}

/** The way a match itself shows: each place moved as the points round it were. */
function drawnAlike({ corners: taken, way }: Match, corners: readonly PencilCorner[]): Way {
  const moves = taken.flatMap((corner, i) => {
    const [at, meant] = [corner === null ? undefined : corners[corner]?.at, way.places[i]];
    return at && meant ? [{ i, meant, move: [at[0] - meant[0], at[1] - meant[1]] as const }] : [];
  });
  const places = way.places.map((place, i): SheetPlace => {
    // Two of no move at all hold back what a single wild neighbour would do.
    let [weight, x, y] = [0.5, 0, 0];
    for (const { i: other, meant, move } of moves) {
      if (other === i) continue;
      const near = Math.exp(-((apart(meant, place) / ALIKE_MM) ** 2) / 2);
      [weight, x, y] = [weight + near, x + near * move[0], y + near * move[1]];
    }
    return [place[0] + x / weight, place[1] + y / weight];
  });
  return { places, true: false };
}

function apart(a: SheetPlace, b: SheetPlace): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
