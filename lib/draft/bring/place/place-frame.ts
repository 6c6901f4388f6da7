import { meet } from "../../../geometry/meet";
import { cross, distance, leftOf, subtract, unit } from "../../../geometry/vector";
import type { Affine } from "../affine";
import type { BroughtPoint, BroughtUnit } from "../brought";

/** How big the drawing is: as its file tells, by the scale of its paper, or by two of its places and how far apart they are. */
export type PlaceScale =
  | { readonly by: "file" }
  | { readonly by: "ratio"; readonly ratio: number }
  | { readonly by: "unit"; readonly metres: number }
  | { readonly by: "length"; readonly from: BroughtPoint; readonly to: BroughtPoint; readonly length: number };

/** Two places pointed at on a line of the drawing. */
export type PointedLine = readonly [BroughtPoint, BroughtPoint];

export type PlaceFrame =
  | { readonly ok: true; readonly toPlan: Affine; readonly metres: number }
  | { readonly ok: false; readonly say: string };

/** The lines pointed at may be out of square by so much, radians: two clicks on a screen are no nearer. */
const OUT_OF_SQUARE = (3 * Math.PI) / 180;

/**
 * From a brought drawing to the plan. The origin is where the lines meet; the plaster line gives the direction, and the centre line
 * is pointed at from the audience upstage. A line that has no direction, or two that are not square, are told in a sentence.
 */
export function placeFrame(
  unit_: BroughtUnit,
  scale: PlaceScale,
  centreLine: PointedLine,
  plasterLine: PointedLine,
): PlaceFrame {
  const metres = metresFor(unit_, scale);
  if (typeof metres === "string") return { ok: false, say: metres };
  const upstage = unit(subtract(centreLine[1], centreLine[0]));
  const along = unit(subtract(plasterLine[1], plasterLine[0]));
  if (!upstage)
    return refuse("Point at two places of the centre line that are apart, the one nearer the audience first.");
  if (!along) return refuse("Point at two places of the plaster line that are apart.");
  const origin = meet(centreLine, plasterLine);
  const turn = Math.asin(Math.min(1, Math.abs(cross(along, upstage))));
  if (!origin || turn < Math.PI / 2 - OUT_OF_SQUARE)
    return refuse(
      `The two lines meet at ${Math.round((turn * 180) / Math.PI)} degrees, and they are square to each other on a stage. Point at them again.`,
    );
  const right = cross(along, upstage) > 0 ? along : ([-along[0], -along[1]] as const);
  const up = leftOf(right);
  const move = (axis: readonly [number, number]) => -metres * (axis[0] * origin[0] + axis[1] * origin[1]);
  return {
    ok: true,
    metres,
    toPlan: [metres * right[0], metres * up[0], metres * right[1], metres * up[1], move(right), move(up)],
  };
}

/** Metres of the stage in one unit of the drawing, or why that cannot be told. */
function metresFor(told: BroughtUnit, scale: PlaceScale): number | string {
  switch (scale.by) {
    case "file":
      return told.kind === "stage"
        ? 1
        : "The file does not tell its size. Point at two places and say how far apart they are.";
    case "ratio":
      if (told.kind === "unknown")
        return "The file does not tell its paper's size. Point at two places and say how far apart they are.";
      return scale.ratio > 0 && Number.isFinite(scale.ratio) ? scale.ratio : "A scale is a number above 0.";
    case "unit":
      return scale.metres > 0 && Number.isFinite(scale.metres) ? scale.metres : "A unit is a length above 0.";
    case "length": {
      const drawn = distance(scale.from, scale.to);
      if (!(drawn > 0)) return "Point at two places that are apart.";
      return scale.length > 0 && Number.isFinite(scale.length)
        ? scale.length / drawn
        : "Say how far apart they are: a length above 0.";
    }
  }
}

function refuse(say: string): PlaceFrame {
  return { ok: false, say };
}
