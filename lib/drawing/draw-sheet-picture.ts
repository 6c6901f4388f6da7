import type { Exercise } from "../exercise/exercise";
import { apronDrop } from "../exercise/inside-frame";
import type { DisplayList } from "./display-list";
import { makeStroke } from "./make-stroke";
import { drawHorizon } from "./picture-parts/draw-horizon";
import { drawPlasterRule } from "./picture-parts/draw-plaster-rule";
import { drawProscenium } from "./picture-parts/draw-proscenium";
import { drawStageShell } from "./picture-parts/draw-stage-shell";

/** How far the centre line runs past the apron's edge and the opening's top, millimetres of paper. */
const PAST_MM = 3;

/**
 * The picture side of the empty sheet, before any corner is placed: the proscenium at true size, the stage seen through it,
 * the horizon and CVP, and the true-size rule along the plaster line. A display list in picture metres, [X, Z].
 *
 * Usage: `drawSheetPicture(exercise)` first, then `drawEdges` and `drawFigure` over it. Ids start with `picture.`; lettering
 * is laid out for the exercise's own scale.
 */
export function drawSheetPicture(exercise: Pick<Exercise, "stage" | "viewer" | "units" | "scaleRatio">): DisplayList {
  const { stage, viewer, units, scaleRatio } = exercise;
  const past = (PAST_MM * scaleRatio) / 1000;
  return [
    ...drawStageShell(stage, viewer),
    makeStroke(
      "picture.centre-line",
      [
        [0, apronDrop(stage, viewer) - past],
        [0, stage.opening.height],
      ],
      {
        line: "centre",
        faint: true,
      },
    ),
    ...drawProscenium(stage),
    ...drawHorizon(stage, viewer, units, scaleRatio),
    ...drawPlasterRule(stage, viewer, units, scaleRatio),
  ];
}
