"use client";

import type { PlanPoint } from "@/lib/stage/frame";
import { LengthField } from "../../fields/fields";

type Props = {
  /** What stands there: "First end". */
  readonly of: string;
  readonly at: PlanPoint;
  readonly onPlace: (at: PlanPoint) => string | null;
};

/** A place of the plan: across from the centre line, upstage from the plaster line. */
export function PlaceFields({ of, at: [x, y], onPlace }: Props) {
  return (
    <>
      <LengthField label={`${of}, across`} metres={x} onLength={(across) => onPlace([across, y])} />
      <LengthField label={`${of}, upstage`} metres={y} onLength={(upstage) => onPlace([x, upstage])} />
    </>
  );
}
