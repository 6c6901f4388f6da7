import type { Exercise } from "../exercise/exercise";
import type { LengthUnits } from "../measure/length";
import { printLength } from "../measure/print-length";
import { capital } from "../plan/first-letter";
import { sayPoint } from "../plan/say-point";
import type { Judged } from "./judge-mark";

/** A shift on the stage smaller than this is left out of the words, metres. */
const WORTH_SAYING_M = 0.03;

/** A place along the depth: "14'-0" upstage", "2'-0" downstage of the plaster line", "on the plaster line". */
function sayDepth(y: number, units: LengthUnits): string {
  if (Math.abs(y) < WORTH_SAYING_M) return "on the plaster line";
  return `${printLength(Math.abs(y), units, "near")} ${y > 0 ? "upstage" : "downstage"} of the plaster line`;
}

/** A place across: "7'-0" stage right", "on the centre line". Stage left is the viewer's right. */
function sayAcross(x: number, units: LengthUnits): string {
  if (Math.abs(x) < WORTH_SAYING_M) return "on the centre line";
  return `${printLength(Math.abs(x), units, "near")} stage ${x > 0 ? "left" : "right"}`;
}

/** The true depth after "instead of": the plaster line is named only when the side changes. */
function sayDepthShort(y: number, units: LengthUnits): string {
  return y >= WORTH_SAYING_M ? printLength(y, units, "near") : sayDepth(y, units);
}

/** The true offset after "instead of": the side is named only when it changes. */
function sayAcrossShort({ point, plan }: Judged, units: LengthUnits): string {
  const x = point.at[0];
  const drawn = x + (plan && "across" in plan ? plan.across : 0);
  return x * drawn > 0 && Math.abs(x) >= WORTH_SAYING_M ? printLength(Math.abs(x), units, "near") : sayAcross(x, units);
}

/** What the mark means on the stage, the place or the height that was drawn. */
export function sayMeaning(judged: Judged, exercise: Exercise): string {
  const { units } = exercise;
  const { point, plan } = judged;
  const who = sayPoint(point);
  if (!plan)
    return `Nothing on that floor is drawn so high: the floor ends at the horizon, and ${who} lies well below it.`;
  if ("height" in plan) {
    const truth = point.at[2] - point.base;
    const [drawn, meant] = [printLength(truth + plan.height, units, "near"), printLength(truth, units, "near")];
    return drawn === meant
      ? `It stands ${meant} high, as it should.`
      : `There, ${who} stands ${drawn} high instead of ${meant}.`;
  }
  const depth = sayDepth(point.at[1] + plan.upstage, units);
  const across = sayAcross(point.at[0] + plan.across, units);
  const parts = [
    Math.abs(plan.upstage) >= WORTH_SAYING_M ? `${depth} instead of ${sayDepthShort(point.at[1], units)}` : "",
    Math.abs(plan.across) >= WORTH_SAYING_M ? `${across} instead of ${sayAcrossShort(judged, units)}` : "",
  ].filter((part) => part !== "");
  if (parts.length === 0) return `It stands ${depth}, ${across}, as in the plan.`;
  return `${capital(`there, ${who} stands`)} ${parts.join(", and ")}.`;
}
