import type { Exercise } from "../../exercise/exercise";
import { askablePoints, type PointUse } from "./askable-points";

/** The drawings on which points are pointed at. */
export type MarkPlane = "plan" | "picture";

/** A point that can be asked, or several that stand over each other on the plan: lowest first. */
export type MarkPlace = {
  readonly names: readonly string[];
  /** Metres of the drawing. */
  readonly at: readonly [number, number];
  /** Their numbers in the order asked, from 1; none that is not asked. */
  readonly numbers: readonly number[];
  readonly use: PointUse;
};

/** Points nearer than this on a drawing are one place, metres: a tenth of a millimetre. */
const SAME_PLACE_M = 1e-4;

/**
 * The places of a drawing where points can be pointed at, in the plan's order. On the plan a foot and its top are one place;
 * in the picture every point is its own. Of a place, asked counts before given, and given before neither.
 */
export function markPlaces(exercise: Exercise, plane: MarkPlane): readonly MarkPlace[] {
  const order = new Map(exercise.task.marks.map((name, i) => [name, i + 1]));
  const found = new Map<
    string,
    { at: readonly [number, number]; points: { name: string; up: number; use: PointUse }[] }
  >();
  for (const { points } of askablePoints(exercise))
    for (const { point, use } of points) {
      const at = plane === "plan" ? ([point.at[0], point.at[1]] as const) : point.picture;
      if (!at) continue;
      const key = plane === "picture" ? point.name : at.map((each) => Math.round(each / SAME_PLACE_M) + 0).join(" ");
      const place = found.get(key) ?? { at: [at[0], at[1]] as const, points: [] };
      place.points.push({ name: point.name, up: point.at[2], use });
      found.set(key, place);
    }
  return [...found.values()].map(({ at, points }): MarkPlace => {
    const sorted = points.toSorted((a, b) => a.up - b.up);
    const uses = sorted.map(({ use }) => use);
    return {
      names: sorted.map(({ name }) => name),
      at,
      numbers: sorted.flatMap(({ name }) => order.get(name) ?? []),
      use: uses.includes("asked") ? "asked" : uses.includes("given") ? "given" : "free",
    };
  });
}

/** The place within reach that is nearest, metres; null where there is none. */
export function markPlaceAt(
  places: readonly MarkPlace[],
  [x, y]: readonly [number, number],
  reach: number,
): MarkPlace | null {
  let best: { readonly place: MarkPlace; readonly off: number } | null = null;
  for (const place of places) {
    const off = Math.hypot(place.at[0] - x, place.at[1] - y);
    if (off <= reach && (!best || off < best.off)) best = { place, off };
  }
  return best?.place ?? null;
}
