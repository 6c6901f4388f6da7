import { between, leftOf, subtract, unit } from "../../geometry/vector";
import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import type { Masking } from "../../plan/plan";
import { clearest, type Drawn, letterName } from "../clear-lettering";
import type { DisplayItem, DrawingPoint } from "../display-list";
import { makeStroke } from "../make-stroke";

/** Where along the cloth its name may stand, shares, best first: a wide one hangs across the centre line. */
const NAME_PLACES = [0.5, 0.35, 0.65] as const;

/**
 * Masking in the plan: a leg or backing stands on the floor and is drawn solid; a border hangs over the cut of the plan,
 * so it is a hidden line (common practice, no source).
 */
export function drawMasking({ id, kind, line }: Masking): DisplayItem[] {
  const hangs = kind === "border";
  return [makeStroke(`plan.masking.${id}`, line, { weight: "thick", line: hangs ? "hidden" : "solid", hand: !hangs })];
}

/** The masking's name, with the trim height of a border: off the cloth on its upstage side. */
export function letterMasking({ id, line: [a, b], trim }: Masking, units: LengthUnits, drawn: Drawn): DisplayItem {
  const text = trim === null ? id : `${id} trim ${printLength(trim, units)}`;
  const along = unit(subtract(b, a));
  const [across, up] = along ? leftOf(along) : ([0, 1] as const);
  const upstage: DrawingPoint = up < 0 ? [-across, -up] : [across, up];
  const places = NAME_PLACES.map((share) => {
    const [x, y] = between(a, b, share);
    return letterName(`plan.masking.${id}.name`, [x, y], upstage, text, drawn);
  });
  return clearest(places, drawn);
}
