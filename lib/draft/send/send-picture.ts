import type { DisplayItem } from "../../drawing/display-list";
import { drawFinishedPicture } from "../../drawing/draw-finished-picture";
import { makeStroke } from "../../drawing/make-stroke";
import type { Exercise } from "../../exercise/exercise";
import { cautionOf } from "./caution-of";
import { type SentUnit, usualUnit } from "./sent-unit";
import { writeDxf } from "./write-dxf";

/** Arms of the cross at the centre vanishing point, millimetres of paper. */
const CROSS_ARM_MM = 2;

/**
 * The finished picture as a DXF file, ruled, true size on the picture plane: X from the centre line, Z up from the stage floor.
 * The frame, the set's outlines, its finer lines, the hatching and the horizon each have a layer.
 */
export function sendPicture(
  exercise: Pick<Exercise, "plan" | "stage" | "viewer" | "units" | "scaleRatio">,
  unit: SentUnit = usualUnit(exercise.units),
): string {
  const { stage, viewer, scaleRatio } = exercise;
  const half = stage.opening.width / 2;
  const arm = (CROSS_ARM_MM * scaleRatio) / 1000;
  const { eyeHeight: up, offset: across } = viewer;
  const eye = [
    makeStroke("horizon", [
      [-half, up],
      [half, up],
    ]),
    makeStroke("horizon.centre-vanishing-point", [
      [across, up - arm],
      [across, up + arm],
    ]),
  ];
  return writeDxf({
    list: [...drawFinishedPicture(exercise, { hand: false, idPrefix: "picture" }), ...eye],
    layerOf: pictureLayer,
    unit,
    scaleRatio,
    caution: cautionOf(exercise),
  });
}

function pictureLayer(item: DisplayItem): string {
  if (item.kind === "lettering") return "Lettering";
  const { id, weight } = item;
  if (id.startsWith("horizon")) return "Horizon";
  if (id.startsWith("picture.hatch.")) return "Hatching";
  if (id.startsWith("picture.picture.proscenium.")) return "Proscenium";
  return weight === "thin" ? "Finer lines" : "Outlines";
}
