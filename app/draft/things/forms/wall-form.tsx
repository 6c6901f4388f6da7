"use client";

import { Press } from "@/app/_parts/press";
import type { Side, Wall } from "@/lib/plan/plan";
import { wallLine } from "@/lib/plan/wall-line";
import { useExercise } from "../../desk/draft-context";
import { useApply } from "../../desk/use-apply";
import { ChoiceField, LengthField, NumberField, TextField } from "../../fields/fields";

/** A wall: its name, its length and angle, its height and thickness, and which side of it is onstage. */
export function WallForm({ wall }: { readonly wall: Wall }) {
  const { plan } = useExercise();
  const apply = useApply();
  const { id, from, to } = wall;
  const line = wallLine(plan, wall);
  const change = (members: Partial<Omit<Wall, "from" | "to" | "openings">>) =>
    apply({ edit: "change-wall", id, change: members });
  const degrees = line ? (Math.atan2(line.along[1], line.along[0]) * 180) / Math.PI : 0;
  const sides: Readonly<Record<Side, string>> = {
    right: `right of ${from} to ${to}`,
    left: `left of ${from} to ${to}`,
  };
  return (
    <div className="draft-fields">
      <TextField label="Name" value={id} onWrite={(text) => change({ id: text.trim() })} />
      {line && (
        <>
          <LengthField
            label="Length"
            metres={line.length}
            onLength={(length) => apply({ edit: "set-wall-length", id, length })}
            note={`${to} moves.`}
          />
          <NumberField
            label="Angle"
            value={degrees}
            unit="°"
            refuse="Write degrees: 0 toward stage left, 90 upstage."
            onNumber={(angle) =>
              apply({ edit: "set-wall-length", id, length: line.length, angle: (angle * Math.PI) / 180 })
            }
          />
        </>
      )}
      <LengthField label="Height" metres={wall.height} onLength={(height) => change({ height })} />
      <LengthField label="Thickness" metres={wall.thickness} onLength={(thickness) => change({ thickness })} />
      <LengthField label="Stands above the floor" metres={wall.base} onLength={(base) => change({ base })} />
      <ChoiceField
        label="Onstage is"
        words={sides}
        order={["right", "left"]}
        value={wall.onstage}
        onChoice={(onstage) => change({ onstage })}
      />
      {line && (
        <Press weight="small" onClick={() => apply({ edit: "split-wall", id, at: line.length / 2 })}>
          Put a corner in its middle
        </Press>
      )}
    </div>
  );
}
