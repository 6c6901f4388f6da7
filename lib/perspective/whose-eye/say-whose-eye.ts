import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import type { EyeRefusal, Figure, FigureName } from "./eye-answer";
import { type EyeFigures, isAcross } from "./eye-figures";
import type { MarkedDrawing } from "./marked-drawing";
import type { RectangleView } from "./read-rectangle";

type Figures = Readonly<Record<FigureName, Figure | null>>;

export const REFUSALS: Readonly<Record<EyeRefusal, string>> = {
  "uprights meet":
    "The uprights draw together instead of staying parallel: this picture was drawn or photographed looking up or down, with a third vanishing point. Lay the drawing straight, or take a picture drawn on an upright picture plane.",
  "drawing is turned":
    "The uprights all lean one way: the drawing is turned. Turn it until its uprights stand upright.",
  "no one horizon":
    "The lines marked here as level do not meet on one horizon, so no one eye sees them so. Each group must be level on the stage and parallel: look for a line in the wrong group, a drawing that lies turned, or one that wandered.",
  "rectangle is no outline":
    "The rectangle's four corners do not go round it in order. Mark them one after the other, round the rectangle.",
  "rectangle over the horizon":
    "The rectangle reaches up to the horizon or over it. A rectangle on the floor lies below the horizon: mark one that does.",
};

/** What is known of the eye. */
export function sayTold(figures: Figures, drawing: MarkedDrawing, units: LengthUnits): readonly string[] {
  const { horizon, cvp, distanceMm, eyeHeight, distance, fromRectangle, proportion } = figures;
  const near = (metres: number) => printLength(metres, units, "near");
  const metric = ({ value, give }: Figure) => `${near(value)} (give or take ${near(give)})`;
  const paper = ({ value, give }: Figure) => `${value.toFixed(0)} mm (give or take ${Math.ceil(give)} mm)`;
  return [
    horizon ? `The horizon is known to ${horizon.give.toFixed(1)} mm on the drawing.` : "",
    cvp ? `The centre vanishing point is known to ${cvp.give.toFixed(1)} mm along it.` : "",
    distanceMm
      ? `The drawing looks right from ${paper(distanceMm)} before the paper: that is the eye's distance at the drawing's scale.`
      : "",
    eyeHeight ? `The eye is ${metric(eyeHeight)} above the floor.` : "",
    distance ? `It stands ${metric(distance)} before the plaster line.` : "",
    fromRectangle ? `It stands ${metric(fromRectangle)} before the rectangle's nearest corner.` : "",
    proportion && drawing.rectangle?.proportion === null
      ? `The rectangle's first side is ${proportion.value.toFixed(2)} times its second (give or take ${proportion.give.toFixed(2)}).`
      : "",
  ].filter((say) => say !== "");
}

/** What is not known of it, and what would tell. `values` are the figures before their precision was asked. */
export function sayUntold(
  figures: Figures,
  values: EyeFigures,
  drawing: MarkedDrawing,
  view: RectangleView | null,
  halfMm: number | null,
): readonly string[] {
  if (values.horizon === null)
    return [
      "Nothing marked here draws together, so neither horizon nor eye can be known. Mark two level lines that are parallel on the stage and run away from the viewer, or a rectangle on the floor.",
    ];
  const unsure = (name: FigureName, what: string) =>
    values[name] !== null && figures[name] === null
      ? `${what} follows, but so uncertainly that no figure is worth giving: the lines are short for it, or nearly parallel.`
      : "";
  return [
    unsure("cvp", "The centre vanishing point") || (figures.cvp ? "" : sayNoCvp(halfMm)),
    unsure("distanceMm", "The eye's distance") ||
      (figures.distanceMm ? "" : sayNoDistance(drawing, values, view, halfMm)),
    unsure("eyeHeight", "The eye's height") || (figures.eyeHeight ? "" : sayNoHeight(drawing, figures)),
    unsure("distance", "The eye's distance from the plaster line") ||
      (figures.distance || !figures.distanceMm || !figures.eyeHeight
        ? ""
        : "Where the plaster line is, the drawing does not tell: a known length along it would give the eye's distance from it."),
  ].filter((say) => say !== "");
}

function sayNoCvp(halfMm: number | null): string {
  return halfMm === null
    ? "The horizon alone does not tell where on it the centre vanishing point lies: mark lines that run square to the plaster line."
    : "Of a turned rectangle alone the centre vanishing point can lie anywhere between the two points where its sides meet: its proportion would tell, or lines square to the plaster line.";
}

function sayNoDistance(
  { rectangle }: MarkedDrawing,
  values: EyeFigures,
  view: RectangleView | null,
  halfMm: number | null,
): string {
  if (view?.kind === "one-point" && rectangle?.proportion === null)
    return "A rectangle seen square on gives the horizon and the centre vanishing point, but not how far off the eye is: a near eye and a shallow floor look like a far eye and a deep one. Its proportion would tell, or lines at a known angle to the plaster line.";
  if (halfMm !== null && values.cvp === null)
    return `The eye stands on the half circle over the two points where the rectangle's sides meet, so at most ${halfMm.toFixed(0)} mm before the paper; where on it, its proportion would tell.`;
  if (halfMm !== null)
    return "The rectangle's corners cannot be right angles for that centre vanishing point: it must lie between the two points where the rectangle's sides meet. Look at what was marked.";
  return "How far off the eye is, these lines do not tell: mark a rectangle of known proportion on the floor, or lines at a known angle to the plaster line.";
}

function sayNoHeight({ length, sigmaMm }: MarkedDrawing, figures: Figures): string {
  if (!length)
    return "Nothing here has a known length, so the drawing has no scale: one length that is known, upright or on the floor, would give the eye's height.";
  if (length.lies === "floor" && !isAcross(length, sigmaMm) && !figures.distanceMm)
    return "The known length runs away from the viewer, and without the eye's distance it gives no scale: take one that is upright or runs along the plaster line.";
  return "The known length gives no scale: it must stand or lie on the floor below the horizon, an upright with its foot first.";
}
