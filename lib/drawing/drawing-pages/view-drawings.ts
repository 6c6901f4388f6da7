import { constructPoint } from "../../construction/construct-point";
import type { Exercise } from "../../exercise/exercise";
import { boardOf } from "../../exercise/exercise-board";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import { listEdges } from "../../plan/list-edges";
import { sayPoint } from "../../plan/say-point";
import type { PicturePoint } from "../../stage/frame";
import type { PlaneBox } from "../clear-lettering";
import { ruleRoom } from "../demonstration/base-sheets";
import { drawConstruction } from "../demonstration/draw-construction";
import { drawSetSoFar } from "../demonstration/draw-set-so-far";
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

type Points = ReadonlyMap<string, ProjectedPoint>;

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
    const reading = task.kind === "picture-to-plan";
    const marks = reading ? [] : drawTruePoints(exercise, points, sheet);
    const drawing = within([...lines, ...sheet, ...marks], window, exercise);
    return { name: "Constructions", drawings: [drawing], words: reading ? [] : namesOfMarks(exercise, points) };
  }
  const before = task.marks.slice(0, Math.max(0, task.marks.indexOf(point.name)));
  const result = constructPoint(boardOf(exercise, [...task.given, ...before]), point.name);
  const steps = result.found ? result.construction.steps : [];
  const placed = drawPlaced(exercise, points, before, sheet);
  const over = [...sheet, ...placed];
  const lines = drawConstruction(steps, { drawn: steps.length, scaleRatio, window, over });
  const said = sayPoint(point);
  return {
    name: `Construction of ${said}${result.found ? ` (${result.construction.method})` : ""}`,
    drawings: [within([...over, ...lines], window, exercise)],
    words: result.found ? steps.map((step, i) => `${i + 1}. ${step.say}`) : [`There is none: ${result.reason}.`],
  };
}

/** What the numbers beside the points mean, in one line. */
function namesOfMarks({ task }: Exercise, points: Points): readonly string[] {
  const named = task.marks.flatMap((name, i) => {
    const point = points.get(name);
    return point?.picture ? [`${i + 1}: ${sayPoint(point)}`] : [];
  });
  return named.length > 0 ? [`${named.join("; ")}.`] : [];
}

/** What was placed before the point whose turn it is, at its true place: the construction starts from there. What is given is on the sheet. */
function drawPlaced(exercise: Exercise, points: Points, before: readonly string[], sheet: DisplayList): DisplayList {
  if (exercise.task.kind === "picture-to-plan") return [];
  const places = new Map(
    [...exercise.task.given, ...before].flatMap((name): [string, PicturePoint][] => {
      const at = points.get(name)?.picture;
      return at ? [[name, at]] : [];
    }),
  );
  const edges = listEdges(exercise.plan, points);
  const over = [...sheet, ...ruleRoom(exercise)];
  const known = new Set(sheet.map(({ id }) => id));
  return drawSetSoFar("picture", { exercise, points, edges, places, fresh: null, over }).filter(
    ({ id }) => !known.has(id),
  );
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
