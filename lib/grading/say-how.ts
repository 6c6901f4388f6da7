import type { Exercise } from "../exercise/exercise";
import { printLength } from "../measure/print-length";
import { type Judged, meansPlace } from "./judge-mark";

/** One sentence on finding the point with a ruler. */
export function sayHow({ point }: Pick<Judged, "point">, { viewer, stage, units, task }: Exercise): string {
  const [x, y, z] = point.at;
  const side = x > 0 ? "left" : "right";
  const offset = printLength(Math.abs(x), units);
  const depth = printLength(Math.abs(y), units);
  const ray = x === 0 ? "the centre line" : `the mark ${offset} stage ${side} of the centre line on the plaster line`;
  if (task.kind === "picture-to-plan")
    return "Run a line from the CVP through the point down to the plaster line: there the rule gives its offset.";
  if (!meansPlace(point)) {
    if (y === 0) return `Measure ${printLength(z, units)} up from the plaster line by its own rule.`;
    return `Stand ${printLength(z, units)} upright on ${ray} and carry it to the CVP: it cuts the upright over the foot at the right height.`;
  }
  if (y === 0) return `Lay ${offset} stage ${side} on the plaster line's rule.`;
  if (point.base !== 0 || point.role === "nosing")
    return `Stand its height, ${printLength(z, units)}, on ${ray}, and carry that to the CVP as you would the floor.`;
  if (y < 0)
    return `Run the ray from the CVP through ${ray} forward, on to the apron; a line from ${depth} beside it through the distance point crosses it there.`;
  const vanishing = stage.rake === 0 || viewer.distance === 0 ? "the CVP" : "the floor's vanishing point above the CVP";
  return stage.rake === 0
    ? `Carry ${ray} to ${vanishing}; a line from ${depth} beside it to the distance point crosses that ray at the depth.`
    : `Carry ${ray} to ${vanishing}: a raked floor's rays run there, and its places lie higher than on a level floor.`;
}
