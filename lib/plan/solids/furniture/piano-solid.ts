import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, panel, type Stroke, stroke } from "./draw-on";
import { GRAND_FROM_M } from "./grand-outline";
import { grandSolid } from "./grand-solid";
import { BACK, block, FRONT } from "./part";
import { pianoKeys } from "./piano-keys";
import type { Piece, Stretch } from "./piece";
import { thickness } from "./thickness";

const KEYS_UP_M = 0.72;
const KEY_BED_M = 0.13;
const KEYS_DEEP_M = 0.28;
const LEG_M = 0.07;
const LID_M = 0.035;
const CHEEK_M = 0.06;

/** A piano: an upright, or a grand where its box is deep enough. */
export function pianoSolid(piece: Piece): Solid {
  return piece.depth >= GRAND_FROM_M ? grandSolid(piece) : uprightSolid(piece);
}

/** The case with its lid, and before it a key bed between cheeks on two legs. */
function uprightSolid(piece: Piece): Solid {
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
  const bedAway: Stretch = [-v + thickness(0.02, depth, 0.03), front];
  const cheekTop = keys + thickness(0.06, height, 0.05);
  const lines = pianoKeys(inner, bedAway, [low, keys]);
  const bed = block(piece, "key-bed", inner, bedAway, [low, keys], { hide: ["upright"] });
  const body = block(piece, "case", [-u, u], [front, v], ["floor", lid], { hide: ["top"] });
  const middle: Stretch = [-u + width * 0.1, u - width * 0.1];
  const panels: readonly Stroke[] = [
    panel("upper-panel", front, middle, [keys + (lid - keys) * 0.3, keys + (lid - keys) * 0.86]),
    panel("lower-panel", front, middle, [low * 0.2, low * 0.85]),
  ];
  const backFrame: readonly Stroke[] = [
    panel("frame", v, middle, [lid * 0.08, lid * 0.92]),
    ...[-0.4, 0, 0.4].map((share, i) =>
      stroke(`post.${i + 1}`, [u * share, v, lid * 0.08], [u * share, v, lid * 0.92]),
    ),
  ];
  const cheekHidden = { hide: ["upright.3", "upright.4"] };
  return joinSolids(
    drawOn(piece, drawOn(piece, body, `case.${FRONT}`, panels), `case.${BACK}`, backFrame),
    block(piece, "lid", [-u, u], [front - over, v], [lid, height]),
    drawOn(piece, drawOn(piece, bed, "key-bed.top", lines.top), `key-bed.${FRONT}`, lines.front),
    block(piece, "cheek.left", [-u, -u + cheek], [-v, front], [low, cheekTop], cheekHidden),
    block(piece, "cheek.right", [u - cheek, u], [-v, front], [low, cheekTop], cheekHidden),
    block(piece, "leg.left", [-u, -u + leg], [-v, -v + leg], ["floor", low], { hide: ["top"] }),
    block(piece, "leg.right", [u - leg, u], [-v, -v + leg], ["floor", low], { hide: ["top"] }),
  );
}
