import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { legs } from "./legs";
import { block } from "./part";
import type { Piece } from "./piece";
import { thickness } from "./thickness";

const TOP_M = 0.04;
const LEG_M = 0.065;
const RAIL_M = 0.1;
/** A rail stands back from the legs' faces by this share of a leg. */
const SET_BACK = 0.3;

/** A table: a top on four legs in its corners, and rails between them under the top. */
export function tableSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const leg = thickness(LEG_M, Math.min(width, depth), 0.2);
  const under = height - thickness(TOP_M, height, 0.15);
  const low = under - thickness(RAIL_M, height, 0.16);
  const back = leg * SET_BACK;
  const thin = leg * (1 - 2 * SET_BACK);
  const hide = ["top", "upright"];
  return joinSolids(
    block(piece, "top", [-u, u], [-v, v], [under, height]),
    legs(piece, [-u, u], [-v, v], leg, under),
    block(piece, "rail.front", [-u + leg, u - leg], [-v + back, -v + back + thin], [low, under], { hide }),
    block(piece, "rail.back", [-u + leg, u - leg], [v - back - thin, v - back], [low, under], { hide }),
    block(piece, "rail.left", [-u + back, -u + back + thin], [-v + leg, v - leg], [low, under], { hide }),
    block(piece, "rail.right", [u - back - thin, u - back], [-v + leg, v - leg], [low, under], { hide }),
  );
}
