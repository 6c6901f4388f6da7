import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import type { Affine } from "@/lib/draft/bring/affine";
import type { Pointing } from "@/lib/draft/bring/pointing/pointing";

/** A photograph under a plan. */
export type Trace = {
  /** What it was pointed at on: upright, straightened if it was, its lines and its paper. */
  readonly picture: Blob;
  /** Its lines alone, black on nothing: what lies under the plan. */
  readonly lines: Blob;
  readonly width: number;
  readonly height: number;
  /** From its pixels, right and down, to metres of the plan. */
  readonly toPlan: Affine;
  /** What was pointed at and written, for it to be laid again. */
  readonly places: Pointing["places"];
  readonly written: string;
  /** How strongly it shows, percent. */
  readonly strength: number;
  readonly shown: boolean;
};

/** What is drawn on it stays the stronger, and the lines can still be seen. */
export const USUAL_STRENGTH = 45;
export const LEAST_STRENGTH = 15;

const NUMBERS_OF_A_MAP = 6;

/** What was kept in the browser, if it is what this page keeps; else null. */
export function readTrace(kept: unknown): Trace | null {
  if (!isRecord(kept)) return null;
  const { picture, lines, width, height, toPlan, places, written, strength, shown } = kept;
  const sound =
    picture instanceof Blob &&
    lines instanceof Blob &&
    [width, height, strength].every((each) => typeof each === "number" && each > 0) &&
    Array.isArray(toPlan) &&
    toPlan.length === NUMBERS_OF_A_MAP &&
    toPlan.every(Number.isFinite) &&
    isRecord(places) &&
    Object.values(places).every((at) => Array.isArray(at) && at.length === 2 && at.every(Number.isFinite)) &&
    typeof written === "string" &&
    typeof shown === "boolean";
  return sound ? (kept as Trace) : null;
}
