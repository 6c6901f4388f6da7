import { between } from "../../geometry/vector";
import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import type { Masking } from "../../plan/plan";
import { type Drawn, letterName } from "../clear-lettering";
import type { DisplayItem } from "../display-list";
import { makeStroke } from "../make-stroke";

/**
 * Masking in the plan: a leg or backing stands on the floor and is drawn solid; a border hangs over the cut of the plan,
 * so it is a hidden line (common practice, no source).
 */
export function drawMasking({ id, kind, line }: Masking): DisplayItem[] {
  const hangs = kind === "border";
  return [makeStroke(`plan.masking.${id}`, line, { weight: "thick", line: hangs ? "hidden" : "solid", hand: !hangs })];
}

/** The masking's name, with the trim height of a border. */
export function letterMasking({ id, line: [a, b], trim }: Masking, units: LengthUnits, drawn: Drawn): DisplayItem {
  const text = trim === null ? id : `${id} trim ${printLength(trim, units)}`;
  const [x, y] = between(a, b, 0.5);
  return letterName(`plan.masking.${id}.name`, [x, y], [0, 1], text, drawn);
}
