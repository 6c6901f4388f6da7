import { cross, distance, subtract } from "../../../geometry/vector";
import type { PlanPoint } from "../../../stage/frame";
import { alongPiece, areParallel, type WallPiece } from "./wall-piece";

/** Walls one after another, each beginning where the last ended. */
export type Run = { readonly walls: readonly WallPiece[]; readonly closed: boolean };

/** A closed run no wider than this is a post or a chimney, seen from outside; a wider one is a room, seen from within, metres. */
const POST_M = 1.5;
/** Walls whose thickness differs by less go on as one, metres. */
const SAME_THICKNESS_M = 0.004;

/**
 * Walls as runs from stage right round to stage left, onstage to the right of each: by the faces that were drawn, else the side
 * that the eye sees of most of it. Walls that go straight on from each other become one.
 */
export function walkRuns(drawn: readonly WallPiece[], eye: PlanPoint): readonly Run[] {
  const pieces = oncePerPair(drawn);
  const ends = new Map<string, number[]>();
  for (const [i, { a, b }] of pieces.entries())
    for (const end of [a, b]) ends.set(keyOf(end), [...(ends.get(keyOf(end)) ?? []), i]);
  const used = new Set<number>();
  const isEnd = (at: PlanPoint) => ends.get(keyOf(at))?.length !== 2;
  const runs: Run[] = [];
  // Runs with ends first; what is left over goes round in rings.
  for (const onlyFromEnds of [true, false])
    for (const [i, piece] of pieces.entries()) {
      if (used.has(i) || (onlyFromEnds && !isEnd(piece.a) && !isEnd(piece.b))) continue;
      runs.push(walk(i, isEnd(piece.a) || !isEnd(piece.b)));
    }
  return runs
    .map((run) => straighten(turnToStage(run, eye)))
    .toSorted((one, other) => startOf(one)[0] - startOf(other)[0] || startOf(one)[1] - startOf(other)[1]);

  function walk(first: number, forward: boolean): Run {
    const start = pieces[first] as WallPiece;
    const walls = [forward ? start : turned(start)];
    used.add(first);
    for (;;) {
      const at = (walls.at(-1) as WallPiece).b;
      const next = isEnd(at) ? undefined : ends.get(keyOf(at))?.find((i) => !used.has(i));
      if (next === undefined) break;
      used.add(next);
      const piece = pieces[next] as WallPiece;
      walls.push(keyOf(piece.a) === keyOf(at) ? piece : turned(piece));
    }
    return {
      walls,
      closed: walls.length > 2 && keyOf((walls[0] as WallPiece).a) === keyOf((walls.at(-1) as WallPiece).b),
    };
  }
}

/** Two walls never join the same two corners, as the chords of two bends may: the last stays. */
function oncePerPair(pieces: readonly WallPiece[]): readonly WallPiece[] {
  const pairs = new Map(pieces.map((piece) => [[keyOf(piece.a), keyOf(piece.b)].toSorted().join(), piece]));
  return [...pairs.values()];
}

function turnToStage(run: Run, eye: PlanPoint): Run {
  return onstageRight(run, eye) >= 0 ? run : { ...run, walls: run.walls.toReversed().map(turned) };
}

/** Above 0 when onstage is to the right of the run, by as many metres of wall as say so. */
function onstageRight({ walls, closed }: Run, eye: PlanPoint): number {
  const drawn = sum(walls, (wall) =>
    wall.offstage ? Math.sign(cross(alongPiece(wall).along, wall.offstage)) * distance(wall.a, wall.b) : 0,
  );
  if (drawn !== 0) return drawn;
  if (closed) {
    const clockwise = -sum(walls, ({ a, b }) => cross(a, b));
    const spread = ([0, 1] as const).map((axis) => walls.map(({ a }) => a[axis]));
    const width = Math.hypot(...spread.map((values) => Math.max(...values) - Math.min(...values)));
    return width > POST_M ? clockwise : -clockwise;
  }
  return sum(walls, ({ a, b }) => -Math.sign(cross(subtract(b, a), subtract(eye, a))) * distance(a, b));
}

/** The same run with walls that go straight on joined; a ring may begin at a corner that is none. */
function straighten({ walls, closed }: Run): Run {
  const joined: WallPiece[] = [];
  for (const wall of walls) {
    const last = joined.at(-1);
    if (last && goesOn(last, wall)) joined[joined.length - 1] = { ...last, b: wall.b };
    else joined.push(wall);
  }
  const [first, last] = [joined[0], joined.at(-1)];
  if (closed && first && last && joined.length > 3 && goesOn(last, first))
    return { walls: [{ ...last, b: first.b }, ...joined.slice(1, -1)], closed };
  return { walls: joined, closed };
}

function goesOn(one: WallPiece, other: WallPiece): boolean {
  return (
    Math.abs(one.thickness - other.thickness) < SAME_THICKNESS_M &&
    areParallel(alongPiece(one).along, alongPiece(other).along) &&
    distance(one.a, other.b) > distance(one.a, one.b)
  );
}

function turned(wall: WallPiece): WallPiece {
  return { ...wall, a: wall.b, b: wall.a };
}

function startOf({ walls }: Run): PlanPoint {
  return (walls[0] as WallPiece).a;
}

function keyOf([x, y]: PlanPoint): string {
  return `${x} ${y}`;
}

function sum(walls: readonly WallPiece[], of: (wall: WallPiece) => number): number {
  return walls.reduce((total, wall) => total + of(wall), 0);
}
