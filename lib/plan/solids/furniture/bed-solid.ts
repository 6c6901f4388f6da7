import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, stroke } from "./draw-on";
import { block, sweptLeft } from "./part";
import type { Piece, Stretch } from "./piece";
import { roundedTop } from "./rounded";
import { partsIn, thickness } from "./thickness";

const POST_M = 0.07;
const MATTRESS_UP_M = 0.52;
const MATTRESS_M = 0.2;
const FRAME_M = 0.18;
const FOOTBOARD_OVER_M = 0.05;
const PILLOW_M = 0.13;
const PILLOW_DEEP_M = 0.4;
const PILLOW_WIDE_M = 0.75;
const INSET_M = 0.03;

/** A bed, its head at the back: a high and a low pair of posts with boards between, a frame, a mattress, pillows, and the cover's fold. */
export function bedSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const post = thickness(POST_M, Math.min(width, depth), 0.06);
  const top = thickness(MATTRESS_UP_M, height, 0.62);
  const middle = top - thickness(MATTRESS_M, top, 0.45);
  const low = middle - thickness(FRAME_M, middle, 0.6);
  const foot = top + thickness(FOOTBOARD_OVER_M, height - top, 0.15);
  const knob = foot + thickness(post * 0.6, height - foot, 0.5);
  const inset = thickness(INSET_M, width, 0.04);
  const lying: Stretch = [-v + post, v - post];
  const long = lying[1] - lying[0];
  const deep = thickness(PILLOW_DEEP_M, long, 0.22);
  const thick = thickness(PILLOW_M, height - top, 0.45);
  const count = partsIn(width, PILLOW_WIDE_M, 1, 4);
  const room = (width - 2 * inset) / count;
  const pillowEnd = lying[1] - deep * 0.1;
  const fold = pillowEnd - deep * 1.9;

  const mattress = block(piece, "mattress", [-u + inset, u - inset], lying, [middle, top], { hide: ["upright"] });
  const { ring, smooth } = roundedTop([pillowEnd - deep, pillowEnd], [top, top + thick], thick * 0.8);
  const pillows = Array.from({ length: count }, (_, i) => {
    const left = -u + inset + i * room;
    return sweptLeft(piece, `pillow.${i + 1}`, ring, [left + room * 0.1, left + room * 0.9], { smooth });
  });
  const across: Stretch = [-u + post, u - post];
  const left: Stretch = [-u, -u + post];
  const right: Stretch = [u - post, u];
  const near: Stretch = [-v, -v + post];
  const far: Stretch = [v - post, v];
  const head = height - (height - top) * 0.12;
  return joinSolids(
    block(piece, "post.1", left, near, ["floor", knob]),
    block(piece, "post.2", right, near, ["floor", knob]),
    block(piece, "post.3", right, far, ["floor", height]),
    block(piece, "post.4", left, far, ["floor", height]),
    block(piece, "footboard", across, [-v + post * 0.25, -v + post], [low, foot], { hide: ["upright"] }),
    block(piece, "headboard", across, [v - post, v - post * 0.25], [low, head], { hide: ["upright"] }),
    block(piece, "frame", [-u + inset / 2, u - inset / 2], lying, [low, middle], { hide: ["upright"] }),
    drawOn(piece, mattress, "mattress.top", [stroke("fold", [-u + inset, fold, top], [u - inset, fold, top])]),
    ...pillows,
  );
}
