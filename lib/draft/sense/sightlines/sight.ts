import type { PlanPoint } from "../../../stage/frame";
import type { Thing } from "../../draft";
import type { Edit } from "../../edit";
import type { Fan, Glimpse } from "./fan";
import type { GapAbove } from "./gaps-above";
import type { Seat } from "./seat";

/** Something offstage that a seat sees in the plan: which sight lines see it, and the floor they see of it. */
export type OffstageSight = {
  readonly what: Glimpse;
  readonly fans: readonly Fan[];
  readonly outlines: readonly (readonly PlanPoint[])[];
};

/** What one seat sees of a set, and what it should not. */
export type Sight = {
  readonly seat: Seat;
  /** All of the stage that is seen upstage of the plaster line, as outlines of the plan. */
  readonly seen: readonly (readonly PlanPoint[])[];
  readonly offstage: readonly OffstageSight[];
  /** The share of each wall's onstage face that is not seen, 0 to 1. */
  readonly walls: readonly { readonly id: string; readonly hidden: number }[];
  readonly gaps: readonly GapAbove[];
  /** The same in sentences. */
  readonly remarks: readonly Remark[];
};

export type Sightlines = readonly Sight[];

/** A sentence on what a seat sees, what could be done about it, and what it speaks of. */
export type Remark = {
  readonly say: string;
  readonly remedy: string | null;
  readonly things: readonly Thing[];
  readonly edit?: Edit;
};
