import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { block } from "./part";
import type { Piece, Stretch } from "./piece";

/** Four square legs from the floor up to `top`, in the corners of a rectangle, their heads against what they carry. */
export function legs(piece: Piece, [u0, u1]: Stretch, [v0, v1]: Stretch, thick: number, top: number): Solid {
  const across: readonly Stretch[] = [
    [u0, u0 + thick],
    [u1 - thick, u1],
  ];
  const away: readonly Stretch[] = [
    [v0, v0 + thick],
    [v1 - thick, v1],
  ];
  return joinSolids(
    ...away.flatMap((v, far) =>
      across.map((u, right) => block(piece, `leg.${1 + right + 2 * far}`, u, v, ["floor", top], { hide: ["top"] })),
    ),
  );
}
