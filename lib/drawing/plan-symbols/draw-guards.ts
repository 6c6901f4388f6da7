import { between, distance } from "../../geometry/vector";
import type { Plan, Platform } from "../../plan/plan";
import type { Stage } from "../../stage/stage";
import { clearest, type Drawn } from "../clear-lettering";
import type { DisplayItem, DrawingPoint, Lettering } from "../display-list";
import { shiftBeside } from "../lettering-box";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";
import { findDrops } from "./find-drops";

/** How far inside the edge a wanted guard is drawn, millimetres of paper. */
const GUARD_INSET_MM = 1.4;
const NAME_CLEAR_MM = 0.9;

type Rail = { readonly ends: readonly [DrawingPoint, DrawingPoint]; readonly inward: DrawingPoint };

/** A dashed rail inside each stretch of a platform's edge that drops more than 30 in unguarded. */
export function drawGuards(
  plan: Plan,
  platform: Platform,
  stage: Pick<Stage, "rake">,
  scaleRatio: number,
): readonly DisplayItem[] {
  return rails(plan, platform, stage, scaleRatio).map(({ ends }, i) =>
    makeStroke(`plan.platform.${platform.id}.guard.${i + 1}`, ends, { line: "hidden", weight: "thick" }),
  );
}

/** GUARD, once a platform, by the rail where it crosses least; the longest rails first. */
export function letterGuards(
  plan: Plan,
  platform: Platform,
  stage: Pick<Stage, "rake">,
  drawn: Drawn,
): readonly Lettering[] {
  const heightMm = LETTER_MM.small;
  const places = rails(plan, platform, stage, drawn.scaleRatio)
    .toSorted((a, b) => distance(...b.ends) - distance(...a.ends))
    .flatMap(({ ends, inward }) =>
      [0.5, 0.3, 0.7].flatMap((t) =>
        [1, -1].map((side) => {
          // On the platform it stands off the rail, outside of it off the edge.
          const clear = side > 0 ? NAME_CLEAR_MM : NAME_CLEAR_MM + GUARD_INSET_MM;
          const normal: DrawingPoint = [inward[0] * side, inward[1] * side];
          const shiftMm = shiftBeside(normal, "GUARD", heightMm, clear);
          return makeLettering(`plan.platform.${platform.id}.guard.name`, between(...ends, t), "GUARD", {
            heightMm,
            shiftMm,
          });
        }),
      ),
    );
  return places.length > 0 ? [clearest(places, drawn)] : [];
}

function rails(plan: Plan, platform: Platform, stage: Pick<Stage, "rake">, scaleRatio: number): readonly Rail[] {
  const inset = (GUARD_INSET_MM * scaleRatio) / 1000;
  return findDrops(plan, platform, stage).map(({ from, to, inward }) => {
    const moved = ([x, y]: DrawingPoint): DrawingPoint => [x + inward[0] * inset, y + inward[1] * inset];
    return { ends: [moved(from), moved(to)], inward };
  });
}
