import type { Exercise } from "../../exercise/exercise";
import { circlePoints } from "../arc-points";
import type { DisplayItem, DisplayList } from "../display-list";
import { makeStroke } from "../make-stroke";
import type { Layer } from "../paper/paper-page";
import { DEMONSTRATION_MARGINS, demonstrationBoxes } from "./demonstration-boxes";
import type { DemonstrationStep } from "./demonstration-step";
import { type DrawnPlane, startDemonstrationDrawing } from "./draw-demonstration";
import { type Fitted, fitDrawing } from "./fit-drawing";

/** Radius of the ring round the place spoken of, millimetres of lettering. */
const LIT_MM = 2;
/** Between the two drawings, as a share of the room's width. */
const BETWEEN = 0.02;

export type Room = {
  readonly width: number;
  readonly height: number;
  /** Letters are this much of their usual size on paper. */
  readonly letters: number;
};

/** Where a room lies on a page: its upper left corner, millimetres right and down. */
export type Corner = readonly [rightMm: number, downMm: number];

/**
 * Draws steps into rooms of one size on paper, picture and plan side by side. The result gives the layers of a step for a
 * room whose corner is at a place of the page, millimetres.
 */
export function startStepLayers(
  exercise: Exercise,
  steps: readonly DemonstrationStep[],
  room: Room,
): (step: DemonstrationStep, corner: Corner) => readonly Layer[] {
  const boxes = demonstrationBoxes(exercise, steps);
  const shape = ([left, bottom, right, top]: readonly [number, number, number, number]) =>
    (right - left) / (top - bottom);
  const gap = room.width * BETWEEN;
  const share = shape(boxes.picture) / (shape(boxes.picture) + shape(boxes.plan));
  const pictureWidth = (room.width - gap) * share;
  const common = { height: room.height, letterUnit: room.letters };
  const picture = fitDrawing(boxes.picture, DEMONSTRATION_MARGINS.picture, { ...common, width: pictureWidth });
  const plan = fitDrawing(boxes.plan, DEMONSTRATION_MARGINS.plan, {
    ...common,
    width: room.width - gap - pictureWidth,
  });
  const draw = startDemonstrationDrawing(exercise, { picture, plan });
  return (step, [right, down]) => {
    const drawn = draw(step);
    return [
      layerOf(drawn.picture, picture, room, [right, down], step.kind === "set-down"),
      layerOf(drawn.plan, plan, room, [right + pictureWidth + gap, down], false),
    ];
  };
}

function layerOf(drawn: DrawnPlane, fitted: Fitted, { letters }: Room, [right, down]: Corner, setDown: boolean): Layer {
  const { sheet, set, construction } = drawn;
  const [left, , , top] = fitted.window;
  // A point set down is drawn over the lines that found it.
  const graphite = set.map((item) => lighten(item, letters));
  const over = setDown ? [...construction, ...graphite] : [...graphite, ...construction];
  return {
    list: [...litPlace(drawn, fitted.scaleRatio), ...sheet.map((item) => lighten(item, letters)), ...over].map((item) =>
      shrink(item, letters),
    ),
    scaleRatio: 1000 / fitted.perMetre,
    at: [right - left * fitted.perMetre, down + top * fitted.perMetre],
    window: fitted.window,
  };
}

/** The place spoken of, ringed. */
function litPlace({ lit }: DrawnPlane, scaleRatio: number): DisplayList {
  if (!lit) return [];
  const ring = circlePoints(lit, (LIT_MM * scaleRatio) / 1000);
  return [makeStroke("lit", ring, { closed: true, weight: "thick", pencil: "red", fill: "wall" })];
}

/** Small drawings are drawn with the next lighter pen, so that a wall's two faces stay two lines. */
function lighten(item: DisplayItem, letters: number): DisplayItem {
  if (item.kind === "lettering" || letters === 1) return item;
  return { ...item, weight: item.weight === "extra-thick" ? "thick" : "thin" };
}

/** Letters laid out for a larger sheet, on this one. */
function shrink(item: DisplayItem, letters: number): DisplayItem {
  if (item.kind === "stroke" || letters === 1) return item;
  const [right, up] = item.shiftMm;
  return { ...item, heightMm: item.heightMm * letters, shiftMm: [right * letters, up * letters] };
}
