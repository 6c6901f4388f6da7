import type { StagePoint } from "../../../stage/frame";
import type { Solid, SolidLine } from "../solid";
import { onStage, type Piece, type PiecePoint, type Stretch } from "./piece";

/** A row of points on a face; `closed` joins the last to the first. */
export type Stroke = { readonly name: string; readonly points: readonly PiecePoint[]; readonly closed?: boolean };

/** The solid with thin lines drawn on one of its faces, named without the piece's id (`body.side.1`). The points lie on that face. */
export function drawOn(piece: Piece, solid: Solid, face: string, strokes: readonly Stroke[]): Solid {
  const place = solid.faces.findIndex(({ id }) => id === `${piece.id}.${face}`);
  if (place < 0) return solid;
  const details = strokes.flatMap(({ name, points, closed = false }) => {
    const at = points.map((point) => onStage(piece, point));
    const ends = closed ? at : at.slice(0, -1);
    return ends.map(
      (from, i): SolidLine => ({
        id: `${piece.id}.${name}.${i + 1}`,
        element: piece.id,
        from,
        to: at[(i + 1) % at.length] as StagePoint,
        faces: [place],
        kind: "detail",
      }),
    );
  });
  return { faces: solid.faces, lines: [...solid.lines, ...details] };
}

/** A rectangle on an upright plane across the piece, at v. */
export function panel(name: string, v: number, [u0, u1]: Stretch, [w0, w1]: Stretch): Stroke {
  return {
    name,
    points: [
      [u0, v, w0],
      [u1, v, w0],
      [u1, v, w1],
      [u0, v, w1],
    ],
    closed: true,
  };
}

export function stroke(name: string, ...points: readonly PiecePoint[]): Stroke {
  return { name, points };
}

/** Corners of an ellipse's polygon. */
const RING_CORNERS = 16;

/** An ellipse about (u, v) as a polygon, counter-clockwise seen from above; corners lie on both its axes. */
export function ellipse(
  [u, v]: readonly [number, number],
  [across, away]: readonly [number, number],
): readonly (readonly [number, number])[] {
  return Array.from({ length: RING_CORNERS }, (_, i) => {
    const angle = (2 * Math.PI * i) / RING_CORNERS;
    return [u + across * Math.cos(angle), v + away * Math.sin(angle)];
  });
}
