import { FOOT_M, INCH_M } from "../../measure/length";
import type { BroughtLayer, LikelyUnit } from "./brought";
import { broughtBounds } from "./brought-bounds";

const UNITS: readonly (LikelyUnit & { readonly metric: boolean })[] = [
  { name: "inches", metres: INCH_M, metric: false },
  { name: "feet", metres: FOOT_M, metric: false },
  { name: "millimetres", metres: 0.001, metric: true },
  { name: "centimetres", metres: 0.01, metric: true },
  { name: "metres", metres: 1, metric: true },
];

/** Plans of stages are this wide, from a black box to an opera house with its wings; common practice, no source. */
const STAGE_WIDTHS_M = { least: 4, most: 80 } as const;

/** Units that would make the drawing as wide as a stage, those of the system it was drawn in first. */
export function likelyUnits(layers: readonly BroughtLayer[], metric: boolean | null): readonly LikelyUnit[] {
  const bounds = broughtBounds(layers);
  if (!bounds) return [];
  const width = Math.max(bounds.most[0] - bounds.least[0], bounds.most[1] - bounds.least[1]);
  return UNITS.filter(({ metres }) => width * metres >= STAGE_WIDTHS_M.least && width * metres <= STAGE_WIDTHS_M.most)
    .toSorted((a, b) => Number(b.metric === metric) - Number(a.metric === metric))
    .map(({ name, metres }) => ({ name, metres }));
}
