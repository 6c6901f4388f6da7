import { constructPoint } from "../../construction/construct-point";
import type { Exercise } from "../../exercise/exercise";
import { boardOf } from "../../exercise/exercise-board";
import { exercisePoints } from "../../exercise/exercise-points";
import { sayPoint } from "../../plan/say-point";
import type { PlaneBox } from "../clear-lettering";
import { drawConstruction } from "../demonstration/draw-construction";
import { displayBounds } from "../display-bounds";
import type { DisplayList } from "../display-list";
import { drawFinishedPicture } from "../draw-finished-picture";
import { drawPlan } from "../draw-plan";
import { figurePlace } from "../figure-place";
import { drawPlasterRule } from "../picture-parts/draw-plaster-rule";
import { drawKeyConstructions, drawTruePoints, keyConstructions } from "../practice-sheet/key-lists";
import { sheetPicture } from "../practice-sheet/sheet-picture";
import { drawSightTicks } from "./draw-sight-ticks";
import type { DrawingView } from "./drawing-view";

/** A drawing of a page: its list, metres, and how far it reaches. */
export type Drawing = { readonly list: DisplayList; readonly window: PlaneBox };

/** The drawings of a page from the top down, its own title, and sentences that belong to it. */
export type ViewDrawings = {
  readonly name: string;
  readonly drawings: readonly Drawing[];
  readonly words: readonly string[];
};

/** Paper round the opening on which construction lines are drawn, millimetres: as much as a hand sheet has. */
const ROUND_MM = 45;

/** What a view of an exercise shows. `point` names the one point to be constructed; left out, all that are asked are. */
export function viewDrawings(exercise: Exercise, view: DrawingView, point: string | null = null): ViewDrawings {
  if (view === "construction") return construction(exercise, point);
  const plan = () => whole(drawPlan(exercise), exercise);
  if (view === "plan") return { name: "Ground plan", drawings: [plan()], words: [] };
  const finished = drawFinishedPicture(exercise, { figureAt: figurePlace(exercise.stage) });
  if (view === "picture") return { name: "Picture", drawings: [whole(finished, exercise)], words: [] };
  const { stage, viewer, units, scaleRatio } = exercise;
  const rule = drawPlasterRule(stage, viewer, units, scaleRatio);
  const ticks = drawSightTicks(exercise, displayBounds(finished, scaleRatio) ?? [0, 0, 0, 0]);
  const picture = [...finished, ...rule, ...ticks];
  return { name: "Picture and ground plan", drawings: [whole(picture, exercise), plan()], words: [] };
}

function construction(exercise: Exercise, name: string | null): ViewDrawings {
  const { scaleRatio, task } = exercise;
  const points = exercisePoints(exercise);
  const { stage, set } = sheetPicture(exercise);
  const sheet = [...stage, ...set];
  const window = grow(displayBounds(sheet, scaleRatio) ?? [0, 0, 0, 0], (ROUND_MM * scaleRatio) / 1000);
  const point = name === null ? undefined : points.get(name);
  if (!point) {
    const lines = drawKeyConstructions(keyConstructions(exercise, points), exercise, window);
    const marks = task.kind === "picture-to-plan" ? [] : drawTruePoints(exercise, points, sheet);
    return { name: "Constructions", drawings: [within([...lines, ...sheet, ...marks], window, exercise)], words: [] };
  }
  const before = task.marks.slice(0, Math.max(0, task.marks.indexOf(point.name)));
  const result = constructPoint(boardOf(exercise, [...task.given, ...before]), point.name);
  const steps = result.found ? result.construction.steps : [];
  const lines = drawConstruction(steps, { drawn: steps.length, scaleRatio, window, over: sheet });
  const said = sayPoint(point);
  return {
    name: `Construction of ${said}${result.found ? ` (${result.construction.method})` : ""}`,
    drawings: [within([...sheet, ...lines], window, exercise)],
    words: result.found ? steps.map((step, i) => `${i + 1}. ${step.say}`) : [`There is none: ${result.reason}.`],
  };
}

function whole(list: DisplayList, { scaleRatio }: Pick<Exercise, "scaleRatio">): Drawing {
  return { list, window: displayBounds(list, scaleRatio) ?? [0, 0, 0, 0] };
}

/** A drawing that ends at a window, or before it where nothing is drawn. */
function within(list: DisplayList, window: PlaneBox, exercise: Pick<Exercise, "scaleRatio">): Drawing {
  const drawn = whole(list, exercise).window;
  return {
    list,
    window: [
      Math.max(window[0], drawn[0]),
      Math.max(window[1], drawn[1]),
      Math.min(window[2], drawn[2]),
      Math.min(window[3], drawn[3]),
    ],
  };
}

function grow([left, bottom, right, top]: PlaneBox, by: number): PlaneBox {
  return [left - by, bottom - by, right + by, top + by];
}
