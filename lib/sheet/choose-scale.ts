import type { LengthUnits } from "../measure/length";
import { FOOT_SCALES, METRIC_SCALES, parseScale } from "../measure/scale";

export type Scale = {
  /** As written, `1/8in=1ft`. */
  readonly written: string;
  /** Stage lengths to paper lengths: 96. */
  readonly ratio: number;
};

/**
 * Scales between and under the usual ones: 3/32 in and 1/16 in stand on an architect's scale rule, 1:75 and 1:125 on a metric
 * one (from memory), 1:200 in ISO 5455.
 */
const MORE: Readonly<Record<LengthUnits, readonly string[]>> = {
  "ft-in": ["1/16in=1ft", "3/32in=1ft"],
  m: ["1:200", "1:125", "1:75"],
};

/** The scales a sheet may be printed at, the largest drawing first. */
export function sheetScales(units: LengthUnits): readonly Scale[] {
  const written: readonly string[] = [...MORE[units], ...(units === "m" ? METRIC_SCALES : FOOT_SCALES)];
  return written
    .flatMap((each): Scale[] => {
      const ratio = parseScale(each);
      return ratio === null ? [] : [{ written: each, ratio }];
    })
    .sort((a, b) => a.ratio - b.ratio);
}

/** The largest standard scale for which `lay` finds a place for everything, with what it found; null when none does. */
export function chooseScale<Laid>(
  units: LengthUnits,
  lay: (scale: Scale) => Laid | null,
): { readonly scale: Scale; readonly laid: Laid } | null {
  for (const scale of sheetScales(units)) {
    const laid = lay(scale);
    if (laid !== null) return { scale, laid };
  }
  return null;
}
