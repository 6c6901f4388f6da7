import type { LengthUnits } from "../../../measure/length";
import { printLength } from "../../../measure/print-length";
import type { TraceFrame } from "./trace-frame";

type Laid = Extract<TraceFrame, { readonly ok: true }>;

const DEGREES = 180 / Math.PI;
/** A scale that pointing alone may put further out than this is told, a share: an inch in eight feet. */
const TOLD_SCALE = 0.01;

/**
 * How far the two lines are out of square and what that means at the back wall, what a pixel is on the stage, and what is doubtful
 * about the scale: whole sentences for the author. `depth` is the stage's, metres.
 */
export function sayTrace(frame: Laid, units: LengthUnits, depth: number): readonly string[] {
  return [
    sayLean(frame, units, depth),
    `A pixel of the photograph is ${printLength(frame.metresPerPixel, units)} on the stage, and nothing can be traced nearer than that.`,
    ...(frame.scaleWithin > TOLD_SCALE
      ? [
          `The known length is short in the photograph: pointing alone may put the scale out by ${Math.round(frame.scaleWithin * 100)} percent. Point at something longer, if you know its length.`,
        ]
      : []),
  ];
}

function sayLean({ lean, byPointing }: Laid, units: LengthUnits, depth: number): string {
  const degrees = (Math.abs(lean) * DEGREES).toFixed(1);
  if (degrees === "0.0") return "The two lines are square to each other.";
  const off = Math.abs(Math.tan(lean)) * depth;
  const side = lean > 0 ? "left" : "right";
  const means =
    `The two lines are ${degrees} degrees out of square. The plaster line counts: at the back wall, ${printLength(depth, units)} upstage, ` +
    `the centre line in the photograph lies ${printLength(off, units)} to stage ${side} of the plan's.`;
  return Math.abs(lean) <= byPointing
    ? `${means} Pointing alone can make that much.`
    : `${means} That is more than pointing makes: the photograph was taken a little at a slant. Straighten it first, or trust it near the plaster line alone.`;
}
