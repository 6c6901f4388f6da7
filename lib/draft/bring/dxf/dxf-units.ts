import { FOOT_M, INCH_M } from "../../../measure/length";
import type { LikelyUnit } from "../brought";

/** What a DXF header's `$INSUNITS` means, from the published DXF reference (from memory); astronomers' units are left out. */
const UNITS: Readonly<Record<number, LikelyUnit>> = {
  1: { name: "inches", metres: INCH_M },
  2: { name: "feet", metres: FOOT_M },
  3: { name: "miles", metres: 1609.344 },
  4: { name: "millimetres", metres: 0.001 },
  5: { name: "centimetres", metres: 0.01 },
  6: { name: "metres", metres: 1 },
  7: { name: "kilometres", metres: 1000 },
  8: { name: "microinches", metres: INCH_M * 1e-6 },
  9: { name: "thousandths of an inch", metres: INCH_M * 1e-3 },
  10: { name: "yards", metres: 0.9144 },
  11: { name: "angstroms", metres: 1e-10 },
  12: { name: "nanometres", metres: 1e-9 },
  13: { name: "microns", metres: 1e-6 },
  14: { name: "decimetres", metres: 0.1 },
  15: { name: "dekametres", metres: 10 },
  16: { name: "hectometres", metres: 100 },
  21: { name: "survey feet", metres: 1200 / 3937 },
};

/** The unit a header's number stands for, or null when it tells none. */
export function dxfUnit(code: number | undefined): LikelyUnit | null {
  return (code === undefined ? undefined : UNITS[code]) ?? null;
}
