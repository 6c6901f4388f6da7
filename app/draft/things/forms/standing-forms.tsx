"use client";

import { FURNITURE_KINDS, type Furniture, type FurnitureKind, type Platform, type Stair } from "@/lib/plan/plan";
import { useApply } from "../../desk/use-apply";
import { ChoiceField, LengthField, NumberField, TextField } from "../../fields/fields";
import { StairCaution } from "../../hand/stair-caution";
import { FURNITURE_WORDS } from "../kind-words";
import { PlaceFields } from "./place-fields";

const DEGREE = Math.PI / 180;
const DEGREE_WORDS = "Write degrees, counter-clockwise as seen from above.";
const RISERS_WORDS = "Write a whole number of risers, 1 to 100.";

/** A platform: its height, and the corners of its outline. */
export function PlatformForm({ platform }: { readonly platform: Platform }) {
  const { id, height, base, outline } = platform;
  const apply = useApply();
  const change = (members: Partial<Platform>) => apply({ edit: "change-platform", id, change: members });
  return (
    <div className="draft-fields">
      <TextField label="Name" value={id} onWrite={(text) => change({ id: text.trim() })} />
      <LengthField label="Height" metres={height} onLength={(next) => change({ height: next })} />
      <LengthField label="Stands above the floor" metres={base} onLength={(next) => change({ base: next })} />
      {outline.map((at, i) => (
        <PlaceFields
          // biome-ignore lint/suspicious/noArrayIndexKey: a corner of an outline is known by its number
          key={i}
          of={`Corner ${i + 1}`}
          at={at}
          onPlace={(place) => change({ outline: outline.map((each, k) => (k === i ? place : each)) })}
        />
      ))}
    </div>
  );
}

/** A flight: how many risers, how high and how deep, and its lowest nosing. */
export function StairForm({ stair }: { readonly stair: Stair }) {
  const { id, steps, riser, tread, base, nosing } = stair;
  const apply = useApply();
  const change = (members: Partial<Stair>) => apply({ edit: "change-stair", id, change: members });
  return (
    <div className="draft-fields">
      <TextField label="Name" value={id} onWrite={(text) => change({ id: text.trim() })} />
      <NumberField label="Risers" value={steps} refuse={RISERS_WORDS} onNumber={(next) => change({ steps: next })} />
      <LengthField label="Riser" metres={riser} onLength={(next) => change({ riser: next })} />
      <LengthField label="Tread" metres={tread} onLength={(next) => change({ tread: next })} />
      <LengthField label="Stands above the floor" metres={base} onLength={(next) => change({ base: next })} />
      <PlaceFields of="Lowest nosing, one end" at={nosing[0]} onPlace={(at) => change({ nosing: [at, nosing[1]] })} />
      <PlaceFields of="Lowest nosing, other end" at={nosing[1]} onPlace={(at) => change({ nosing: [nosing[0], at] })} />
      <StairCaution riser={riser} tread={tread} />
    </div>
  );
}

/** A piece of furniture: its kind, its place and turn, and its sizes. */
export function FurnitureForm({ item }: { readonly item: Furniture }) {
  const { id, kind, at, turn, width, depth, height, base } = item;
  const apply = useApply();
  const change = (members: Partial<Furniture>) => apply({ edit: "change-furniture", id, change: members });
  return (
    <div className="draft-fields">
      <TextField label="Name" value={id} onWrite={(text) => change({ id: text.trim() })} />
      <ChoiceField<FurnitureKind>
        label="Kind"
        words={FURNITURE_WORDS}
        order={FURNITURE_KINDS}
        value={kind}
        onChoice={(next) => change({ kind: next })}
      />
      <PlaceFields of="Its middle" at={at} onPlace={(place) => change({ at: place })} />
      <NumberField
        label="Turned"
        value={turn / DEGREE}
        unit="°"
        refuse={DEGREE_WORDS}
        onNumber={(degrees) => change({ turn: degrees * DEGREE })}
      />
      <LengthField label="Width" metres={width} onLength={(next) => change({ width: next })} />
      <LengthField label="Depth" metres={depth} onLength={(next) => change({ depth: next })} />
      <LengthField label="Height" metres={height} onLength={(next) => change({ height: next })} />
      <LengthField label="Stands above the floor" metres={base} onLength={(next) => change({ base: next })} />
    </div>
  );
}
