import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, panel, type Stroke, stroke } from "./draw-on";
import { block, FRONT } from "./part";
import type { Piece, Stretch } from "./piece";
import { partsIn, thickness } from "./thickness";

const KEYS_UP_M = 0.72;
const KEY_BED_M = 0.12;
const KEYS_DEEP_M = 0.26;
const LEG_M = 0.07;
const LID_M = 0.035;
const CHEEK_M = 0.06;
/** Key lines are drawn about this far apart, metres: fewer than the keys there are, so that they stay apart on paper. */
const KEY_LINE_M = 0.12;

/** An upright piano: the case with its lid, a key bed before it on two legs, the keys drawn on it. */
export function pianoSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const front = -v + thickness(KEYS_DEEP_M, depth, 0.42);
  const keys = thickness(KEYS_UP_M, height, 0.6);
  const low = keys - thickness(KEY_BED_M, height, 0.1);
  const lid = height - thickness(LID_M, height, 0.05);
  const cheek = thickness(CHEEK_M, width, 0.06);
  const leg = thickness(LEG_M, Math.min(width, depth), 0.1);
  const over = thickness(0.02, depth, 0.03);
  const inner: Stretch = [-u + cheek, u - cheek];
  const cheekTop = keys + thickness(0.06, height, 0.05);
  const body = block(piece, "case", [-u, u], [front, v], ["floor", lid], { hide: ["top"] });
  const bed = block(piece, "key-bed", inner, [-v + cheek * 0.4, front], [low, keys], { hide: ["upright"] });
  const caseFront: readonly Stroke[] = [
    panel(
      "upper-panel",
      front,
      [-u + width * 0.1, u - width * 0.1],
      [keys + (lid - keys) * 0.3, keys + (lid - keys) * 0.86],
    ),
    panel("lower-panel", front, [-u + width * 0.1, u - width * 0.1], [low * 0.2, low * 0.85]),
  ];
  return joinSolids(
    drawOn(piece, body, `case.${FRONT}`, caseFront),
    block(piece, "lid", [-u, u], [front - over, v], [lid, height]),
    drawOn(piece, bed, "key-bed.top", keyLines(inner, [-v + cheek * 0.4, front], keys)),
    block(piece, "cheek.left", [-u, -u + cheek], [-v, front], [low, cheekTop], { hide: ["upright.3", "upright.4"] }),
    block(piece, "cheek.right", [u - cheek, u], [-v, front], [low, cheekTop], { hide: ["upright.3", "upright.4"] }),
    block(piece, "leg.left", [-u, -u + leg], [-v, -v + leg], ["floor", low], { hide: ["top"] }),
    block(piece, "leg.right", [u - leg, u], [-v, -v + leg], ["floor", low], { hide: ["top"] }),
  );
}

/** The keys: a rail behind them, lines between some, and short black ones here and there. */
function keyLines([u0, u1]: Stretch, [v0, v1]: Stretch, w: number): readonly Stroke[] {
  const back = v0 + (v1 - v0) * 0.62;
  const count = partsIn(u1 - u0, KEY_LINE_M, 3, 24);
  const at = (i: number) => u0 + ((i + 1) * (u1 - u0)) / count;
  return [
    stroke("key-rail", [u0, back, w], [u1, back, w]),
    ...Array.from({ length: count - 1 }, (_, i) => stroke(`key.${i + 1}`, [at(i), v0, w], [at(i), back, w])),
  ];
}
