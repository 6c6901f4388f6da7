import type { Heights } from "@/lib/draft/bring/place/as-brought-runs";
import { INCH_M, type LengthUnits } from "@/lib/measure/length";
import type { FurnitureKind, OpeningKind } from "@/lib/plan/plan";

/** What the next thing of a kind is to be like, metres: kept while a plan is drafted, changed beside the drawing. */
export type Measures = {
  readonly wall: { readonly height: number; readonly thickness: number };
  readonly opening: {
    readonly kind: OpeningKind;
    readonly width: number;
    readonly sill: number;
    readonly head: number;
    readonly depth: number;
  };
  readonly platform: { readonly height: number };
  readonly stair: { readonly steps: number; readonly riser: number; readonly tread: number };
  readonly furniture: {
    readonly kind: FurnitureKind;
    readonly width: number;
    readonly depth: number;
    readonly height: number;
  };
  readonly column: { readonly diameter: number; readonly height: number };
  readonly leg: { readonly height: number };
  readonly border: { readonly trim: number; readonly drop: number };
  readonly backing: { readonly height: number };
};

export type Size = readonly [width: number, depth: number, height: number];

/** Usual sizes in inches; sketch aids of TD&T, Fall 1984, p. 11 give the door's width and the chair's; the rest is common practice, no source. */
const FURNITURE_IN: Readonly<Record<FurnitureKind, Size>> = {
  box: [24, 24, 24],
  table: [60, 36, 30],
  chair: [18, 18, 36],
  stool: [16, 16, 18],
  sofa: [78, 34, 34],
  bed: [78, 54, 24],
  desk: [60, 30, 30],
  chest: [40, 20, 36],
  bench: [60, 16, 18],
  bookcase: [48, 14, 72],
  stove: [30, 28, 36],
  piano: [60, 26, 50],
  counter: [72, 26, 40],
};

type OpeningSize = { readonly width: number; readonly sill: number; readonly head: number; readonly depth: number };

const OPENING_IN: Readonly<Record<OpeningKind, OpeningSize>> = {
  door: { width: 30, sill: 0, head: 84, depth: 12 },
  window: { width: 36, sill: 30, head: 84, depth: 12 },
  arch: { width: 60, sill: 0, head: 96, depth: 12 },
  passage: { width: 60, sill: 0, head: 96, depth: 12 },
  niche: { width: 36, sill: 24, head: 84, depth: 12 },
};

/** A usual size, in whole centimetres where lengths are metric. */
function usual(inches: number, units: LengthUnits): number {
  return units === "ft-in" ? inches * INCH_M : Math.round(inches * INCH_M * 20) / 20;
}

export function usualFurniture(kind: FurnitureKind, units: LengthUnits): Omit<Measures["furniture"], "kind"> {
  const [width, depth, height] = FURNITURE_IN[kind].map((each) => usual(each, units)) as [number, number, number];
  return { width, depth, height };
}

export function usualOpening(kind: OpeningKind, units: LengthUnits): Omit<Measures["opening"], "kind"> {
  const { width, sill, head, depth } = OPENING_IN[kind];
  return {
    width: usual(width, units),
    sill: usual(sill, units),
    head: usual(head, units),
    depth: usual(depth, units),
  };
}

/** What things are like before the author says otherwise (stairs: Storey, fig. 248; the rest common practice, no source). */
export function usualMeasures(units: LengthUnits): Measures {
  const of = (inches: number) => usual(inches, units);
  return {
    wall: { height: of(144), thickness: units === "ft-in" ? INCH_M : 0.05 },
    opening: { kind: "door", ...usualOpening("door", units) },
    platform: { height: of(12) },
    stair: { steps: 3, riser: of(6), tread: of(12) },
    furniture: { kind: "table", ...usualFurniture("table", units) },
    column: { diameter: of(12), height: of(144) },
    leg: { height: of(216) },
    border: { trim: of(192), drop: of(72) },
    backing: { height: of(120) },
  };
}

/** What the walls and openings of a plan that is brought get, metres: a plan tells no heights. */
export function usualHeights(units: LengthUnits): Heights {
  return {
    wall: usualMeasures(units).wall.height,
    door: usualOpening("door", units).head,
    sill: usualOpening("window", units).sill,
  };
}

/** The step of the grid that a plan begins with, metres. */
export function firstGrid(units: LengthUnits): number {
  return units === "ft-in" ? 6 * INCH_M : 0.1;
}
