import type { Plan } from "../../plan/plan";
import type { PlanPoint } from "../../stage/frame";

/** What a place was caught by. */
export type Caught =
  | { readonly by: "corner"; readonly id: string }
  /** The mirror image, across the centre line, of a corner. */
  | { readonly by: "mirror image"; readonly of: string }
  | { readonly by: "centre line" }
  | { readonly by: "plaster line" }
  | { readonly by: "wall"; readonly id: string }
  | { readonly by: "prolongation"; readonly id: string }
  | { readonly by: "square"; readonly id: string }
  | { readonly by: "parallel"; readonly id: string }
  /** Level with the corner drawn from: parallel to the plaster line. */
  | { readonly by: "across" }
  /** Straight up or down stage of the corner drawn from: parallel to the centre line. */
  | { readonly by: "upstage" }
  | { readonly by: "equal length"; readonly id: string }
  | { readonly by: "grid" };

/** A line to draw while the place is held by what it was caught by, from where that begins to the place. */
export type Guide = { readonly by: Caught["by"]; readonly from: PlanPoint; readonly to: PlanPoint };

export type Snapped = { readonly at: PlanPoint; readonly to: readonly Caught[]; readonly guides: readonly Guide[] };

export type SnapContext = {
  readonly plan: Plan;
  /** Step of the grid, metres; null where places are free. */
  readonly grid: number | null;
  /** How far from a place it is caught, metres: the caller's pixels at the sheet's scale; 0 for keys. */
  readonly tolerance: number;
  /** The corner that is drawn from, or null. */
  readonly from: PlanPoint | null;
  /** Neighbours in an outline, which is caught level with them and straight upstage of them. */
  readonly beside?: readonly PlanPoint[];
  /** Corners that are being moved: neither they nor their walls catch anything. */
  readonly without: ReadonlySet<string>;
};

/** Nearer than this two places are one, whatever the tolerance, metres. */
export const EXACT_M = 1e-9;
