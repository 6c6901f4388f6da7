import { FOOT_M, type LengthUnits } from "../measure/length";

/**
 * The author's ruler: sets are thought out in feet and written in feet or in metres, where 300 mm stand for a foot and
 * 25 mm for an inch (the usual metric module; common practice, no source).
 */
export type Ruler = {
  readonly units: LengthUnits;
  /** Metres of a foot on this ruler. */
  readonly foot: number;
  /** A place, on the author's grid of half feet or of 100 mm, metres. */
  place(feet: number): number;
  /** A stock size, to the inch or to 25 mm, metres. */
  size(feet: number): number;
  /** Metres in feet of this ruler. */
  feet(metres: number): number;
};

/** Parts of a foot on the grid of places: half feet, and 100 mm of 300. */
const GRID_PARTS: Readonly<Record<LengthUnits, number>> = { "ft-in": 2, m: 3 };
const METRIC_FOOT_M = 0.3;
const INCHES = 12;

export function takeRuler(units: LengthUnits): Ruler {
  const foot = units === "ft-in" ? FOOT_M : METRIC_FOOT_M;
  const parts = GRID_PARTS[units];
  return {
    units,
    foot,
    place: (feet) => (Math.round(feet * parts) * foot) / parts,
    size: (feet) => (Math.round(feet * INCHES) * foot) / INCHES,
    feet: (metres) => metres / foot,
  };
}
