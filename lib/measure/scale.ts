/** The usual drawing scales, largest drawing last, for a scale rule and for choosing one. */
export const FOOT_SCALES = ["1/8in=1ft", "3/16in=1ft", "1/4in=1ft", "3/8in=1ft", "1/2in=1ft", "1in=1ft"] as const;
export const METRIC_SCALES = ["1:100", "1:50", "1:25", "1:24", "1:20"] as const;

const INCH_SCALE = /^(?:(\d+)\/(\d+)|(\d+))in=1ft$/;
const RATIO_SCALE = /^1:(\d+(?:\.\d+)?)$/;

/** Stage lengths to paper lengths: 48 for `1/4in=1ft`, 50 for `1:50`. Null for anything that is not a scale. */
export function parseScale(written: string): number | null {
  const inch = INCH_SCALE.exec(written);
  const inches = inch ? (inch[3] !== undefined ? Number(inch[3]) : Number(inch[1]) / Number(inch[2])) : null;
  const ratio = inches !== null ? 12 / inches : Number(RATIO_SCALE.exec(written)?.[1] ?? Number.NaN);
  return Number.isFinite(ratio) && ratio > 0 ? ratio : null;
}

/** A scale as it is lettered on a sheet: `1/4" = 1'-0"`, `1:50`. */
export function printScale(written: string): string {
  const inch = INCH_SCALE.exec(written);
  return inch ? `${inch[3] ?? `${inch[1]}/${inch[2]}`}" = 1'-0"` : written;
}

/** Picture metres to millimetres of paper. */
export function toPaperMm(metres: number, scaleRatio: number): number {
  return (metres * 1000) / scaleRatio;
}
