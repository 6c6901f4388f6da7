import type { PlanPoint } from "../../../stage/frame";
import type { Thing } from "../../draft";

/**
 * A stretch of sight lines that see one kind of thing, from one crossing of the plaster line to another, with how far upstage
 * they begin to see it and how far they see, at both.
 */
export type Fan = {
  readonly crossings: readonly [number, number];
  readonly near: readonly [PlanPoint, PlanPoint];
  readonly far: readonly [PlanPoint, PlanPoint];
};

/**
 * What sight lines of a fan see that is not the set: offstage through an opening, a wall's back, the stage behind the set past a
 * wall's end, or the wings past everything.
 */
export type Glimpse =
  | { readonly kind: "through"; readonly thing: Thing }
  | { readonly kind: "back"; readonly thing: Thing }
  | { readonly kind: "beside"; readonly thing: Thing }
  | { readonly kind: "past"; readonly side: "right" | "left" };
