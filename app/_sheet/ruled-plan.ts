import type { DisplayItem, DisplayList } from "@/lib/drawing/display-list";
import { drawPlan } from "@/lib/drawing/draw-plan";
import { LETTER_MM } from "@/lib/drawing/make-stroke";
import { drawPlasterRule } from "@/lib/drawing/picture-parts/draw-plaster-rule";
import type { Exercise } from "@/lib/exercise/exercise";
import { toPaperMm } from "@/lib/measure/scale";
import { BLANK_PLAN } from "@/lib/plan/blank-plan";
import type { Plan } from "@/lib/plan/plan";

/** The plaster line's name stands this far under the line, clear of the rule's figures, millimetres. */
const NAME_DOWN_MM = 2 * LETTER_MM.figure + 6.5;
/** Half the width of a figure of the rule, millimetres. */
const FIGURE_HALF_MM = 2.6;
/** Letters keep this clear of a line, millimetres. */
const CLEAR_MM = 1.2;

/** A plan to be read back, as far as `plan` has it, on the exercise's stage, with the true-size rule along its plaster line. */
export function drawRuledPlan(exercise: Exercise, plan: Plan): DisplayList {
  return [...drawPlan({ ...exercise, plan }).map((item) => nameByRule(item, exercise)), ...drawPlanRule(exercise)];
}

/** The same before anything is on it. */
export function emptyPlan(exercise: Exercise): DisplayList {
  return drawRuledPlan(exercise, BLANK_PLAN);
}

/** The picture's rule, along the plan's plaster line: true size in both, and the same ticks. No figure stands in the wall. */
function drawPlanRule({ stage, viewer, units, scaleRatio }: Exercise): DisplayList {
  const furthest = stage.opening.width / 2 - (FIGURE_HALF_MM * scaleRatio) / 1000;
  const rule = drawPlasterRule({ ...stage, apron: 0 }, viewer, units, scaleRatio);
  return rule
    .filter((item) => item.kind === "stroke" || Math.abs(item.at[0]) <= furthest)
    .map((item) => ({ ...item, id: item.id.replace(/^picture/, "plan") }));
}

/**
 * The plaster line's name goes under the rule, not past the line's end, so that a narrow pane has room for the plan; over the
 * line where the apron is too shallow for it.
 */
function nameByRule(item: DisplayItem, { stage, scaleRatio }: Exercise): DisplayItem {
  if (item.kind !== "lettering" || item.id !== "plan.stage.plaster-line.name") return item;
  const fits = toPaperMm(stage.apron, scaleRatio) > NAME_DOWN_MM + CLEAR_MM;
  return { ...item, at: [item.at[0], 0], anchor: "end", shiftMm: [-item.shiftMm[0], fits ? -NAME_DOWN_MM : CLEAR_MM] };
}
