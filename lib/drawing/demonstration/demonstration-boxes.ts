import type { Exercise } from "../../exercise/exercise";
import { exercisePoints } from "../../exercise/exercise-points";
import { apronDrop } from "../../exercise/inside-frame";
import { BLANK_PLAN } from "../../plan/blank-plan";
import type { PlaneBox } from "../clear-lettering";
import { displayBounds } from "../display-bounds";
import { drawPlan } from "../draw-plan";
import { drawProscenium } from "../picture-parts/draw-proscenium";
import type { DemonstrationStep } from "./demonstration-step";
import type { Margins } from "./fit-drawing";

/** White paper round each drawing, in millimetres of its lettering: under the picture hang the rule's figures. */
export const DEMONSTRATION_MARGINS: { readonly picture: Margins; readonly plan: Margins } = {
  picture: { side: 2, top: 2, foot: 7 },
  plan: { side: 3, top: 6.5, foot: 11.5 },
};

/** Marks of a construction this far past the opening, as a share of its width, may run off the sheet. */
const PAST_OPENING = 0.14;

/**
 * What each drawing of a demonstration must show, metres: the proscenium with everything asked or measured near it, and the
 * stage with its whole set. The plan's centre line stands in the middle of its box. Of a plan to be read back nothing that is still to be read shows in its size,
 * where it lies within the stage.
 */
export function demonstrationBoxes(
  exercise: Exercise,
  steps: readonly DemonstrationStep[],
): { readonly picture: PlaneBox; readonly plan: PlaneBox } {
  const { stage, viewer, task, scaleRatio } = exercise;
  const half = stage.opening.width / 2;
  const reach = half + stage.opening.width * PAST_OPENING;
  const points = exercisePoints(exercise);
  const [left = -half, , right = half, top = stage.opening.height] =
    displayBounds(drawProscenium(stage), scaleRatio) ?? [];
  const measured = steps
    .flatMap(({ shown }) => shown.lines)
    .flatMap((line) => (line.do === "line" ? [] : [line.at]))
    .filter(([X, Z]) => Math.abs(X) <= reach && Z <= stage.opening.height);
  const asked = [...task.marks, ...task.given].flatMap((name) => {
    const at = points.get(name)?.picture;
    return at ? [at] : [];
  });
  const named = asked.filter(([X]) => Math.abs(X) <= reach);
  const picture = cover([left, Math.min(0, apronDrop(stage, viewer)), right, top], [...measured, ...named]);
  const strokes = drawPlan({ ...exercise, plan: task.kind === "picture-to-plan" ? BLANK_PLAN : exercise.plan })
    .filter(({ id, kind }) => kind === "stroke" && !/^plan\.stage\.(plaster|centre)-line/.test(id))
    .flatMap((item) => (item.kind === "stroke" ? item.points : []));
  const places = [...task.marks, ...task.given].flatMap((name) => {
    const at = points.get(name)?.at;
    return at ? [[at[0], at[1]] as const] : [];
  });
  const [planLeft, low, planRight, high] = cover([-half, -stage.apron, half, stage.depth], [...strokes, ...places]);
  const wide = Math.max(-planLeft, planRight);
  return { picture: aboutCentre(picture), plan: [-wide, low, wide, high] };
}

function aboutCentre([left, bottom, right, top]: PlaneBox): PlaneBox {
  const half = Math.max(-left, right);
  return [-half, bottom, half, top];
}

function cover(box: PlaneBox, points: readonly (readonly [number, number])[]): PlaneBox {
  return points.reduce<PlaneBox>(
    ([left, bottom, right, top], [x, y]) => [
      Math.min(left, x),
      Math.min(bottom, y),
      Math.max(right, x),
      Math.max(top, y),
    ],
    box,
  );
}
