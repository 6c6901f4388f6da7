import { type PaneState, viewOfPane } from "./pane-state";
import { pxPerMm } from "./view";

/** Letters of a drawing shown smaller than this, pixels of the screen to a millimetre of paper, cannot be read. */
const LEGIBLE_PX_PER_MM = 3.2;
/** From the back of the room everything must be larger by this. */
const PROJECTED = 1.4;
const MOST_TIMES = 6;
/** Sizes change by quarters, so that a pane being resized is not laid out anew at every pixel. */
const QUARTER = 4;

/**
 * How many times larger lettering and line weights must be than on paper to be read in a small pane. A drafter does the
 * same: a drawing at half the scale keeps the height of its letters.
 */
export function legibleTimes(pane: PaneState, scaleRatio: number): number {
  if (pane.size.width === 0) return 1;
  const whole = pxPerMm(viewOfPane(pane), scaleRatio) / pane.factor;
  const least = LEGIBLE_PX_PER_MM * (isProjected() ? PROJECTED : 1);
  const times = Math.ceil((least / whole) * QUARTER) / QUARTER;
  return Math.min(Math.max(times, 1), MOST_TIMES);
}

/** The size the table is seen at; changing it lays out every pane anew, and so asks again. */
function isProjected(): boolean {
  return typeof document !== "undefined" && document.documentElement.dataset.size === "projector";
}
