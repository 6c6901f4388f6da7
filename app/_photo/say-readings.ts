import type { CheckedDrawing } from "./checked-drawing";

/** How much was read of a drawing, and how well its sheet lies in the photograph. */
export function sayReadings({ residualMm, points }: Pick<CheckedDrawing, "residualMm" | "points">): string {
  const read = points.filter(({ read: { at } }) => at !== null).length;
  const found =
    read === 0
      ? "No point was read"
      : read === points.length
        ? "Every point was read"
        : `${read} of ${points.length} points were read`;
  const fit = residualMm === null ? "" : ` The sheet lies flat to ${residualMm.toFixed(2)} mm.`;
  return `${found}. Look at each, and drag what is not right.${fit}`;
}
