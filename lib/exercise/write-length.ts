import { FOOT_M, INCH_M, type LengthUnits } from "../measure/length";
import { printLength } from "../measure/print-length";

/** How far sums of tidy lengths stray by rounding alone: what is nearer to a tidy length than this is that length, metres. */
const ROUNDING_M = 1e-10;

/** Parts of an inch on an author's rule. */
const INCH_PARTS = 16;

/** Lengths beyond this lose their tidy parts to rounding, metres. */
const FARTHEST_TIDY_M = 10_000;

/**
 * A length as an author writes it, so that reading it gives the same length: on 1/16 in or on the millimetre in the words of
 * the trade (12, 8'-6", 9 1/2"; 9, 5.4, 750 mm), else a bare number of feet or metres with all its digits.
 */
export function writeLength(metres: number, units: LengthUnits): number | string {
  return units === "ft-in" ? writeFeet(metres) : writeMetres(metres);
}

function writeFeet(metres: number): number | string {
  const parts = Math.round((metres / INCH_M) * INCH_PARTS);
  if (!isTidy((parts / INCH_PARTS) * INCH_M, metres)) return metres / FOOT_M;
  const foot = 12 * INCH_PARTS;
  return parts % foot === 0 ? unsigned(parts / foot) : printLength((parts / INCH_PARTS) * INCH_M, "ft-in");
}

function writeMetres(metres: number): number | string {
  const mm = Math.round(metres * 1000);
  if (!isTidy(mm / 1000, metres)) return metres;
  return mm % 100 === 0 ? unsigned(mm / 1000) : `${mm} mm`;
}

function isTidy(tidy: number, metres: number): boolean {
  return Math.abs(tidy - metres) < ROUNDING_M && Math.abs(metres) < FARTHEST_TIDY_M;
}

/** Nothing is written as -0. */
function unsigned(value: number): number {
  return value === 0 ? 0 : value;
}
