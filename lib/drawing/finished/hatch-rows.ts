import type { Interval } from "../../geometry/intervals";
import type { PicturePoint } from "../../stage/frame";
import type { HatchFamily } from "./hatch-family";

/** Rings of a picture, corner after corner, X, Z, X, Z ..., and where each ring ends, in corners. */
export type PictureRings = { readonly corners: ArrayLike<number>; readonly ends: readonly number[] };

/** Paper: how many metres of the picture a millimetre of it is, and how far from the origin anything is hatched, metres. */
export type HatchPaper = { readonly mm: number; readonly reach: number };

/**
 * Where the rows of a family run inside rings, by even and odd: for each row its stretches in order, metres along it. Rows that
 * only touch a corner give nothing.
 */
export function hatchRows(
  { corners, ends }: PictureRings,
  family: HatchFamily,
  { mm, reach }: HatchPaper,
): ReadonlyMap<number, readonly Interval[]> {
  const [cos, sin] = [Math.cos(family.lean), Math.sin(family.lean)];
  const spacing = family.spacingMm * mm;
  const places = new Map<number, number[]>();
  let start = 0;
  for (const end of ends) {
    for (let i = start, last = end - 1; i < end; last = i++) {
      const [ax, az] = [corners[2 * last] as number, corners[2 * last + 1] as number];
      const [bx, bz] = [corners[2 * i] as number, corners[2 * i + 1] as number];
      const [a, b] = [az * cos - ax * sin, bz * cos - bx * sin];
      const [p, q] = [ax * cos + az * sin, bx * cos + bz * sin];
      // Half open, so that a row through a corner crosses one of its two sides.
      const first = Math.ceil(Math.max(Math.min(a, b), -reach) / spacing);
      const beyond = Math.min(Math.max(a, b), reach);
      for (let row = first; row * spacing < beyond; row++) {
        const place = p + ((q - p) * (row * spacing - a)) / (b - a);
        const here = places.get(row);
        if (here) here.push(place);
        else places.set(row, [place]);
      }
    }
    start = end;
  }
  return new Map(
    [...places].map(([row, crossed]) => {
      crossed.sort((x, y) => x - y);
      return [row, crossed.flatMap((to, i): Interval[] => (i % 2 === 1 ? [[crossed[i - 1] as number, to]] : []))];
    }),
  );
}

/** The picture point so far along a row. */
export function onRow({ lean, spacingMm }: HatchFamily, row: number, along: number, mm: number): PicturePoint {
  const [cos, sin] = [Math.cos(lean), Math.sin(lean)];
  const across = row * spacingMm * mm;
  return [along * cos - across * sin, along * sin + across * cos];
}

/** How far along the rows of a family a picture point lies. */
export function alongRow({ lean }: HatchFamily, [X, Z]: PicturePoint): number {
  return X * Math.cos(lean) + Z * Math.sin(lean);
}
