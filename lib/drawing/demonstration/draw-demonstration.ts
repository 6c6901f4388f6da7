import type { Exercise } from "../../exercise/exercise";
import { exercisePoints } from "../../exercise/exercise-points";
import { apronDrop } from "../../exercise/inside-frame";
import { listEdges } from "../../plan/list-edges";
import type { PlaneBox } from "../clear-lettering";
import type { DisplayList, DrawingPoint } from "../display-list";
import { drawFinishedPicture } from "../draw-finished-picture";
import { drawPlace } from "../draw-place";
import { figurePlace } from "../figure-place";
import { legible, pictureSheet, planSheet, ruledStage, ruleRoom } from "./base-sheets";
import type { DemonstrationStep, SheetPart } from "./demonstration-step";
import { drawConstruction } from "./draw-construction";
import { drawSetSoFar } from "./draw-set-so-far";

/** One drawing of a step, in the order it is laid down; metres of that drawing. */
export type DrawnPlane = {
  /** The sheet's own furniture: thin. */
  readonly sheet: DisplayList;
  readonly set: DisplayList;
  /** What finds the point: lines of the picture, or the dimensions of its place on the plan. */
  readonly construction: DisplayList;
  /** The place spoken of. */
  readonly lit: DrawingPoint | null;
};

export type DrawnStep = { readonly picture: DrawnPlane; readonly plan: DrawnPlane };

/** How each drawing is laid out: the scale its letters are for, and what of it is seen. */
export type DrawingLayout = { readonly scaleRatio: number; readonly window: PlaneBox };

/** What each part of the empty picture is made of, by the beginnings of its ids. */
const PART_IDS: Readonly<Record<SheetPart, readonly string[]>> = {
  proscenium: ["picture.proscenium"],
  rule: ["picture.rule", "picture.centre-line"],
  horizon: ["picture.horizon"],
  cvp: ["picture.cvp"],
  stage: ["picture.stage"],
};

const NOTHING: DisplayList = [];

/**
 * Draws the steps of an exercise's demonstration for one layout. What does not change from step to step is drawn once, and is
 * the same list each time, so that a page has nothing to draw anew.
 */
export function startDemonstrationDrawing(
  exercise: Exercise,
  layout: { readonly picture: DrawingLayout; readonly plan: DrawingLayout },
): (step: DemonstrationStep) => DrawnStep {
  const picture = startPicture({ ...exercise, scaleRatio: layout.picture.scaleRatio }, layout.picture.window);
  const plan = startPlan({ ...exercise, scaleRatio: layout.plan.scaleRatio });
  return (step) => ({ picture: picture(step), plan: plan(step) });
}

function startPicture(exercise: Exercise, window: PlaneBox): (step: DemonstrationStep) => DrawnPlane {
  const points = exercisePoints(exercise);
  const edges = listEdges(exercise.plan, points);
  const sheet = pictureSheet(exercise);
  const parts = new Map<number, DisplayList>();
  const figures = ruleRoom(exercise);
  const places = new Map([...points].flatMap(([name, { picture }]) => (picture ? [[name, picture] as const] : [])));
  const { opening } = exercise.stage;
  const box: PlaneBox = [
    -opening.width / 2,
    apronDrop(exercise.stage, exercise.viewer),
    opening.width / 2,
    opening.height,
  ];
  const common = { exercise, points, edges };
  // Neither is needed before its step, and each is the dearest thing to draw.
  let toRead: DisplayList | null = null;
  let finished: DisplayList | null = null;

  return ({ shown }) => {
    if (shown.finished) {
      const set = finished ?? drawFinishedPicture(exercise, { figureAt: figurePlace(exercise.stage) });
      finished = set;
      return { sheet: NOTHING, set, construction: NOTHING, lit: null };
    }
    const under = sheetOf(shown.parts);
    if (shown.toRead)
      toRead ??= drawSetSoFar("picture", { ...common, places, fresh: null, over: [...sheet, ...figures], box });
    const placed = new Map([...places].filter(([name]) => shown.placed.includes(name)));
    const set =
      shown.toRead && toRead
        ? toRead
        : isRead()
          ? NOTHING
          : drawSetSoFar("picture", { ...common, places: placed, fresh: shown.fresh, over: [...under, ...figures] });
    const construction = drawConstruction(shown.lines, {
      drawn: shown.drawn,
      scaleRatio: exercise.scaleRatio,
      window,
      over: [...under, ...set],
    });
    return { sheet: under, set, construction, lit: shown.lit.picture };
  };

  function isRead(): boolean {
    return exercise.task.kind === "picture-to-plan";
  }

  function sheetOf(shown: readonly SheetPart[]): DisplayList {
    const known = parts.get(shown.length);
    if (known) return known;
    const ids = shown.flatMap((part) => PART_IDS[part]);
    const list = sheet.filter(({ id }) => ids.some((start) => id.startsWith(start)));
    parts.set(shown.length, list);
    return list;
  }
}

function startPlan(exercise: Exercise): (step: DemonstrationStep) => DrawnPlane {
  const points = exercisePoints(exercise);
  const edges = listEdges(exercise.plan, points);
  const { stage, set: wholeSet, names } = planSheet(exercise);
  const reading = exercise.task.kind === "picture-to-plan";
  const ruled = reading ? ruledStage(exercise) : stage;
  const whole = [...stage, ...wholeSet];

  return ({ shown, point }) => {
    const lit = shown.lit.plan;
    const under = reading ? ruled : whole;
    const element = points.get(point ?? "")?.element;
    const own = reading ? NOTHING : names.filter(({ id }) => id.split(".")[2] === element);
    const over = [...under, ...own];
    const place = lit && point ? drawPlace(exercise, lit, point, { over }).map(legible) : NOTHING;
    if (shown.finished) return { sheet: stage, set: wholeSet, construction: NOTHING, lit: null };
    if (!reading) {
      return { sheet: stage, set: own.length > 0 ? [...wholeSet, ...own] : wholeSet, construction: place, lit };
    }
    const places = new Map(
      shown.placed.flatMap((name) => {
        const at = points.get(name)?.at;
        return at ? [[name, [at[0], at[1]] as const] as const] : [];
      }),
    );
    const set = drawSetSoFar("plan", { exercise, points, edges, places, fresh: shown.fresh, over: ruled });
    return { sheet: ruled, set, construction: place, lit };
  };
}
