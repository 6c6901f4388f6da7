import type { Exercise } from "../../exercise/exercise";
import { printLength } from "../../measure/print-length";
import { centreVanishingPoint } from "../../perspective/vanishing-point";
import type { PlaneBox } from "../clear-lettering";
import type { DisplayItem, DisplayList, DrawingPoint } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/** Length of a tick, and from a tick to its letters, millimetres of paper. */
const TICK_MM = 4;
const CLEAR_MM = 1.4;
/** Reach of the cross at the CVP, millimetres of paper. */
const CROSS_MM = 1.6;

/**
 * Where the eye is, beside a finished picture: a tick of the horizon to the left and right of what is drawn (`around`, picture
 * metres), lettered with the height of the eye, and a small cross at the CVP. What lies above or below the drawing is left out.
 */
export function drawSightTicks(
  { stage, viewer, units, scaleRatio }: Pick<Exercise, "stage" | "viewer" | "units" | "scaleRatio">,
  [left, bottom, right, top]: PlaneBox,
): DisplayList {
  const [X, Z] = centreVanishingPoint(viewer);
  if (Z < bottom || Z > top) return [];
  const mm = scaleRatio / 1000;
  const arm = CROSS_MM * mm;
  const line = (id: string, from: DrawingPoint, to: DrawingPoint): DisplayItem =>
    makeStroke(`picture.sight.${id}`, [from, to]);
  const ticks = [
    line("left", [left - TICK_MM * mm, Z], [left, Z]),
    line("right", [right, Z], [right + TICK_MM * mm, Z]),
    // Two short lines under each other: the page's drawings are set as wide as they are, and paper is narrow.
    ...["HORIZON", printLength(viewer.eyeHeight, units)].map((text, i) =>
      makeLettering(`picture.sight.name.${i + 1}`, [right, Z], text, {
        heightMm: LETTER_MM.small,
        anchor: "start",
        shiftMm: [CLEAR_MM, i === 0 ? CLEAR_MM : -CLEAR_MM - LETTER_MM.small],
      }),
    ),
  ];
  const framed = Math.abs(X) < stage.opening.width / 2 && Z < stage.opening.height;
  if (!framed) return ticks;
  return [...ticks, line("across", [X - arm, Z], [X + arm, Z]), line("up", [X, Z - arm], [X, Z + arm])];
}
