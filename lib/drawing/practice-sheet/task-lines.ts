import type { Exercise } from "../../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import { printScale } from "../../measure/scale";
import { capital } from "../../plan/first-letter";
import { sayPoint } from "../../plan/say-point";
import { floorHeight } from "../../stage/stage";

/** Nearer to a line than this a point stands on it, metres. */
const ON_LINE_M = 0.0005;

/** What a sheet asks: a sentence for all of it, then a line for each mark, in the order asked. */
export type Asked = { readonly lead: string; readonly lines: readonly string[] };

/**
 * The task in words. Where the exercise prints dimensions each line says where the plan has its point, and a point above
 * another only its height; where the plan is read with the scale rule, or the picture read back, the names alone.
 */
export function taskLines(exercise: Exercise): Asked {
  const { task, scale } = exercise;
  const points = exercisePoints(exercise);
  const asked = task.marks.flatMap((name) => points.get(name) ?? []);
  if (task.kind === "picture-to-plan") {
    return {
      lead: "Read each point back out of the picture and mark it on the plan, in this order:",
      lines: asked.map((point) => `${capital(sayPoint(point))}.`),
    };
  }
  if (task.dimensions === "rule") {
    return {
      lead: `Read the plan with a scale rule at ${printScale(scale)}, and place each point in the picture, in this order:`,
      lines: asked.map((point) => `${capital(sayPoint(point))}.`),
    };
  }
  const placed = new Set([...task.given, ...task.marks]);
  return {
    lead: "Place each point in the picture, in this order, and draw the lines it completes:",
    lines: asked.map((point) => `${capital(sayPoint(point))}: ${sayWhere(point, placed, exercise)}.`),
  };
}

function sayWhere(point: ProjectedPoint, placed: ReadonlySet<string>, { stage, units }: Exercise): string {
  const [x, y, z] = point.at;
  const rise = z - floorHeight(stage, y);
  const height = Math.abs(rise) < ON_LINE_M ? [] : [`${printLength(rise, units)} up`];
  if (height.length > 0 && point.over !== null && placed.has(point.over)) return height.join("");
  return [sayAcross(x, units), sayDepth(y, units), ...height].join(", ");
}

function sayAcross(x: number, units: LengthUnits): string {
  if (Math.abs(x) < ON_LINE_M) return "on the centre line";
  return `${printLength(Math.abs(x), units)} stage ${x > 0 ? "left" : "right"}`;
}

function sayDepth(y: number, units: LengthUnits): string {
  if (Math.abs(y) < ON_LINE_M) return "on the plaster line";
  return `${printLength(Math.abs(y), units)} ${y > 0 ? "upstage" : "downstage"}`;
}
