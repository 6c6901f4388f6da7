import { doorHinges } from "../../plan/door-hinges";
import type { Column, Furniture, Masking, Opening, Platform, Stair, Wall } from "../../plan/plan";
import { type WallLine, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import { directionOf } from "../direction-of";

/** A movement of the plan on itself: places, and the turns of furniture. `mirrors` where left and right change hands. */
export type Placing = {
  readonly place: (at: PlanPoint) => PlanPoint;
  readonly turn: (angle: number) => number;
  readonly mirrors: boolean;
};

export function shiftBy([dx, dy]: PlanPoint): Placing {
  return { place: ([x, y]) => [x + dx, y + dy], turn: (angle) => angle, mirrors: false };
}

/** Turned about a place by an angle, counter-clockwise seen from above. */
export function turnAbout([cx, cy]: PlanPoint, by: number): Placing {
  const [cos, sin] = directionOf(by);
  return {
    place: ([x, y]) => [cx + (x - cx) * cos - (y - cy) * sin, cy + (x - cx) * sin + (y - cy) * cos],
    turn: (angle) => withinTurn(angle + by),
    mirrors: false,
  };
}

/** Mirrored across the line x = `axis`, which runs up and down stage. */
export function mirrorAcross(axis: number): Placing {
  return { place: ([x, y]) => [2 * axis - x, y], turn: (angle) => withinTurn(0 - angle), mirrors: true };
}

/** The same angle, above minus half a turn and up to half a turn. */
function withinTurn(angle: number): number {
  const turns = Math.ceil((angle - Math.PI) / (2 * Math.PI));
  return turns === 0 ? angle : angle - turns * 2 * Math.PI;
}

export function placePlatform(item: Platform, { place }: Placing): Platform {
  return { ...item, outline: item.outline.map(place) };
}

/** A mirrored flight has its ends the other way round, so that it still climbs to the left of first -> second. */
export function placeStair(item: Stair, { place, mirrors }: Placing): Stair {
  const [first, second] = [place(item.nosing[0]), place(item.nosing[1])];
  return { ...item, nosing: mirrors ? [second, first] : [first, second] };
}

export function placeFurniture(item: Furniture, { place, turn }: Placing): Furniture {
  return { ...item, at: place(item.at), turn: turn(item.turn) };
}

export function placeColumn(item: Column, { place }: Placing): Column {
  return { ...item, at: place(item.at) };
}

export function placeMasking(item: Masking, { place }: Placing): Masking {
  return { ...item, line: [place(item.line[0]), place(item.line[1])] };
}

/**
 * A wall that was mirrored, its corners being so already: it runs the other way, so that onstage stays on the hand it was;
 * its openings are reckoned from its other end, and its doors hang on the mirror image of their jamb. `before` is its line
 * before.
 */
export function mirrorWall(wall: Wall, before: WallLine, place: Placing["place"]): Wall {
  const corners = new Map([
    [wall.to, place(before.to)],
    [wall.from, place(before.from)],
  ]);
  const mirrored: Wall = { ...wall, from: wall.to, to: wall.from };
  const after = wallLine({ corners }, mirrored);
  return {
    ...mirrored,
    openings: wall.openings.map((opening) => mirrorOpening(opening, before, after ?? before)),
  };
}

/** An opening as it stands in the mirror image of its wall, which runs the other way. */
export function mirrorOpening(opening: Opening, before: WallLine, after: WallLine): Opening {
  const mirrored = { ...opening, at: before.length - opening.at - opening.width };
  if (opening.kind !== "door" || opening.leaves === 2)
    return { ...mirrored, hinge: opening.hinge && otherEnd(opening.hinge) };
  const [hung = "start"] = doorHinges(before, opening);
  const hinge = otherEnd(hung);
  // A door that hangs where it would hang of itself goes on doing so.
  const ofItself = opening.hinge === null && doorHinges(after, { ...mirrored, hinge: null })[0] === hinge;
  return { ...mirrored, hinge: ofItself ? null : hinge };
}

function otherEnd(end: "start" | "end"): "start" | "end" {
  return end === "start" ? "end" : "start";
}
