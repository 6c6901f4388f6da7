import { prism } from "../prism";
import type { Solid } from "../solid";
import { sweep } from "../sweep";
import { fromTurned } from "../turned-frame";
import { onStage, type Piece, type Stretch } from "./piece";

/** Sides of a block, by the names of its faces. */
export const FRONT = "side.1";
export const BACK = "side.3";

/** Up from a level, or from the floor; to a level. */
export type Rise = readonly [from: number | "floor", to: number];

export type PartOptions = { readonly hide?: readonly string[]; readonly smooth?: boolean | readonly number[] };

/** A part with upright sides over an outline of (u, v) pairs, counter-clockwise seen from above. */
export function standing(
  piece: Piece,
  name: string,
  outline: readonly (readonly [u: number, v: number])[],
  [from, to]: Rise,
  options: PartOptions = {},
): Solid {
  return prism({
    id: `${piece.id}.${name}`,
    element: piece.id,
    kind: "furniture",
    outline: outline.map(([u, v]) => fromTurned(piece.frame, u, v)),
    bottom: from === "floor" ? piece.footing : piece.level + from,
    top: piece.level + to,
    ...options,
  });
}

/** A part square to the piece: `top` and `bottom`, `side.1` its front, then right, back and left. */
export function block(
  piece: Piece,
  name: string,
  [u0, u1]: Stretch,
  [v0, v1]: Stretch,
  rise: Rise,
  options: PartOptions = {},
): Solid {
  return standing(
    piece,
    name,
    [
      [u0, v0],
      [u1, v0],
      [u1, v1],
      [u0, v1],
    ],
    rise,
    options,
  );
}

type Profile = readonly (readonly [number, w: number])[];
type SweptOptions = { readonly hide?: readonly string[]; readonly smooth?: readonly number[] };

/** A profile of (u, w) pairs, counter-clockwise seen from the front, swept from the nearer v to the farther: `end.1` is its front. */
export function sweptBack(
  piece: Piece,
  name: string,
  profile: Profile,
  [v0, v1]: Stretch,
  options: SweptOptions = {},
): Solid {
  const ring = profile.map(([u, w]) => onStage(piece, [u, v0, w]));
  const [from, to] = [onStage(piece, [0, v0, 0]), onStage(piece, [0, v1, 0])];
  return swept(piece, name, ring, [to[0] - from[0], to[1] - from[1], 0], options);
}

/** A profile of (v, w) pairs, counter-clockwise seen from the piece's right, swept from there to its left: `end.1` is its right. */
export function sweptLeft(
  piece: Piece,
  name: string,
  profile: Profile,
  [u0, u1]: Stretch,
  options: SweptOptions = {},
): Solid {
  const ring = profile.map(([v, w]) => onStage(piece, [u1, v, w]));
  const [from, to] = [onStage(piece, [u1, 0, 0]), onStage(piece, [u0, 0, 0])];
  return swept(piece, name, ring, [to[0] - from[0], to[1] - from[1], 0], options);
}

function swept(
  piece: Piece,
  name: string,
  profile: ReturnType<typeof onStage>[],
  by: readonly [number, number, number],
  options: SweptOptions,
): Solid {
  return sweep({ id: `${piece.id}.${name}`, element: piece.id, kind: "furniture", profile, by, ...options });
}
