import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, stroke } from "./draw-on";
import { block, sweptLeft } from "./part";
import type { Piece, Stretch } from "./piece";
import { roundedTop } from "./rounded";
import { partsIn, thickness } from "./thickness";

const BOARD_M = 0.05;
const MATTRESS_UP_M = 0.52;
const MATTRESS_M = 0.2;
const FRAME_M = 0.18;
const FOOTBOARD_OVER_M = 0.12;
const PILLOW_M = 0.13;
const PILLOW_DEEP_M = 0.4;
const PILLOW_WIDE_M = 0.75;
const INSET_M = 0.03;

/** A bed, its head at the back: head- and footboard, a frame between them, a mattress, pillows, and the cover's fold. */
export function bedSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const board = thickness(BOARD_M, depth, 0.06);
  const top = thickness(MATTRESS_UP_M, height, 0.62);
  const middle = top - thickness(MATTRESS_M, top, 0.45);
  const low = middle - thickness(FRAME_M, middle, 0.6);
  const footboard = top + thickness(FOOTBOARD_OVER_M, height - top, 0.4);
  const inset = thickness(INSET_M, width, 0.04);
  const lying: Stretch = [-v + board, v - board];
  const long = lying[1] - lying[0];
  const deep = thickness(PILLOW_DEEP_M, long, 0.22);
  const thick = thickness(PILLOW_M, height - top, 0.45);
  const count = partsIn(width, PILLOW_WIDE_M, 1, 4);
  const room = (width - 2 * inset) / count;
  const pillowEnd = lying[1] - deep * 0.1;
  const fold = pillowEnd - deep * 1.35;

  const mattress = block(piece, "mattress", [-u + inset, u - inset], lying, [middle, top], { hide: ["upright"] });
  const { ring, smooth } = roundedTop([pillowEnd - deep, pillowEnd], [top, top + thick], thick * 0.8);
  const pillows = Array.from({ length: count }, (_, i) => {
    const left = -u + inset + i * room;
    return sweptLeft(piece, `pillow.${i + 1}`, ring, [left + room * 0.1, left + room * 0.9], { smooth });
  });
  return joinSolids(
    block(piece, "headboard", [-u, u], [v - board, v], ["floor", height]),
    block(piece, "footboard", [-u, u], [-v, -v + board], ["floor", footboard]),
    block(piece, "frame", [-u + inset / 2, u - inset / 2], lying, [low, middle], { hide: ["upright"] }),
    drawOn(piece, mattress, "mattress.top", [stroke("fold", [-u + inset, fold, top], [u - inset, fold, top])]),
    ...pillows,
  );
}
