import type { Exercise } from "../../exercise/exercise";
import { exercisePoints } from "../../exercise/exercise-points";
import { apronDrop } from "../../exercise/inside-frame";
import { listEdges } from "../../plan/list-edges";
import type { PicturePoint } from "../../stage/frame";
import { clearest, type PlaneBox, planeBox } from "../clear-lettering";
import { ruleRoom } from "../demonstration/base-sheets";
import { drawSetSoFar } from "../demonstration/draw-set-so-far";
import type { DisplayItem, DisplayList, Lettering } from "../display-list";
import { drawSheetPicture } from "../draw-sheet-picture";
import { makeStroke } from "../make-stroke";
import type { Layer } from "../paper/paper-page";

/** Between two names on one line, millimetres: white, and what the estimate of a long name's width may lack. */
const NAMES_APART_MM = 6;

/** The sheet's picture in its own metres: its stage, and the set on it, which is cut off at a window. */
export type SheetPicture = { readonly stage: DisplayList; readonly set: DisplayList; readonly window: PlaneBox };

/**
 * The frame with nothing in it but the stage and what is given; of an exercise that is read back, with the whole set at its
 * true places. Picture metres. The floor keeps no tone: pencil goes over it, and a camera must tell one from the other.
 */
export function sheetPicture(exercise: Exercise): SheetPicture {
  const { stage, viewer, task } = exercise;
  const bare = drawSheetPicture(exercise)
    .filter((item) => item.kind === "lettering" || !item.fillOnly)
    .map((item, _, items) => besideCvp(item, items, exercise));
  const half = stage.opening.width / 2;
  const window: PlaneBox = [-half, apronDrop(stage, viewer), half, stage.opening.height];
  const points = exercisePoints(exercise);
  const shown = task.kind === "picture-to-plan" ? [...points.keys()] : task.given;
  const places = new Map(
    shown.flatMap((name): [string, PicturePoint][] => {
      const at = points.get(name)?.picture;
      return at ? [[name, at]] : [];
    }),
  );
  const edges = listEdges(exercise.plan, points);
  const set = drawSetSoFar("picture", {
    exercise,
    points,
    edges,
    places,
    fresh: null,
    over: [...bare, ...ruleRoom(exercise)],
  });
  return { stage: bare, set, window };
}

/** The horizon's name stands at its left end, or, where it would reach the CVP and its letters, at the other or under the line. */
function besideCvp(item: DisplayItem, items: DisplayList, { stage, scaleRatio }: Exercise): DisplayItem {
  if (item.kind !== "lettering" || item.id !== "picture.horizon.name") return item;
  const [right, up] = item.shiftMm;
  const atRight = { at: [stage.opening.width / 2, item.at[1]], anchor: "end" } as const;
  const under = -up - item.heightMm;
  const places: readonly Lettering[] = [
    item,
    { ...item, ...atRight, shiftMm: [-right, up] },
    { ...item, shiftMm: [right, under] },
    { ...item, ...atRight, shiftMm: [-right, under] },
  ];
  const cvp = items.filter(({ id }) => id.startsWith("picture.cvp"));
  const room = cvp.flatMap((each) => {
    if (each.kind !== "lettering") return [];
    const [left, bottom, right, top] = planeBox(each, scaleRatio, NAMES_APART_MM);
    const middle = (bottom + top) / 2;
    return makeStroke("room", [
      [left, middle],
      [right, middle],
    ]);
  });
  return clearest(places, { items: [...cvp, ...room], scaleRatio });
}

/** The layers of the picture on paper: the set over the stage's lines, and the stage's letters over both. */
export function pictureLayers(
  { stage, set, window }: SheetPicture,
  where: Pick<Layer, "scaleRatio" | "at">,
): readonly [Layer, Layer, Layer] {
  return [
    { ...where, list: stage.filter(({ kind }) => kind === "stroke") },
    { ...where, list: set, window },
    { ...where, list: stage.filter(({ kind }) => kind === "lettering") },
  ];
}
