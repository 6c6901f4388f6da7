import { drawPlan } from "../../drawing/draw-plan";
import type { Exercise } from "../../exercise/exercise";
import { cautionOf } from "./caution-of";
import { planLayer } from "./plan-layer";
import { type SentUnit, usualUnit } from "./sent-unit";
import { writeDxf } from "./write-dxf";

/**
 * The ground plan as a DXF file, true size, x from the centre line and y from the plaster line upstage: walls, openings and the
 * other things each on their own layer, as they are drawn on the sheet. A teaching sketch is not a construction drawing.
 */
export function sendPlan(
  exercise: Pick<Exercise, "plan" | "stage" | "units" | "scaleRatio">,
  unit: SentUnit = usualUnit(exercise.units),
): string {
  return writeDxf({
    list: drawPlan(exercise),
    layerOf: (item) => (item.kind === "lettering" ? "Lettering" : planLayer(item.id)),
    unit,
    scaleRatio: exercise.scaleRatio,
    caution: cautionOf(exercise),
  });
}
