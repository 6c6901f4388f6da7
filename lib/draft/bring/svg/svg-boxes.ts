import { INCH_M } from "../../../measure/length";
import { type Affine, AS_IT_IS } from "../affine";
import { svgLength, userUnits, viewBoxOf } from "./svg-lengths";
import type { SvgElement } from "./svg-tree";

type Attributes = SvgElement["attributes"];

/** A pixel of SVG on paper, metres: 96 to the inch (W3C, CSS Values and Units, 6.2, from memory). */
const PIXEL_M = INCH_M / 96;

/** Metres of paper in a pixel when the outermost box has a size on paper, and that size's unit; else 1 and no name. */
export function paperOf({ attributes }: SvgElement): { readonly scale: number; readonly name: string | null } {
  const sides = [svgLength(attributes.get("width")), svgLength(attributes.get("height"))];
  const sized = sides.find((side) => side?.paperM);
  return sized?.name && sized.amount > 0 ? { scale: PIXEL_M, name: sized.name } : { scale: 1, name: null };
}

/**
 * From what is inside a box with a viewBox to what is round it: fitted in whole, in the middle. `size` has its width and height,
 * which stand on the `use` that calls for a symbol; a side that is not told follows the other.
 */
export function boxOf({ name, attributes }: SvgElement, size: Attributes = attributes): Affine {
  if (name !== "svg" && name !== "symbol") return AS_IT_IS;
  const box = viewBoxOf(attributes.get("viewBox"));
  const at = name === "svg" ? [userUnits(attributes.get("x")), userUnits(attributes.get("y"))] : [0, 0];
  const [x = 0, y = 0] = at;
  if (!box) return [1, 0, 0, 1, x, y];
  const side = (key: string, inside: number) => {
    const length = userUnits(svgLength(size.get(key)) ? size.get(key) : undefined);
    return length > 0 ? length / inside : null;
  };
  const [across, up] = [side("width", box[2]), side("height", box[3])];
  const scale = Math.min(across ?? up ?? 1, up ?? across ?? 1);
  const spare = (fit: number | null, inside: number) => ((fit ?? scale) - scale) * inside * 0.5;
  return [scale, 0, 0, scale, x + spare(across, box[2]) - scale * box[0], y + spare(up, box[3]) - scale * box[1]];
}
