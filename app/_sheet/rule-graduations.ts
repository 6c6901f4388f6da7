import { FOOT_M, type LengthUnits } from "@/lib/measure/length";

/** Where the rule's zero lies on the plan's paper, millimetres, y down, and how far it is turned clockwise. */
export type RulePlace = { readonly x: number; readonly y: number; readonly turnDeg: number };

export const RULE_LENGTH_MM = 170;
export const RULE_HEIGHT_MM = 13;

export type Graduation = { readonly atMm: number; readonly longMm: number; readonly letters: string | null };

/** Graduations closer than these on paper run together, millimetres. */
const CLOSEST_TICK_MM = 0.9;
const CLOSEST_LETTERS_MM = 6.5;
const LONG_MM = { whole: 3.6, half: 2.6, part: 1.6 } as const;

/** Parts a unit may be graduated in, finest first; whole units between numbers, fewest first. */
const PARTS: Readonly<Record<LengthUnits, readonly number[]>> = { "ft-in": [12, 4, 2, 1], m: [20, 10, 5, 2, 1] };
const NUMBER_EVERY = [1, 2, 5, 10, 20] as const;

/**
 * The graduations of one edge of a scale rule, along its length on paper: as fine as can be told apart, numbered in whole feet
 * or metres. `ratio` is the edge's own, which need not be the drawing's.
 */
export function ruleGraduations(ratio: number, units: LengthUnits): readonly Graduation[] {
  const unitMm = ((units === "ft-in" ? FOOT_M : 1) * 1000) / ratio;
  const parts = PARTS[units].find((each) => unitMm / each >= CLOSEST_TICK_MM) ?? 1;
  const every = NUMBER_EVERY.find((each) => unitMm * each >= CLOSEST_LETTERS_MM) ?? 50;
  const count = Math.floor(((RULE_LENGTH_MM - RULE_HEIGHT_MM) / unitMm) * parts + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => {
    const whole = i % parts === 0;
    const half = parts % 2 === 0 && i % (parts / 2) === 0;
    const number = i / parts;
    return {
      atMm: (i * unitMm) / parts,
      longMm: whole ? LONG_MM.whole : half ? LONG_MM.half : LONG_MM.part,
      letters: whole && number % every === 0 ? String(number) : null,
    };
  });
}

/** The rule turned about its zero. */
export function turnRule(place: RulePlace, byDeg: number): RulePlace {
  return { ...place, turnDeg: (place.turnDeg + byDeg) % 360 };
}
