"use client";

import { wallClearances } from "@/lib/draft/snapping/wall-clearances";
import { OPENING_KINDS, type Opening, type OpeningKind, type Wall } from "@/lib/plan/plan";
import { useDesk, useExercise, useShownExercise } from "../../desk/draft-context";
import { useApply } from "../../desk/use-apply";
import { ChoiceField, LengthField, TextField } from "../../fields/fields";
import { usualOpening } from "../../hand/measures";
import { OPENING_WORDS } from "../kind-words";

type Props = { readonly wall: Wall; readonly opening: Opening };

const LEAVES = { one: "One", two: "A pair" } as const;
const HINGES = { upstage: "Upstage jamb", start: "First jamb", end: "Second jamb" } as const;
const SWINGS = { onstage: "Onstage", offstage: "Offstage" } as const;

/** An opening: its kind, its place along the wall by either end, its sizes, and how a door hangs. */
export function OpeningForm({ wall, opening: kept }: Props) {
  const { units } = useExercise();
  const shown = useShownExercise();
  const apply = useApply();
  const trying = useDesk((desk) => desk.trying !== null);
  const opening =
    (trying && shown.plan.walls.find(({ id }) => id === wall.id)?.openings.find(({ id }) => id === kept.id)) || kept;
  const { id, kind, at, width, sill, head, depth, leaves, hinge, swing } = opening;
  const change = (members: Partial<Opening>) => apply({ edit: "change-opening", wall: wall.id, id, change: members });
  const clear = wallClearances(shown.plan, wall.id, opening, id);
  const become = (next: OpeningKind) => {
    const usual = usualOpening(next, units);
    change({ kind: next, depth: next === "niche" ? (depth ?? usual.depth) : null });
  };
  return (
    <div className="draft-fields">
      <TextField label="Name" value={id} onWrite={(text) => change({ id: text.trim() })} />
      <ChoiceField label="Kind" words={OPENING_WORDS} order={OPENING_KINDS} value={kind} onChoice={become} />
      <LengthField label={`From ${wall.from}`} metres={at} onLength={(place) => change({ at: place })} />
      {clear && (
        <LengthField
          label={`From ${wall.to}`}
          metres={clear.end.length}
          onLength={(place) => change({ at: at + clear.end.length - place })}
        />
      )}
      <LengthField label="Width" metres={width} onLength={(next) => change({ width: next })} />
      <LengthField label="Sill" metres={sill} onLength={(next) => change({ sill: next })} />
      <LengthField label="Head" metres={head} onLength={(next) => change({ head: next })} />
      {kind === "niche" && (
        <LengthField
          label="Depth"
          metres={depth ?? usualOpening("niche", units).depth}
          onLength={(next) => change({ depth: next })}
        />
      )}
      {kind === "door" && (
        <>
          <ChoiceField
            label="Leaves"
            words={LEAVES}
            order={["one", "two"]}
            value={leaves === 2 ? "two" : "one"}
            onChoice={(next) => change({ leaves: next === "two" ? 2 : 1 })}
          />
          {leaves === 1 && (
            <ChoiceField
              label="Hinges"
              words={HINGES}
              order={["upstage", "start", "end"]}
              value={hinge ?? "upstage"}
              onChoice={(next) => change({ hinge: next === "upstage" ? null : next })}
            />
          )}
          <ChoiceField
            label="Swings"
            words={SWINGS}
            order={["offstage", "onstage"]}
            value={swing}
            onChoice={(next) => change({ swing: next })}
          />
        </>
      )}
    </div>
  );
}
