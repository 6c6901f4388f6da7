import type { SheetPlace } from "../../sheet/place-drawings";
import type { PencilCorner, PencilLine, PointReading } from "../drawing-reading";
import type { ExpectedDrawing, Way } from "./expected-drawing";
import { type MatchCosts, matchCosts, type Seen } from "./match-costs";
import { type Match, searchMatch } from "./search-match";

/** Kept of the search of each way at first, and of the few that fit best. */
const KEPT_FIRST = 16;
const KEPT = 100;
const BEST_WAYS = 5;
/** What a wrong idea must make up for to be taken instead of the truth. */
const HABIT_COSTS = 2;
/** Corners nearer than this are one reading, millimetres. */
const SAME_MM = 0.8;
/** Matches that cost so much more than the best are half as sure to be wrong as right, and how quickly that grows. */
const EVEN = 0.8;
const PER_COST = 1.1;
/** A point's own cost up to which its reading is not doubted for itself, and the cost over it that halves how sure it is. */
const GOOD_COST = 4;
const HALVES = 3;
/** A point that lies so far from where its neighbours' displacements lead is not doubted for it; so much farther, it is half as sure, millimetres. */
const ASTRAY_MM = 1;
const ASTRAY_HALVES_MM = 3;
/** How far around a point the others' displacements speak for its own, millimetres. */
const ALIKE_MM = 25;

/**
 * Which corner was meant for each asked point, by the lines that meet there and lead to the other points, and by where it may lie;
 * null for a point of which nothing was found.
 */
export function matchPoints(
  expected: ExpectedDrawing,
  lines: readonly PencilLine[],
  corners: readonly PencilCorner[],
  seen: Seen,
): readonly PointReading[] {
  const costs = matchCosts(expected, lines, corners, seen);
  const search = (way: Way, kept: number) =>
    searchMatch(expected, costs, corners.length, way, kept).map((match) => withPrice(match));
  const first = expected.ways.map((way) => search(way, KEPT_FIRST)).sort((a, b) => cheapest(a) - cheapest(b));
  const again = first.slice(0, BEST_WAYS).flatMap((found) => {
    const best = found[0];
    if (!best) return [];
    return [...search(best.way, KEPT), ...search(drawnAlike(best, corners), KEPT)];
  });
  const all = [...first.flat(), ...again].sort((a, b) => a.cost - b.cost);
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
    const lead0 = Math.min(...others.map(plainCost)) - plainCost(best);
    // The other way to read the drawing is held against this one for what it shows alone: a wrong idea is as likely as not.
    const lead = Math.min(lead0, leadOf(i, best, expected, costs, corners));
    const alone = 1 / (1 + Math.exp(-PER_COST * (lead - EVEN)));
    const own = ownCost(i, corner, best, expected, costs);
    const good = 2 ** (-Math.max(0, own - GOOD_COST) / HALVES);
    const astray = Math.max(0, apart(at, alike.places[i] as SheetPlace) - ASTRAY_MM) / ASTRAY_HALVES_MM;
    return { point, at, sure: (alone * good) / (1 + astray * astray), corner };
  });
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

/** How much dearer the next best corner is for one point, all others staying where they are. */
function leadOf(
  point: number,
  best: Match,
  expected: ExpectedDrawing,
  costs: MatchCosts,
  corners: readonly PencilCorner[],
): number {
  const here = best.corners[point] as number;
  const at = (corners[here] as PencilCorner).at;
  const cost = (corner: number) =>
    costs.point(point, corner, best.way) + linesCost(point, corner, best, expected, costs);
  const now = cost(here);
  let lead = costs.missing - now + linesCost(point, here, best, expected, costs) / 2 + costs.missing;
  corners.forEach((corner, k) => {
    if (k === here || apart(corner.at, at) <= SAME_MM || best.corners.includes(k)) return;
    lead = Math.min(lead, cost(k) - now);
  });
  return lead;
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
