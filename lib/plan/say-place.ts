import type { LengthUnits } from "../measure/length";
import { printLength } from "../measure/print-length";

/** Nearer to a line than this a point stands on it, metres. */
export const ON_LINE_M = 0.0005;

/** Where a place stands beside the centre line: "7'-0" stage right of the centre line". */
export function sayAcross(x: number, units: LengthUnits): string {
  if (Math.abs(x) < ON_LINE_M) return "on the centre line";
  return `${printLength(Math.abs(x), units)} stage ${x > 0 ? "left" : "right"} of the centre line`;
}

/** Where a place stands beside the plaster line: "14'-0" upstage of the plaster line". */
export function sayDepth(y: number, units: LengthUnits): string {
  if (Math.abs(y) < ON_LINE_M) return "on the plaster line";
  return `${printLength(Math.abs(y), units)} ${y > 0 ? "upstage" : "downstage"} of the plaster line`;
}
