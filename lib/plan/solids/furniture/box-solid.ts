import type { Solid } from "../solid";
import { block } from "./part";
import type { Piece } from "./piece";

/** A plain box; also what stands for a piece that the raked floor all but swallows. */
export function boxSolid(piece: Piece): Solid {
  const [u, v] = [piece.width / 2, piece.depth / 2];
  return block(piece, "box", [-u, u], [-v, v], ["floor", piece.height]);
}
