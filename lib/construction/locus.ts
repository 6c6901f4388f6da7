import { printLength } from "../measure/print-length";
import type { PicturePoint } from "../stage/frame";
import { type Sheet, samePlace } from "./board";
import type { Steps } from "./steps";

/** A line known to pass through the target, and how to draw it from what is on the sheet. */
export type Locus = {
  /** The method it belongs to, in a word or two. */
  readonly method: string;
  /** Of two constructions as short, the one a teacher would show first has the smaller sum of these. */
  readonly rank: number;
  /** Draws it; the number of its line, or null where it cannot be drawn. */
  draw(steps: Steps): number | null;
};

/** Lengths smaller than this are nothing, metres. */
export const NOTHING_M = 1e-12;

const CLOSE = (value: number) => Math.abs(value) < NOTHING_M;

/** A point laid off, the step on the plaster line that was used (null when none was), and what to call it in a sentence. */
export type LaidOff = { readonly at: PicturePoint; readonly foot: number | null; readonly say: string };

/**
 * The point of the picture plane at offset `u` and height `z`, laid off true size: on the plaster line, then up. Points
 * the sheet has from the start take no step. `from` is a step on the plaster line to measure from, instead of the centre
 * line; `name` is what the point is called when it is the one wanted. Returns the point and, when one was used, the step
 * on the plaster line.
 */
export function layOff(
  board: Sheet,
  steps: Steps,
  u: number,
  z: number,
  from: number | null = null,
  name = "",
): LaidOff {
  const known = board.landmarks.find((landmark) => samePlace(landmark.at, [u, z]));
  if (known) return { at: known.at, foot: null, say: known.say };
  const { units } = board;
  const origin = from === null ? 0 : steps.at(from)[0];
  const reached = name === "" ? "" : ` That is ${name}.`;
  const foot = CLOSE(u)
    ? null
    : steps.measure({
        on: "plaster line",
        from: from ?? "centre line",
        length: u - origin,
        say: sayMeasure(u - origin, from, units) + (CLOSE(z) ? reached : ""),
      });
  if (CLOSE(z)) return { at: foot === null ? [0, 0] : steps.at(foot), foot, say: `mark ${foot}` };
  const top = steps.measure({
    on: "upright",
    from: foot ?? "centre line",
    length: z,
    say: `Stand ${printLength(z, units)} upright on ${foot === null ? "the foot of the centre line" : `mark ${foot}`}: over the plaster line heights are true size too.${reached}`,
  });
  return { at: steps.at(top), foot, say: `mark ${top}` };
}

function sayMeasure(length: number, from: number | null, units: Sheet["units"]): string {
  const size = printLength(Math.abs(length), units);
  if (from === null)
    return `Measure ${size} stage ${length > 0 ? "left" : "right"} of the centre line on the plaster line, where sizes are true.`;
  return `Measure ${size} to the ${length > 0 ? "right" : "left"} of mark ${from}, on the plaster line.`;
}

/** A line straight up, or straight across, through a point of the sheet. */
export function upright(at: PicturePoint): readonly [PicturePoint, PicturePoint] {
  return [at, [at[0], at[1] + 1]];
}

export function level(at: PicturePoint): readonly [PicturePoint, PicturePoint] {
  return [at, [at[0] + 1, at[1]]];
}
