import { INCH_M, type LengthUnits } from "./length";

/** How finely a length is shown: `exact` for dimensions on a plan, `near` for what a mark means on the stage. */
export type Fineness = "exact" | "near";

const INCH_PARTS: Readonly<Record<Fineness, number>> = { exact: 16, near: 1 };
const METRIC_STEP_MM: Readonly<Record<Fineness, number>> = { exact: 1, near: 10 };

/** Beyond this nothing is a length of a stage, and feet and inches lose their digits, metres. */
const FARTHEST_SHOWN_M = 1e9;

/**
 * A length as drafters write it: feet and inches from one foot up, inches under a foot (Parker, Sceno-Graphic
 * Techniques, ch. 6), metric in whole millimetres. Minus sign for negative lengths.
 * Absurd lengths, which only a broken file brings, are said in words.
 */
export function printLength(metres: number, units: LengthUnits, fineness: Fineness = "exact"): string {
  const sign = metres < 0 ? "-" : "";
  const size = Math.abs(metres);
  if (!(size <= FARTHEST_SHOWN_M)) return "more than a million kilometres";
  const text = units === "m" ? printMillimetres(size, METRIC_STEP_MM[fineness]) : printFeet(size, INCH_PARTS[fineness]);
  return isZero(text) ? text : sign + text;
}

function printMillimetres(metres: number, step: number): string {
  return `${Math.round((metres * 1000) / step) * step} mm`;
}

function printFeet(metres: number, parts: number): string {
  const total = Math.round((metres / INCH_M) * parts);
  const feet = Math.floor(total / (12 * parts));
  const rest = total - feet * 12 * parts;
  const inches = Math.floor(rest / parts);
  const fraction = rest - inches * parts;
  const shown = fraction === 0 ? `${inches}` : printFraction(inches, fraction, parts, feet > 0);
  return feet === 0 ? `${shown}"` : `${feet}'-${shown}"`;
}

function printFraction(inches: number, numerator: number, denominator: number, keepZero: boolean): string {
  let [n, d] = [numerator, denominator];
  while (n % 2 === 0) [n, d] = [n / 2, d / 2];
  return inches === 0 && !keepZero ? `${n}/${d}` : `${inches} ${n}/${d}`;
}

function isZero(text: string): boolean {
  return text === '0"' || text === "0 mm";
}
