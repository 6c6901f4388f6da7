import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { ellipse } from "./draw-on";
import { legs } from "./legs";
import { block, standing } from "./part";
import type { Piece } from "./piece";
import { thickness } from "./thickness";

const SEAT_M = 0.05;
const LEG_M = 0.038;
const RAIL_M = 0.035;
/** The legs' outer corners lie on a smaller ellipse, at its diagonals. */
const LEGS_IN = 0.66;

/** A stool: a round seat, an ellipse where its box is not square, on four legs, the front pair and the back pair each tied by a rail. */
export function stoolSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const leg = thickness(LEG_M, Math.min(width, depth), 0.12);
  const under = height - thickness(SEAT_M, height, 0.15);
  const [u, v] = [(width / 2) * LEGS_IN, (depth / 2) * LEGS_IN];
  const rail = thickness(RAIL_M, height, 0.06);
  const low = under * 0.3;
  const inset = leg * 0.25;
  const hide = ["upright"];
  return joinSolids(
    standing(piece, "seat", ellipse([0, 0], [width / 2, depth / 2]), [under, height], { smooth: true }),
    legs(piece, [-u, u], [-v, v], leg, under),
    block(piece, "rail.front", [-u + leg, u - leg], [-v + inset, -v + leg - inset], [low, low + rail], { hide }),
    block(piece, "rail.back", [-u + leg, u - leg], [v - leg + inset, v - inset], [low, low + rail], { hide }),
  );
}
