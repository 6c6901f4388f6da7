import { FOOT_M, INCH_M, type LengthUnits } from "../../measure/length";

export const SENT_UNITS = ["inches", "feet", "millimetres", "metres"] as const;
/** What a sent file counts in; its header says so. */
export type SentUnit = (typeof SENT_UNITS)[number];

export const SENT_UNIT_M: Readonly<Record<SentUnit, number>> = {
  inches: INCH_M,
  feet: FOOT_M,
  millimetres: 0.001,
  metres: 1,
};

/** What a drafter of these units expects a file to count in. */
export function usualUnit(units: LengthUnits): SentUnit {
  return units === "ft-in" ? "inches" : "millimetres";
}
