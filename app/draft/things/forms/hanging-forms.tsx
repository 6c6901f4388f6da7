"use client";

import { type Column, MASKING_KINDS, type Masking, type MaskingKind } from "@/lib/plan/plan";
import { useDesk } from "../../desk/draft-context";
import { useApply } from "../../desk/use-apply";
import { ChoiceField, LengthField, TextField } from "../../fields/fields";
import { MASKING_WORDS } from "../kind-words";
import { PlaceFields } from "./place-fields";

/** A column: its place, its thickness and its height. */
export function ColumnForm({ column }: { readonly column: Column }) {
  const { id, at, diameter, height, base } = column;
  const apply = useApply();
  const change = (members: Partial<Column>) => apply({ edit: "change-column", id, change: members });
  return (
    <div className="draft-fields">
      <TextField label="Name" value={id} onWrite={(text) => change({ id: text.trim() })} />
      <PlaceFields of="Its middle" at={at} onPlace={(place) => change({ at: place })} />
      <LengthField label="Thickness" metres={diameter} onLength={(next) => change({ diameter: next })} />
      <LengthField label="Height" metres={height} onLength={(next) => change({ height: next })} />
      <LengthField label="Stands above the floor" metres={base} onLength={(next) => change({ base: next })} />
    </div>
  );
}

/** A leg, a border or a backing: its two ends, its top, and of a border its trim. */
export function MaskingForm({ cloth }: { readonly cloth: Masking }) {
  const { id, kind, line, trim, height } = cloth;
  const usual = useDesk((desk) => desk.measures.border);
  const apply = useApply();
  const change = (members: Partial<Masking>) => apply({ edit: "change-masking", id, change: members });
  const become = (next: MaskingKind) =>
    next === "border"
      ? change({ kind: next, trim: trim ?? usual.trim, height: usual.drop })
      : change({ kind: next, trim: null, height: trim === null ? height : trim + height });
  return (
    <div className="draft-fields">
      <TextField label="Name" value={id} onWrite={(text) => change({ id: text.trim() })} />
      <ChoiceField<MaskingKind>
        label="Kind"
        words={MASKING_WORDS}
        order={MASKING_KINDS}
        value={kind}
        onChoice={become}
      />
      {trim !== null && <LengthField label="Trim" metres={trim} onLength={(next) => change({ trim: next })} />}
      <LengthField
        label={trim === null ? "Height" : "Drop"}
        metres={height}
        onLength={(next) => change({ height: next })}
      />
      <PlaceFields of="One end" at={line[0]} onPlace={(at) => change({ line: [at, line[1]] })} />
      <PlaceFields of="Other end" at={line[1]} onPlace={(at) => change({ line: [line[0], at] })} />
    </div>
  );
}
