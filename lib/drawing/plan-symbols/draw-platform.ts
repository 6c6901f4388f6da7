import { between } from "../../geometry/vector";
import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import type { Platform } from "../../plan/plan";
import { insideOutline } from "../../plan/surface-level";
import type { PlanPoint } from "../../stage/frame";
import { clearest, type Drawn } from "../clear-lettering";
import type { Lettering, Stroke } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/** How far from the middle toward each corner and the middle of each side a height may stand, shares, best first. */
const TOWARD_EDGE = [0, 0.3, 0.5, 0.65] as const;

/** A platform in plan: the outline of its top. */
export function drawPlatform({ id, outline }: Platform): Stroke {
  return makeStroke(`plan.platform.${id}.top`, outline, { closed: true, weight: "thick", fill: "paper", hand: true });
}

/** The platform's height above the floor at its first corner, boxed, where it stands clear of what is drawn on it. */
export function letterPlatform(
  { id, outline, base, height }: Platform,
  units: LengthUnits,
  drawn: Drawn,
): readonly Lettering[] {
  if (outline.length === 0) return [];
  const middle: PlanPoint = [mean(outline.map(([x]) => x)), mean(outline.map(([, y]) => y))];
  const sides = outline.map((vertex, i) => between(vertex, outline[(i + 1) % outline.length] as PlanPoint, 0.5));
  const all = TOWARD_EDGE.flatMap((share) => [...outline, ...sides].map((edge) => between(middle, edge, share)));
  const inside = all.filter((place) => insideOutline(outline, place));
  const heightMm = LETTER_MM.figure;
  const places = (inside.length > 0 ? inside : [middle]).map((at) =>
    makeLettering(`plan.platform.${id}.height`, at, `+${printLength(base + height, units)}`, {
      heightMm,
      shiftMm: [0, -heightMm / 2],
      boxed: true,
    }),
  );
  return [clearest(places, drawn)];
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
