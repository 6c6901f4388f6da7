import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, stroke } from "./draw-on";
import { grandOutline } from "./grand-outline";
import { block, FRONT, standing } from "./part";
import { pianoKeys } from "./piano-keys";
import type { Piece, Stretch } from "./piece";
import { thickness } from "./thickness";

const CASE_M = 0.38;
const KEY_BED_M = 0.16;
const KEYS_DEEP_M = 0.3;
const CHEEK_M = 0.07;
const LEG_M = 0.1;
const LID_M = 0.03;
/** Straight pieces of each bend of the case. */
const BEND_PIECES = 6;

/** A grand piano, its lid shut: the case over its curved outline on three legs, the keys between cheeks before it. */
export function grandSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const low = height - thickness(CASE_M, height, 0.45);
  const lid = height - thickness(LID_M, height, 0.04);
  const keys = low + thickness(KEY_BED_M, height - low, 0.45);
  const front = -v + thickness(KEYS_DEEP_M, depth, 0.2);
  const cheek = thickness(CHEEK_M, width, 0.06);
  const leg = thickness(LEG_M, Math.min(width, depth), 0.09);
  const inner: Stretch = [-u + cheek, u - cheek];
  const bedAway: Stretch = [-v + thickness(0.02, depth, 0.02), front];
  const outline = grandOutline(width, depth, BEND_PIECES).map(([a, b], i) => [a, i < 2 ? front : b] as const);
  const smooth = outline.map((_, i) => i).slice(2);
  const lines = pianoKeys(inner, bedAway, [low, keys]);
  const bed = block(piece, "key-bed", inner, bedAway, [low, keys], { hide: ["upright"] });
  const lidSolid = standing(piece, "lid", outline, [lid, height], { smooth });
  const fold = front + (v - front) * 0.2;
  const cheekHidden = { hide: ["upright.3", "upright.4"] };
  const tail = -u * 0.5;
  return joinSolids(
    drawOn(piece, lidSolid, "lid.top", [stroke("fold", [-u, fold, height], [u, fold, height])]),
    standing(piece, "case", outline, [low, lid], { smooth, hide: ["top"] }),
    drawOn(piece, drawOn(piece, bed, "key-bed.top", lines.top), `key-bed.${FRONT}`, lines.front),
    block(piece, "cheek.left", [-u, -u + cheek], [-v, front], [low, lid], cheekHidden),
    block(piece, "cheek.right", [u - cheek, u], [-v, front], [low, lid], cheekHidden),
    block(piece, "leg.left", [-u, -u + leg], [front - leg, front], ["floor", low], { hide: ["top"] }),
    block(piece, "leg.right", [u - leg, u], [front - leg, front], ["floor", low], { hide: ["top"] }),
    block(piece, "leg.tail", [tail - leg / 2, tail + leg / 2], [v - 2 * leg, v - leg], ["floor", low], {
      hide: ["top"],
    }),
  );
}
