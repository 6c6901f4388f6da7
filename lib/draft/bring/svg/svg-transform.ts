import svgpath from "svgpath";
import { type Affine, AS_IT_IS } from "../affine";

const STEP = /\s*(?:matrix|translate|scale|rotate|skewX|skewY)\s*\([^()]*\)[\s,]*/g;

/** The map that a `transform` attribute writes, or null when it is not understood. */
export function svgTransform(written: string | undefined): Affine | null {
  if (written === undefined || written.trim() === "" || written.trim() === "none") return AS_IT_IS;
  if (written.replace(STEP, "").trim() !== "") return null;
  // Where it takes the origin and the ends of the two axes tells the whole map.
  const ends: (readonly [number, number])[] = [];
  svgpath("M0 0L1 0L0 1")
    .transform(written)
    .iterate((segment) => {
      if (segment[0] === "M" || segment[0] === "L") ends.push([segment[1], segment[2]]);
    });
  const [o, x, y] = ends;
  if (!o || !x || !y) return null;
  const map: Affine = [x[0] - o[0], x[1] - o[1], y[0] - o[0], y[1] - o[1], o[0], o[1]];
  return map.every(Number.isFinite) ? map : null;
}
