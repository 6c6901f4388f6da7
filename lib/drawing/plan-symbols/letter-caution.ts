import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import type { Plan } from "../../plan/plan";
import type { Stage } from "../../stage/stage";
import { clearest, type Drawn } from "../clear-lettering";
import type { DrawingPoint, Lettering } from "../display-list";
import { LETTER_MM, makeLettering } from "../make-stroke";
import { STUB_THICKNESS_M } from "./draw-stub";
import { findDrops, GUARD_DROP_M } from "./find-drops";

/** From one line of the caution to the next, and clear of the apron's edge, millimetres of paper. */
const LINE_MM = LETTER_MM.small + 1.3;
const CLEAR_MM = 1.8;

/**
 * The caution of a plan that marks drops, in three lines at a lower corner of the apron or under it, where it crosses least;
 * nothing where no drop wants a guard. It goes wherever the plan goes: screen, paper and projector.
 */
export function letterCaution(
  plan: Plan,
  stage: Pick<Stage, "opening" | "apron" | "rake">,
  units: LengthUnits,
  drawn: Drawn,
): readonly Lettering[] {
  if (!plan.platforms.some((platform) => findDrops(plan, platform, stage).length > 0)) return [];
  const lines = [
    `GUARD: A DROP OF MORE THAN ${printLength(GUARD_DROP_M, units)}.`,
    "A TEACHING SKETCH IS NOT A CONSTRUCTION DRAWING:",
    "LOCAL CODES AND LICENSED PRACTICE DECIDE.",
  ];
  const half = stage.opening.width / 2;
  const edge = -stage.apron;
  const under = -Math.max(stage.apron, STUB_THICKNESS_M);
  const inApron = CLEAR_MM + (lines.length - 1) * LINE_MM;
  const belowIt = -CLEAR_MM - LETTER_MM.small;
  const places = (
    [
      [[-half, edge], "start", inApron],
      [[half, edge], "end", inApron],
      [[-half, under], "start", belowIt],
      [[half, under], "end", belowIt],
    ] satisfies readonly (readonly [DrawingPoint, Lettering["anchor"], number])[]
  ).map(([at, anchor, up]) => {
    const aside = anchor === "start" ? CLEAR_MM : -CLEAR_MM;
    return lines.map((text, i) =>
      makeLettering(`plan.caution.${i + 1}`, at, text, {
        heightMm: LETTER_MM.small,
        anchor,
        shiftMm: [aside, up - i * LINE_MM],
      }),
    );
  });
  // The middle line is the longest: where it stands clear, the others do.
  const best = clearest(
    places.map(([, longest]) => longest as Lettering),
    drawn,
  );
  return places.find((place) => place.includes(best)) ?? [];
}
