import type { Exercise } from "../../exercise/exercise";
import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import { toPaperMm } from "../../measure/scale";
import type { EyeOfLines, Told } from "./judgement";
import { CLEAR_SIGMAS } from "./line-precision";
import { inARow } from "./name-line";
import { millimetres } from "./say-line";

/** What the lines imply of the eye, beside the exercise's own; and what they do not tell. */
export function sayEye({ viewer, units }: Exercise, eye: Omit<EyeOfLines, "say">): string {
  if (eye.kind === "disagree")
    return "The lines do not agree on one eye: each of them should run to the vanishing point of its own direction.";
  if (eye.kind === "cannot tell") return "Too few lines run away from the viewer to tell what eye they were drawn for.";
  const height = sayFigure(eye.eyeHeight, viewer.eyeHeight, units, "high");
  const distance = sayFigure(eye.distance, viewer.distance, units, "before the plaster line");
  const told = [height, distance].filter((part) => part !== "");
  const open = [
    eye.eyeHeight ? "" : "how high the eye is",
    eye.distance ? "" : "how far before the plaster line it stands",
  ].filter((part) => part !== "");
  return [
    told.length > 0 ? `By where the lines run, the eye is ${told.join(", and ")}.` : "",
    eye.offset ? sayOffset(eye.offset, viewer.offset, units) : "",
    open.length > 0 ? `They do not tell ${inARow(open)}.` : "",
  ]
    .filter((part) => part !== "")
    .join(" ");
}

function sayFigure(told: Told | null, own: number, units: LengthUnits, where: string): string {
  if (!told) return "";
  const drawn = `${printLength(told.metres, units, "near")} ${where}`;
  const give = `give or take ${printLength(told.give, units, "near")}`;
  return differs(told, own)
    ? `${drawn} (${give}), instead of ${printLength(own, units, "near")}`
    : `${drawn} (${give}), as it should be`;
}

function sayOffset(told: Told, own: number, units: LengthUnits): string {
  if (!differs(told, own)) return "";
  const side = told.metres > own ? "right" : "left";
  return `It stands ${printLength(Math.abs(told.metres - own), units, "near")} too far to the viewer's ${side}.`;
}

/** Whether lines clearly tell another figure than the exercise's. */
export function differs({ metres, give }: Told, own: number): boolean {
  return Math.abs(metres - own) > CLEAR_SIGMAS * give;
}

/** Lines that agree on an eye that is not the exercise's: told once, instead of every line that follows from it. */
export function sayOwnEye({ viewer, units }: Exercise, eye: Omit<EyeOfLines, "say">, scaleRatio: number): string {
  const { distance, eyeHeight, offset } = eye;
  const near = (metres: number) => printLength(Math.abs(metres), units, "near");
  const up = eyeHeight ? toPaperMm(eyeHeight.metres - viewer.eyeHeight, scaleRatio) : 0;
  const high =
    eyeHeight && differs(eyeHeight, viewer.eyeHeight)
      ? `${near(eyeHeight.metres)} high instead of ${near(viewer.eyeHeight)}, with its horizon ${millimetres(up)} ${up > 0 ? "above" : "below"} the one given`
      : "";
  const far =
    distance && differs(distance, viewer.distance)
      ? `${near(distance.metres)} before the plaster line instead of ${near(viewer.distance)}`
      : "";
  const aside =
    offset && differs(offset, viewer.offset)
      ? `${near(offset.metres - viewer.offset)} farther to the viewer's ${offset.metres > viewer.offset ? "right" : "left"}`
      : "";
  const parts = [high, far, aside].filter((part) => part !== "");
  return (
    `The lines agree with each other, but were drawn for another eye: ${parts.join(", and ")}. ` +
    "Take them to the horizon and the vanishing points given, or have the drawing graded for the eye that you drew."
  );
}
