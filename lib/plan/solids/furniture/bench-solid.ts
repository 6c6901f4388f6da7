import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, stroke } from "./draw-on";
import { block } from "./part";
import type { Piece, Stretch } from "./piece";
import { partsIn, thickness } from "./thickness";

/** A bench at least this high has a back. Metres. */
const BACKED_FROM_M = 0.65;
const SEAT_UP_M = 0.45;
const SEAT_M = 0.05;
const SUPPORT_M = 0.06;
const INSET_M = 0.16;
const SLAT_M = 0.2;
const RAIL_M = 0.08;

/** A bench: a seat of planks on two upright boards tied by a rail; a high one has a back of two planks on posts. */
export function benchSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const backed = height >= BACKED_FROM_M;
  const seat = backed ? thickness(SEAT_UP_M, height, 0.55) : height;
  const under = seat - thickness(SEAT_M, seat, 0.2);
  const thick = thickness(SUPPORT_M, width, 0.1);
  const inset = thickness(INSET_M, width, 0.12);
  const post = thickness(SUPPORT_M, depth, 0.15);
  const back = backed ? v - post : v;
  const rail = thickness(RAIL_M, under, 0.22);
  const [left, right]: readonly [Stretch, Stretch] = [
    [-u + inset, -u + inset + thick],
    [u - inset - thick, u - inset],
  ];
  const between: Stretch = [left[1], right[0]];
  const seatSolid = block(piece, "seat", [-u, u], [-v, back], [under, seat]);
  const planks = partsIn(back + v, SLAT_M, 2, 4);
  const gaps = Array.from({ length: planks - 1 }, (_, i) => -v + ((i + 1) * (back + v)) / planks);
  const setBack = (back + v) * 0.12;
  const support = (name: string, across: Stretch) =>
    block(piece, name, across, [-v + setBack, back - (backed ? 0 : setBack)], ["floor", under], {
      hide: backed ? ["top", "upright.3", "upright.4"] : ["top"],
    });
  const middle = (back - v) / 2;
  const above = height - seat;
  const plank = (name: string, rise: Stretch) => block(piece, name, [-u, u], [back, back + post / 2], rise);
  const backParts = backed
    ? [
        block(piece, "post.left", left, [back + post / 2, v], ["floor", height - above * 0.04]),
        block(piece, "post.right", right, [back + post / 2, v], ["floor", height - above * 0.04]),
        plank("plank.low", [seat + above * 0.2, seat + above * 0.5]),
        plank("plank.top", [seat + above * 0.66, height]),
      ]
    : [];
  return joinSolids(
    drawOn(
      piece,
      seatSolid,
      "seat.top",
      gaps.map((at, i) => stroke(`gap.${i + 1}`, [-u, at, seat], [u, at, seat])),
    ),
    support("support.left", left),
    support("support.right", right),
    block(piece, "rail", between, [middle - thick / 4, middle + thick / 4], [under * 0.45, under * 0.45 + rail]),
    ...backParts,
  );
}
