"use client";

import { useId } from "react";
import type { BroughtUnit } from "@/lib/draft/bring/brought";
import type { BroughtBounds } from "@/lib/draft/bring/brought-bounds";
import { metresOf, type SizeChoice, sizeChoices } from "@/lib/draft/bring/place/size-choices";
import type { LengthUnits } from "@/lib/measure/length";
import { printLength } from "@/lib/measure/print-length";

type Props = {
  readonly unit: BroughtUnit;
  readonly bounds: BroughtBounds;
  readonly units: LengthUnits;
  readonly size: SizeChoice | null;
  readonly onSize: (size: SizeChoice | null) => void;
};

const TOLD: Readonly<Record<BroughtUnit["kind"], string>> = {
  stage: "",
  paper: "The file tells how big its paper is, and not at what scale it is drawn.",
  unknown: "The file does not tell what its numbers count.",
};

/** How big the drawing is, and what that makes of it. */
export function SizeField({ unit, bounds, units, size, onSize }: Props) {
  const id = useId();
  const choices = sizeChoices(unit);
  const metres = size && metresOf(size);
  const [across, up] = ([0, 1] as const).map((axis) => bounds.most[axis] - bounds.least[axis]) as [number, number];
  const print = (length: number) => printLength(length * (metres ?? 0), units);
  const makes =
    metres === null ? "" : `All that is drawn is then ${print(across)} across its sheet and ${print(up)} up.`;
  return (
    <div className="draft-field bring-size">
      <label htmlFor={id} className="small-lettering">
        Size of the drawing
      </label>
      <select
        id={id}
        className="look-list"
        value={size?.key ?? ""}
        aria-describedby={`${id}-note`}
        onChange={(event) => onSize(choices.find(({ key }) => key === event.target.value) ?? null)}
      >
        {!size && <option value="">choose</option>}
        {choices.map(({ key, words }) => (
          <option key={key} value={key}>
            {words}
          </option>
        ))}
      </select>
      <p id={`${id}-note`} className="draft-note">
        {[TOLD[unit.kind], makes].filter(Boolean).join(" ")}
      </p>
    </div>
  );
}
