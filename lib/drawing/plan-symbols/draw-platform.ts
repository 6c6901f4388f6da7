import { between } from "../../geometry/vector";
import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import type { Plan, Platform } from "../../plan/plan";
import type { PlanPoint } from "../../stage/frame";
import type { Stage } from "../../stage/stage";
import { clearest, type Drawn } from "../clear-lettering";
import type { DisplayItem, DrawingPoint, Lettering } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";
import { insideOutline } from "../surface-level";
import { type Drop, findDrops } from "./find-drops";

/** How far inside the edge a wanted guard is drawn, millimetres of paper. */
const GUARD_INSET_MM = 1.4;

/** A platform in plan: its outline, and a dashed rail lettered GUARD inside each edge that drops more than 30 in. */
export function drawPlatform(
  plan: Plan,
  platform: Platform,
  stage: Pick<Stage, "rake">,
  scaleRatio: number,
): readonly DisplayItem[] {
  const id = `plan.platform.${platform.id}`;
  return [
    makeStroke(`${id}.top`, platform.outline, { closed: true, weight: "thick", fill: "paper", hand: true }),
    ...findDrops(plan, platform, stage).flatMap((drop, i) => drawGuard(`${id}.guard.${i + 1}`, drop, scaleRatio)),
  ];
}

function drawGuard(id: string, { from, to, inward }: Drop, scaleRatio: number): DisplayItem[] {
  const inset = (GUARD_INSET_MM * scaleRatio) / 1000;
  const moved = ([x, y]: PlanPoint): DrawingPoint => [x + inward[0] * inset, y + inward[1] * inset];
  const heightMm = LETTER_MM.small;
  const [right, up] = inward;
  return [
    makeStroke(id, [moved(from), moved(to)], { line: "hidden", weight: "thick" }),
    makeLettering(`${id}.name`, moved(between(from, to, 0.5)), "GUARD", {
      heightMm,
      anchor: right > 0.7 ? "start" : right < -0.7 ? "end" : "middle",
      shiftMm: [right * 1.2, up * 2.1 - heightMm / 2],
    }),
  ];
}

/** The platform's height above the floor at its first corner, boxed, where it stands clear of what is drawn on it. */
export function letterPlatform(platform: Platform, units: LengthUnits, drawn: Drawn): readonly Lettering[] {
  const { outline } = platform;
  if (outline.length === 0) return [];
  const middle: PlanPoint = [mean(outline.map(([x]) => x)), mean(outline.map(([, y]) => y))];
  const places = [0, 0.3, 0.5, 0.65].flatMap((t) => outline.map((vertex) => between(middle, vertex, t)));
  const inside = places.filter((place) => insideOutline(outline, place));
  const heightMm = LETTER_MM.figure;
  return [
    clearest(
      (inside.length > 0 ? inside : [middle]).map((at) =>
        makeLettering(
          `plan.platform.${platform.id}.height`,
          at,
          `+${printLength(platform.base + platform.height, units)}`,
          {
            heightMm,
            shiftMm: [0, -heightMm / 2],
            boxed: true,
          },
        ),
      ),
      drawn,
    ),
  ];
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
