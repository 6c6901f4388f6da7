import type { SheetPlace } from "../../sheet/place-drawings";
import type { PageFit } from "../page-fit";
import type { PhotoPoint } from "../pixels";
import { photoFromSheet, sheetFromPhoto } from "./map-page";

/**
 * Where curled paper's places lie in a flat sheet's fit: sheet millimetres to sheet millimetres, moved by polynomials of third degree.
 * With x and y the distances from `middle` in units of `unitMm`, `right` and `down` are the millimetres of each of `bendTerms`. It is
 * data alone, and survives JSON.
 */
export type Bend = {
  readonly middle: SheetPlace;
  readonly unitMm: number;
  readonly right: readonly number[];
  readonly down: readonly number[];
};

/**
 * Third degree is what curl needs: paper on a cylinder rises by the square of the way across it, and is seen aside by that times the way
 * from the camera's foot, which is linear.
 */
export const TERMS = 10;
/** Steps of the way back, and the change, millimetres, under which one more is none: each takes the tenth part or less. */
const STEPS = 30;
const SETTLED = 1e-9;

/** 1, x, y, x^2, xy, y^2, x^3, x^2 y, x y^2, y^3. */
export function bendTerms({ middle, unitMm }: Pick<Bend, "middle" | "unitMm">, [right, down]: SheetPlace): number[] {
  const [x, y] = [(right - middle[0]) / unitMm, (down - middle[1]) / unitMm];
  return [1, x, y, x * x, x * y, y * y, x * x * x, x * x * y, x * y * y, y * y * y];
}

/** Where the flat sheet's fit has a place of the curled one; without a bend, the place itself. Sheet millimetres. */
export function bendPlace(bend: Bend | null, place: SheetPlace): SheetPlace {
  if (!bend) return place;
  let [right, down] = place;
  for (const [i, term] of bendTerms(bend, place).entries()) {
    right += (bend.right[i] as number) * term;
    down += (bend.down[i] as number) * term;
  }
  return [right, down];
}

/** The way back, by fixed steps; null far outside the sheet, where the polynomials fold. */
export function unbendPlace(bend: Bend | null, bent: SheetPlace): SheetPlace | null {
  let place = bent;
  for (let i = 0; i < STEPS; i++) {
    const [right, down] = bendPlace(bend, place);
    const step = [bent[0] - right, bent[1] - down] as const;
    if (Math.hypot(...step) < SETTLED) return place;
    place = [place[0] + step[0], place[1] + step[1]];
  }
  return null;
}

/** Where a photograph has a place of a sheet that may be curled. */
export function photoFromBent(fit: PageFit, bend: Bend | null, place: SheetPlace): PhotoPoint | null {
  return photoFromSheet(fit, bendPlace(bend, place));
}

/** Which place of such a sheet a point of the photograph shows. */
export function bentFromPhoto(fit: PageFit, bend: Bend | null, point: PhotoPoint): SheetPlace | null {
  const flat = sheetFromPhoto(fit, point);
  return flat && unbendPlace(bend, flat);
}
