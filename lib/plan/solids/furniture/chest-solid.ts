import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, panel, stroke } from "./draw-on";
import { drawers } from "./drawers";
import { block, FRONT } from "./part";
import type { Piece, Stretch } from "./piece";
import { partsIn, thickness } from "./thickness";

/** A chest lower than this has a lid; a higher one has drawers. Metres. */
const LIDDED_BELOW_M = 0.65;
const TOP_M = 0.04;
const LID_M = 0.14;
const PLINTH_M = 0.08;
const OVERHANG_M = 0.03;
const DRAWER_M = 0.24;
const CLASP_M = 0.09;

/** A chest: a body between a plinth and an overhanging top, with drawers; a low one has a strapped lid and a clasp instead. */
export function chestSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const lidded = height < LIDDED_BELOW_M;
  const under = height - thickness(lidded ? LID_M : TOP_M, height, lidded ? 0.3 : 0.1);
  const plinth = thickness(PLINTH_M, height, 0.14);
  const inset = thickness(OVERHANG_M, Math.min(width, depth), 0.06);
  const front = -v + inset;
  const inner: Stretch = [-u + inset, u - inset];
  const body = block(piece, "body", inner, [front, v - inset], [plinth, under], { hide: ["top", "bottom"] });
  const lid = block(piece, "top", [-u, u], [-v, v], [under, height]);
  const half = thickness(CLASP_M, width, 0.14) / 2;
  const clasp = panel("clasp", -v, [-half, half], [under, under + (height - under) * 0.5]);
  const straps = [-0.6, 0.6].map((share, i) =>
    stroke(`strap.${i + 1}`, [u * share, -v, height], [u * share, v, height]),
  );
  return joinSolids(
    block(piece, "plinth", [-u, u], [-v, v], ["floor", plinth]),
    lidded
      ? drawOn(piece, body, `body.${FRONT}`, [panel("hasp", front, [-half, half], [under - half * 2, under])])
      : drawOn(
          piece,
          body,
          `body.${FRONT}`,
          drawers("drawer", front, inner, [plinth, under], partsIn(under - plinth, DRAWER_M, 2, 6)),
        ),
    lidded ? drawOn(piece, drawOn(piece, lid, `top.${FRONT}`, [clasp]), "top.top", straps) : lid,
  );
}
