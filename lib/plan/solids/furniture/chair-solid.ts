import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { block } from "./part";
import type { Piece, Stretch } from "./piece";
import { thickness } from "./thickness";

const SEAT_UP_M = 0.46;
const SEAT_M = 0.05;
const LEG_M = 0.045;
const TOP_RAIL_M = 0.13;
const LOW_RAIL_M = 0.07;

/** A chair: a seat on four legs, the back pair running up as posts with two rails between them. */
export function chairSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const leg = thickness(LEG_M, Math.min(width, depth), 0.15);
  const seat = thickness(SEAT_UP_M, height, 0.52);
  const under = seat - thickness(SEAT_M, height, 0.07);
  const left: Stretch = [-u, -u + leg];
  const right: Stretch = [u - leg, u];
  const posts: Stretch = [v - leg, v];
  const between: Stretch = [-u + leg, u - leg];
  const rails: Stretch = [v - leg * 0.75, v - leg * 0.25];
  const above = height - seat;
  const topRail = thickness(TOP_RAIL_M, above, 0.3);
  const middle = seat + (above - topRail) * 0.5;
  const low = thickness(LOW_RAIL_M, above, 0.16) / 2;
  return joinSolids(
    block(piece, "leg.1", left, [-v, -v + leg], ["floor", under], { hide: ["top"] }),
    block(piece, "leg.2", right, [-v, -v + leg], ["floor", under], { hide: ["top"] }),
    block(piece, "post.right", right, posts, ["floor", height]),
    block(piece, "post.left", left, posts, ["floor", height]),
    block(piece, "seat", [-u, u], [-v, v - leg], [under, seat], { hide: ["upright.3", "upright.4"] }),
    block(piece, "rail.top", between, rails, [height - topRail - leg * 0.5, height - leg * 0.5], { hide: ["upright"] }),
    block(piece, "rail.low", between, rails, [middle - low, middle + low], { hide: ["upright"] }),
  );
}
