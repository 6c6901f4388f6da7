import type { PlanPoint } from "../../stage/frame";

/**
 * A place of a thing by which it is reshaped: a corner of a platform; the middle of its edge, where a new corner comes; an end of
 * a stair's lowest nosing or of masking; an end of a stair's highest nosing; a corner of furniture or the rim of a column, which
 * sizes it; a jamb of an opening; and what furniture is turned by. Numbers are from 1.
 */
export type Handle = {
  readonly kind: "corner" | "edge" | "end" | "top" | "size" | "jamb" | "turn";
  readonly number: number;
  readonly at: PlanPoint;
};

/** A handle by name, as long as its thing is chosen. */
export type HandleName = `${Handle["kind"]} ${number}`;

export function nameOfHandle({ kind, number }: Pick<Handle, "kind" | "number">): HandleName {
  return `${kind} ${number}`;
}
