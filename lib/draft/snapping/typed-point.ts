import { type LengthUnits, parseLength } from "../../measure/length";
import type { PlanPoint } from "../../stage/frame";
import { directionOf } from "../direction-of";

/** What an author types for the next corner: how long and at what angle from the last one, or where on the stage. */
export type TypedPoint =
  | { readonly way: "along"; readonly along: string; readonly angle: string }
  | { readonly way: "place"; readonly across: string; readonly upstage: string };

export type TypedField = "along" | "angle" | "across" | "upstage";

export type TypedPlace =
  | { readonly ok: true; readonly at: PlanPoint }
  | { readonly ok: false; readonly field: TypedField; readonly say: string };

/** Where a typed length goes from, and which way where no angle is typed: the pointer's, radians from + x. */
export type TypedFrom = { readonly at: PlanPoint; readonly heading: number | null };

/**
 * The place that was typed. "Along" is a length from the last corner, "angle" degrees: 0 toward stage left, 90 straight
 * upstage, counter-clockwise. "Across" is from the centre line, stage left positive; "upstage" from the plaster line. A bare
 * number is in feet or in metres, as the plan is.
 */
export function typedPoint(typed: TypedPoint, units: LengthUnits, from: TypedFrom | null): TypedPlace {
  if (typed.way === "place") {
    const across = typedLength(typed.across, units);
    if (!across.ok) return { ok: false, field: "across", say: across.say };
    const upstage = typedLength(typed.upstage, units);
    if (!upstage.ok) return { ok: false, field: "upstage", say: upstage.say };
    return { ok: true, at: [across.metres, upstage.metres] };
  }
  if (!from)
    return { ok: false, field: "along", say: "There is no corner to go on from yet. Say where the first one stands." };
  const along = typedLength(typed.along, units);
  if (!along.ok) return { ok: false, field: "along", say: along.say };
  if (along.metres <= 0) return { ok: false, field: "along", say: "A wall needs a length above 0." };
  const angle = typedAngle(typed.angle, from.heading);
  if (!angle.ok) return { ok: false, field: "angle", say: angle.say };
  const [dx, dy] = directionOf(angle.radians);
  return { ok: true, at: [from.at[0] + dx * along.metres, from.at[1] + dy * along.metres] };
}

export type TypedLength = { readonly ok: true; readonly metres: number } | { readonly ok: false; readonly say: string };

const BARE_NUMBER = /^[-−]?\d+(?:\.\d+)?$/;

/** A bare number of metres above this was meant in millimetres. */
const BARE_METRES = 100;

/** Nothing of a stage is longer, metres. */
const FARTHEST_M = 1000;

/** A length as it was typed, metres; a bare number is in the plan's units. */
export function typedLength(text: string, units: LengthUnits): TypedLength {
  const trimmed = text.trim();
  if (trimmed === "") return { ok: false, say: "Write a length here." };
  const bare = BARE_NUMBER.test(trimmed) ? Number(trimmed.replace("−", "-")) : null;
  if (bare !== null && units === "m" && Math.abs(bare) > BARE_METRES)
    return { ok: false, say: `${trimmed} alone would be metres. Write ${trimmed} mm, or ${bare / 1000} m.` };
  const parsed = parseLength(bare ?? trimmed, units);
  if (!parsed.ok) return { ok: false, say: sentence(parsed.reason) };
  if (Math.abs(parsed.metres) > FARTHEST_M) return { ok: false, say: "That is more than 1 km. Check its unit." };
  return parsed;
}

/** A reason as a sentence of its own. */
function sentence(reason: string): string {
  return `${reason.charAt(0).toUpperCase()}${reason.slice(1)}.`;
}

const DEGREES = /^([-−+]?)(\d+(?:\.\d+)?)\s*°?$/;
const ANGLE_FORMS = "Write degrees, like 90 for straight upstage, 0 for toward stage left.";

function typedAngle(
  text: string,
  heading: number | null,
): { readonly ok: true; readonly radians: number } | { readonly ok: false; readonly say: string } {
  const trimmed = text.trim();
  if (trimmed === "" && heading !== null) return { ok: true, radians: heading };
  if (trimmed === "") return { ok: false, say: ANGLE_FORMS };
  const [, sign, digits] = DEGREES.exec(trimmed) ?? [];
  const shown = trimmed.length > 40 ? `${trimmed.slice(0, 40)}…` : trimmed;
  if (digits === undefined) return { ok: false, say: `"${shown}" is not an angle. ${ANGLE_FORMS}` };
  const size = Number(digits) % 360;
  if (!Number.isFinite(size)) return { ok: false, say: `"${shown}" is not an angle. ${ANGLE_FORMS}` };
  return { ok: true, radians: ((sign === "" || sign === "+" ? size : -size) * Math.PI) / 180 };
}
