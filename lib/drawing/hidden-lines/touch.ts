/**
 * A point nearer to a face than this lies on it, metres: a tenth of a millimetre. It is a thousand times the rounding of
 * lengths given to the tenth of a micron, and thinner than any cloth or paper that stands on a stage, so nothing real that is
 * behind a face is taken to be on it.
 */
export const TOUCH_M = 1e-4;

/**
 * A corner nearer than this to a line of the picture stands on it, metres on the picture plane: a micron. Far above the
 * rounding of a projection, far below what can be drawn, even when the sheet is larger than life.
 */
export const ON_LINE_M = 1e-6;

/**
 * A piece of line, or a gap in one, shorter than this is no piece and no gap, metres on the picture plane: a hundredth of a
 * millimetre at life size, below a pencil's point at any scale. Rounding where three edges meet in one point makes such specks.
 */
export const SPECK_M = 1e-5;
