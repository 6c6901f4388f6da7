import type { MarkerPlace } from "../../sheet/marker-places";
import type { SheetPlace } from "../../sheet/place-drawings";
import type { PageFit } from "../page-fit";
import type { GreyPixels, PhotoPoint } from "../pixels";
import type { SeenMarker } from "./find-markers";
import { fitPairs, type PlacePair } from "./fit-pairs";
import { sheetFromPhoto } from "./map-page";
import { boxCorners, isSeenFromAbove } from "./seen-box";

export type MarkerFit =
  | {
      readonly kind: "fitted";
      readonly fit: PageFit;
      /** Ids of the markers that it rests on, and of those left out because they contradict the others. */
      readonly used: readonly number[];
      readonly leftOut: readonly number[];
    }
  /**
   * `few`: under four markers. `twice`: one is seen in two places. `bunched`: they stand too near together to tell where the rest
   * of the sheet is. `contradictory`: no flat sheet of this form has them where they are seen.
   */
  | { readonly kind: "refused"; readonly why: "few" | "twice" | "bunched" | "contradictory" };

/** So many markers at least: any three and a wrong fourth would still look like a sheet. */
export const LEAST_MARKERS = 4;
/** The markers' own area as a share of that of all eight: less says little of the sheet's far side. Four along two edges have a quarter. */
const LEAST_SPREAD = 0.3;
/**
 * A marker so far from where the others put it, millimetres, is wrong if leaving it out mends the fit to this share. Nearer ones are
 * kept: curled paper has them, and without them the fit would say that the paper is flat.
 */
const WRONG = { mm: 3, mends: 0.4 } as const;
/**
 * What is left over at most, millimetres, by how many markers are used: more is no sheet of this form, or one crumpled beyond
 * reading. Four bend to a wrong one among them almost wholly, five to a part, so that little left over says less there.
 */
const WORST_MM = { four: 0.2, five: 0.8, more: 3 } as const;

type Pair = PlacePair & { readonly id: number };

/**
 * Where a sheet lies in a photograph of a size, from markers seen and the places they were printed at: the homography and k1
 * that leave least over in the photograph at the markers' corners. One or two wrong markers among more than four are
 * found by leaving each out in turn.
 */
export function fitPage(
  seen: readonly SeenMarker[],
  places: readonly MarkerPlace[],
  photo: Pick<GreyPixels, "width" | "height">,
): MarkerFit {
  const ids = seen.map(({ id }) => id).filter((id) => places.some((place) => place.id === id));
  if (new Set(ids).size < ids.length) return { kind: "refused", why: "twice" };
  if (ids.length < LEAST_MARKERS) return { kind: "refused", why: "few" };
  const pairs = seen.flatMap(({ id, corners }): Pair[] => {
    const box = places.find((place) => place.id === id)?.box;
    return box ? boxCorners(box).map((place, i): Pair => ({ id, place, point: corners[i] as PhotoPoint })) : [];
  });
  const chosen = leaveOutWrong(pairs, ids, places, photo);
  if (!chosen) return { kind: "refused", why: "contradictory" };
  const used = ids.filter((id) => !chosen.leftOut.includes(id));
  if (spread(used, places) < LEAST_SPREAD) return { kind: "refused", why: "bunched" };
  const worst = used.length <= LEAST_MARKERS ? WORST_MM.four : used.length === 5 ? WORST_MM.five : WORST_MM.more;
  if (!((chosen.fit.residualMm ?? 0) < worst)) return { kind: "refused", why: "contradictory" };
  return { kind: "fitted", fit: chosen.fit, used, leftOut: chosen.leftOut };
}

type Choice = { readonly fit: PageFit; readonly leftOut: readonly number[] };

function leaveOutWrong(
  pairs: readonly Pair[],
  ids: readonly number[],
  places: readonly MarkerPlace[],
  photo: Pick<GreyPixels, "width" | "height">,
): Choice | null {
  const fitWithout = (leftOut: readonly number[]): Choice | null => {
    const fit = fitMarkers(
      pairs.filter(({ id }) => !leftOut.includes(id)),
      places,
      photo,
    );
    return fit && { fit, leftOut };
  };
  let best = fitWithout([]);
  let left: readonly number[] = [];
  while (ids.length - left.length > LEAST_MARKERS) {
    const tries = ids.filter((id) => !left.includes(id)).map((id) => fitWithout([...left, id]));
    const mended = tries.reduce((a, b) => (residual(b) < residual(a) ? b : a), null);
    if (!mended) break;
    const wrong = mended.leftOut.at(-1) as number;
    const off = offBy(
      mended.fit,
      pairs.filter(({ id }) => id === wrong),
    );
    left = mended.leftOut;
    // Two wrong ones hide each other: the first may mend little, and both together all.
    if (off > WRONG.mm && residual(mended) < WRONG.mends ** left.length * residual(best)) best = mended;
    else if (left.length > 1) break;
  }
  return best;
}

function residual(choice: Choice | null): number {
  return choice?.fit.residualMm ?? Number.POSITIVE_INFINITY;
}

function fitMarkers(
  pairs: readonly Pair[],
  places: readonly MarkerPlace[],
  photo: Pick<GreyPixels, "width" | "height">,
): PageFit | null {
  const fit = fitPairs(pairs, photo, "lens");
  if (!fit || !places.every(({ box }) => isSeenFromAbove(fit, box))) return null;
  return { ...fit, residualMm: offBy(fit, pairs) };
}

/** Root mean square of how far the paper's places are from what the photograph's points show, millimetres. */
function offBy(fit: PageFit, pairs: readonly Pair[]): number {
  const squares = pairs.map(({ place, point }) => {
    const back = sheetFromPhoto(fit, point);
    return back ? (back[0] - place[0]) ** 2 + (back[1] - place[1]) ** 2 : Number.POSITIVE_INFINITY;
  });
  return Math.sqrt(squares.reduce((sum, each) => sum + each, 0) / squares.length);
}

/** The area that the markers span, as a share of what all of them do. */
function spread(ids: readonly number[], places: readonly MarkerPlace[]): number {
  const area = (some: readonly MarkerPlace[]) => {
    const at = some.map(({ box }): SheetPlace => [(box.left + box.right) / 2, (box.top + box.bottom) / 2]);
    // Their ids run clockwise round the sheet, so they are the corners of a convex polygon in order.
    return at.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = at[(i + 1) % at.length] as SheetPlace;
      return sum + (x * nextY - y * nextX) / 2;
    }, 0);
  };
  return area(places.filter(({ id }) => ids.includes(id))) / area(places);
}
