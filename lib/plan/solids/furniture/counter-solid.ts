import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, panel } from "./draw-on";
import { block, FRONT } from "./part";
import type { Piece, Stretch } from "./piece";
import { partsIn, thickness } from "./thickness";

const TOP_M = 0.05;
const BOARD_M = 0.04;
const PANEL_M = 0.7;
const OVERHANG_M = 0.12;
const KICK_M = 0.1;

/** A counter: an overhanging top on a panelled front and two ends, open at the working side behind, where a shelf runs. */
export function counterSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const under = height - thickness(TOP_M, height, 0.1);
  const board = thickness(BOARD_M, Math.min(width, depth), 0.06);
  const over = thickness(OVERHANG_M, depth, 0.14);
  const side = thickness(OVERHANG_M / 2, width, 0.05);
  const front = -v + over;
  const kick = thickness(KICK_M, height, 0.12);
  const [left, right]: readonly [Stretch, Stretch] = [
    [-u + side, -u + side + board],
    [u - side - board, u - side],
  ];
  const inner: Stretch = [left[1], right[0]];
  const facing = block(piece, "facing", [left[0], right[1]], [front, front + board], ["floor", under], {
    hide: ["top", "upright.3", "upright.4"],
  });
  const panels = partsIn(inner[1] - inner[0], PANEL_M, 1, 8);
  const wide = (right[1] - left[0]) / panels;
  const gap = Math.min(wide, under - kick) * 0.12;
  const strokes = Array.from({ length: panels }, (_, i) =>
    panel(
      `panel.${i + 1}`,
      front,
      [left[0] + i * wide + gap, left[0] + (i + 1) * wide - gap],
      [kick + gap, under - gap],
    ),
  );
  const end = (name: string, across: Stretch) =>
    block(piece, name, across, [front + board, v], ["floor", under], { hide: ["top", "upright.1", "upright.2"] });
  const shelf = under * 0.5;
  return joinSolids(
    block(piece, "top", [-u, u], [-v, v], [under, height]),
    drawOn(piece, facing, `facing.${FRONT}`, strokes),
    end("end.left", left),
    end("end.right", right),
    block(piece, "shelf", inner, [front + board, v - (v - front) * 0.15], [shelf - board / 2, shelf + board / 2], {
      hide: ["upright.1", "upright.2"],
    }),
  );
}
