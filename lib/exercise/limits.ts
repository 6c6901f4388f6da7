import { FOOT_SCALES, parseScale } from "../measure/scale";

/** What a file may hold, for its form and for whoever edits what will become one. */

/** The most elements a file may hold, of all kinds together, and the most entries of one list. */
export const MAX_ELEMENTS = 2000;

/** The most risers one flight may have. */
export const MAX_STEPS = 100;

/** The most letters of one text. */
export const MAX_LETTERS = 10_000;

/** A level is a whole number from 1 to this. */
export const MAX_LEVEL = 5;

/** The most letters of a name. */
export const MAX_NAME = 64;

/** A name that can stand in the name of a point: letters, digits, - and _, beginning with a letter or digit. */
export const NAME_PATTERN = /^[\p{L}\p{N}](?:[\p{L}\p{N}_-]*)$/u;

/** Names that every object or function carries already; building from them is refused. */
export function isReservedName(name: string): boolean {
  return name in {} || name === "prototype";
}

/** No sheet is drawn larger than a thousand times true size, nor smaller than one in a thousand million. */
const RATIOS = { least: 1e-3, most: 1e9 };

/** The ratio of a scale that a sheet may be drawn at, one of the architect's rule or one to anything; null for any other. */
export function sheetScaleRatio(written: string): number | null {
  const named = FOOT_SCALES.some((usual) => usual === written) || written.startsWith("1:");
  const ratio = parseScale(written);
  return named && ratio !== null && ratio >= RATIOS.least && ratio <= RATIOS.most ? ratio : null;
}

/** How many of each there are on a plan, and in how many parts. */
type Counted = {
  readonly corners: number;
  readonly walls: readonly { readonly openings?: readonly unknown[] | undefined }[];
  readonly platforms: readonly { readonly outline: readonly unknown[] }[];
  readonly stairs: readonly { readonly steps: number }[];
  readonly furniture: readonly unknown[];
  readonly columns: readonly unknown[];
  readonly masking: readonly unknown[];
};

/** How many elements a plan holds: an opening, a platform's corner and a flight's riser are elements as well. */
export function countElements({ corners, walls, platforms, stairs, furniture, columns, masking }: Counted): number {
  return (
    corners +
    walls.reduce((sum, { openings = [] }) => sum + 1 + openings.length, 0) +
    platforms.reduce((sum, { outline }) => sum + 1 + outline.length, 0) +
    stairs.reduce((sum, { steps }) => sum + steps, 0) +
    furniture.length +
    columns.length +
    masking.length
  );
}
