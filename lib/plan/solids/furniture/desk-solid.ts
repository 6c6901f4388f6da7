import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn } from "./draw-on";
import { drawers } from "./drawers";
import { BACK, block, FRONT } from "./part";
import type { Piece, Stretch } from "./piece";
import { thickness } from "./thickness";

const TOP_M = 0.045;
const PEDESTAL_M = 0.48;
const DRAWERS = 3;
const PLINTH_M = 0.07;
const BOARD_M = 0.03;

/** A desk to sit at from both sides: a pedestal of drawers under each end, and a knee hole between with a board across it. */
export function deskSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const under = height - thickness(TOP_M, height, 0.12);
  const pedestal = thickness(PEDESTAL_M, width, 0.3);
  const plinth = thickness(PLINTH_M, height, 0.1);
  const board = thickness(BOARD_M, depth, 0.06) / 2;
  const inner: Stretch = [-u + pedestal, u - pedestal];
  const stack = (name: string, across: Stretch) => {
    const body = block(piece, name, across, [-v, v], ["floor", under], { hide: ["top"] });
    const front = drawOn(
      piece,
      body,
      `${name}.${FRONT}`,
      drawers(`${name}.front`, -v, across, [plinth, under], DRAWERS),
    );
    return drawOn(piece, front, `${name}.${BACK}`, drawers(`${name}.back`, v, across, [plinth, under], DRAWERS));
  };
  return joinSolids(
    block(piece, "top", [-u, u], [-v, v], [under, height]),
    stack("pedestal.left", [-u, -u + pedestal]),
    stack("pedestal.right", [u - pedestal, u]),
    block(piece, "board", inner, [-board, board], [under * 0.35, under], { hide: ["top"] }),
  );
}
