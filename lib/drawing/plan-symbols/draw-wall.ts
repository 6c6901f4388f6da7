import { mitreWall } from "../../plan/mitre-wall";
import type { Plan, Wall } from "../../plan/plan";
import { type WallLine, wallLine } from "../../plan/wall-line";
import type { DisplayItem, DrawingPoint } from "../display-list";
import { inFrame, type LocalFrame, movedFrame } from "../local-frame";
import { makeStroke } from "../make-stroke";
import { drawOpening } from "./draw-opening";
import { type Piece, solidPieces } from "./solid-pieces";

/**
 * A wall in plan: its drawn (onstage) face extra thick, its thickness offstage of it, cut open where openings go
 * through, and the openings' symbols. Nothing when a corner is missing or both are one point.
 */
export function drawWall(plan: Plan, wall: Wall): readonly DisplayItem[] {
  const line = wallLine(plan, wall);
  if (!line) return [];
  const id = `plan.wall.${wall.id}`;
  const frame: LocalFrame = { origin: line.from, along: line.along, across: line.offstage };
  const pieces = solidPieces(wall, line.length);
  return [
    ...(wall.thickness > 0
      ? pieces.flatMap((piece, i) => drawThickness(`${id}.${i + 1}`, plan, wall, line, piece))
      : []),
    ...pieces.map(([start, end], i) =>
      makeStroke(`${id}.${i + 1}.face`, [inFrame(frame, start, 0), inFrame(frame, end, 0)], {
        weight: "extra-thick",
        hand: true,
      }),
    ),
    ...wall.openings.flatMap((opening) =>
      drawOpening(`${id}.${opening.id}`, movedFrame(frame, opening.at, 0), opening, wall),
    ),
  ];
}

/** The cut through a piece of wall, toned, with its back and its ends; a mitred end has no line of its own. */
function drawThickness(id: string, plan: Plan, wall: Wall, line: WallLine, [start, end]: Piece): DisplayItem[] {
  const frame: LocalFrame = { origin: line.from, along: line.along, across: line.offstage };
  const first = start === 0 ? mitreWall(plan, wall, line, "from") : cutEnd(frame, start, wall.thickness);
  const last = end === line.length ? mitreWall(plan, wall, line, "to") : cutEnd(frame, end, wall.thickness);
  const face = [inFrame(frame, start, 0), inFrame(frame, end, 0)] as const;
  return [
    makeStroke(`${id}.cut`, [face[0], face[1], last.at, first.at], { closed: true, fill: "wall", fillOnly: true }),
    makeStroke(`${id}.back`, [first.at, last.at], { hand: true }),
    ...(first.mitred ? [] : [makeStroke(`${id}.start`, [face[0], first.at], { hand: true })]),
    ...(last.mitred ? [] : [makeStroke(`${id}.end`, [face[1], last.at], { hand: true })]),
  ];
}

function cutEnd(frame: LocalFrame, u: number, v: number): { readonly at: DrawingPoint; readonly mitred: boolean } {
  return { at: inFrame(frame, u, v), mitred: false };
}
