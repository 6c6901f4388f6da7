export type BarJudgement =
  | { readonly kind: "true size" }
  | {
      readonly kind: "another size";
      /** Printed so many times its size. */
      readonly share: number;
      readonly say: string;
      readonly remedy: string;
    }
  | { readonly kind: "no bar"; readonly say: string; readonly remedy: string };

/** A bar is measured with a ruler to half a millimetre, of a hundred. */
const MEASURED_MM = 0.6;
/** Shorter or longer by more than this, it is not the bar that was measured, or not in these units. */
const SHARES = { least: 0.5, most: 2 } as const;

/**
 * What a sheet's bar tells, once a student has measured it: the markers shrink with the page and cannot tell. `printedMm` is
 * how long the bar is in full size. A drawing is read by what is printed round it, so that its places are right at any size;
 * lengths laid off with a scale rule are not.
 */
export function judgeBar(printedMm: number, measuredMm: number): BarJudgement {
  const share = measuredMm / printedMm;
  if (!(share >= SHARES.least && share <= SHARES.most))
    return {
      kind: "no bar",
      say: `The bar cannot be ${measuredMm} mm long: it is printed ${printedMm} mm long.`,
      remedy: "Measure it from its first stroke to its last, in millimetres.",
    };
  if (Math.abs(measuredMm - printedMm) <= MEASURED_MM) return { kind: "true size" };
  return {
    kind: "another size",
    share,
    say: `The sheet is printed at ${percent(share)} of its size.`,
    remedy: OTHER_SIZE_REMEDY,
  };
}

/** What to do about a sheet that is not printed in full size. */
export const OTHER_SIZE_REMEDY =
  "Points placed by eye are marked rightly all the same; lengths laid off with a scale rule are not. Print the next sheet at 100 %, without fitting it to the page.";

/** A share as a reader's words have it: 97 %. */
export function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
