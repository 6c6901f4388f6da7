import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, stroke } from "./draw-on";
import { legs } from "./legs";
import { block, FRONT, sweptBack } from "./part";
import type { Piece, Stretch } from "./piece";
import { roundedTop } from "./rounded";
import { partsIn, thickness } from "./thickness";

const FEET_M = 0.09;
const FOOT_M = 0.06;
const ARM_M = 0.2;
const ARM_UP_M = 0.62;
const BACK_M = 0.22;
const SEAT_UP_M = 0.44;
const CUSHION_M = 0.16;
const CUSHION_WIDE_M = 0.65;

/** A sofa: rounded arms, a back as wide as the whole, and seat cushions on a base, on low feet. */
export function sofaSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const feet = thickness(FEET_M, height, 0.1);
  const arm = thickness(ARM_M, width, 0.16);
  const back = v - thickness(BACK_M, depth, 0.3);
  const seat = thickness(SEAT_UP_M, height, 0.55);
  const armTop = seat + thickness(ARM_UP_M - SEAT_UP_M, height - seat, 0.5);
  const cushion = seat - thickness(CUSHION_M, seat - feet, 0.45);
  const setBack = thickness(0.04, depth, 0.05);
  const inner: Stretch = [-u + arm, u - arm];
  const wide = inner[1] - inner[0];
  const count = partsIn(wide, CUSHION_WIDE_M, 1, 6);
  const seams = Array.from({ length: count - 1 }, (_, i) => inner[0] + ((i + 1) * wide) / count);

  // An arm's outer side runs on into the back's, whose own edge is the seam between them.
  const armSolid = (name: string, across: Stretch, outer: "first" | "last") => {
    const { ring, smooth } = roundedTop(across, [feet, armTop], arm / 2);
    return sweptBack(piece, name, ring, [-v, back], {
      smooth,
      hide: ["end.2.1", `end.2.${outer === "first" ? 2 : ring.length}`],
    });
  };
  const cushions = block(piece, "cushions", inner, [-v + setBack / 2, back], [cushion, seat], { hide: ["upright"] });
  const backSolid = block(piece, "back", [-u, u], [back, v], [feet, height]);
  return joinSolids(
    legs(piece, [-u, u], [-v, v], thickness(FOOT_M, Math.min(width, depth), 0.1), feet),
    armSolid("arm.left", [-u, -u + arm], "last"),
    armSolid("arm.right", [u - arm, u], "first"),
    block(piece, "base", inner, [-v + setBack, back], [feet, cushion], { hide: ["top", "upright"] }),
    drawOn(
      piece,
      drawOn(
        piece,
        cushions,
        "cushions.top",
        seams.map((at, i) => stroke(`seam.${i + 1}`, [at, -v + setBack / 2, seat], [at, back, seat])),
      ),
      `cushions.${FRONT}`,
      seams.map((at, i) =>
        stroke(`seam.front.${i + 1}`, [at, -v + setBack / 2, cushion], [at, -v + setBack / 2, seat]),
      ),
    ),
    drawOn(
      piece,
      backSolid,
      `back.${FRONT}`,
      seams.map((at, i) => stroke(`seam.back.${i + 1}`, [at, back, seat], [at, back, height])),
    ),
  );
}
