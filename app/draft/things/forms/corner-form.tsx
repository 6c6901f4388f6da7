"use client";

import type { PlanPoint } from "@/lib/stage/frame";
import { useApply } from "../../desk/use-apply";
import { LengthField, TextField } from "../../fields/fields";

/** A corner, or a point of the floor: its name and its place. */
export function CornerForm({ id, at: [x, y] }: { readonly id: string; readonly at: PlanPoint }) {
  const apply = useApply();
  return (
    <div className="draft-fields">
      <TextField
        label="Name"
        value={id}
        onWrite={(text) => apply({ edit: "rename-corner", id, to: text.trim() })}
        note="Marks are asked by it."
      />
      <LengthField
        label="Across"
        metres={x}
        onLength={(across) => apply({ edit: "move-corner", id, to: [across, y] })}
        note="Stage left; stage right with a minus."
      />
      <LengthField
        label="Upstage"
        metres={y}
        onLength={(upstage) => apply({ edit: "move-corner", id, to: [x, upstage] })}
      />
    </div>
  );
}
