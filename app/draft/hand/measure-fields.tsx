"use client";

import { FURNITURE_KINDS, type FurnitureKind, OPENING_KINDS, type OpeningKind } from "@/lib/plan/plan";
import { useDesk, useDeskStore } from "../desk/draft-context";
import { ChoiceField, LengthField, NumberField } from "../fields/fields";
import { FURNITURE_WORDS, OPENING_WORDS } from "../things/kind-words";
import type { Hand } from "./hand";
import { type Measures, usualFurniture, usualOpening } from "./measures";
import { StairCaution } from "./stair-caution";

/** What the thing in hand is to be like. */
export function MeasureFields({ hand }: { readonly hand: Hand }) {
  const measures = useDesk((desk) => desk.measures);
  const units = useDesk((desk) => desk.history.draft.exercise.units);
  const store = useDeskStore();
  const set = <Part extends keyof Measures>(part: Part, change: Partial<Measures[Part]>) => {
    store.getState().setMeasures({ [part]: { ...measures[part], ...change } } as Partial<Measures>);
    return null;
  };
  /** A line for one length of a part, above 0 or, where it may be, 0. */
  const line = <Part extends keyof Measures>(
    part: Part,
    member: keyof Measures[Part],
    label: string,
    least = false,
  ) => (
    <LengthField
      key={`${part}.${String(member)}`}
      label={label}
      metres={measures[part][member] as number}
      onLength={(metres) =>
        metres < 0 || (metres === 0 && !least)
          ? `This length must be ${least ? "0 or more" : "above 0"}.`
          : set(part, { [member]: metres } as Partial<Measures[Part]>)
      }
    />
  );
  const fields = () => {
    switch (hand.kind) {
      case "walls":
        return [line("wall", "height", "Height"), line("wall", "thickness", "Thickness", true)];
      case "opening":
        return [
          <ChoiceField<OpeningKind>
            key="kind"
            label="Kind"
            words={OPENING_WORDS}
            order={OPENING_KINDS}
            value={measures.opening.kind}
            onChoice={(kind) => set("opening", { kind, ...usualOpening(kind, units) })}
          />,
          line("opening", "width", "Width"),
          line("opening", "sill", "Sill", true),
          line("opening", "head", "Head"),
          ...(measures.opening.kind === "niche" ? [line("opening", "depth", "Depth")] : []),
        ];
      case "platform":
        return [line("platform", "height", "Height")];
      case "line":
        if (hand.draws === "stair")
          return [
            <NumberField
              key="steps"
              label="Risers"
              value={measures.stair.steps}
              refuse="Write a whole number of risers, 1 to 100."
              onNumber={(steps) =>
                Number.isInteger(steps) && steps >= 1 && steps <= 100
                  ? set("stair", { steps })
                  : "Write a whole number of risers, 1 to 100."
              }
            />,
            line("stair", "riser", "Riser"),
            line("stair", "tread", "Tread"),
            <StairCaution key="caution" {...measures.stair} />,
          ];
        if (hand.draws === "border") return [line("border", "trim", "Trim"), line("border", "drop", "Drop")];
        return [line(hand.draws, "height", "Height")];
      case "put":
        if (hand.puts === "furniture")
          return [
            <ChoiceField<FurnitureKind>
              key="kind"
              label="Kind"
              words={FURNITURE_WORDS}
              order={FURNITURE_KINDS}
              value={measures.furniture.kind}
              onChoice={(kind) => set("furniture", { kind, ...usualFurniture(kind, units) })}
            />,
            line("furniture", "width", "Width"),
            line("furniture", "depth", "Depth"),
            line("furniture", "height", "Height"),
          ];
        return hand.puts === "column"
          ? [line("column", "diameter", "Thickness"), line("column", "height", "Height")]
          : [];
      default:
        return [];
    }
  };
  return <div className="draft-fields">{fields()}</div>;
}
