import type { Exercise } from "../../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import { FOOT_M } from "../../measure/length";
import { listEdges } from "../../plan/list-edges";
import type { PlanPoint } from "../../stage/frame";
import { clearest } from "../clear-lettering";
import { ruledStage } from "../demonstration/base-sheets";
import { drawSetSoFar } from "../demonstration/draw-set-so-far";
import type { DisplayItem, DisplayList } from "../display-list";
import { drawPlan } from "../draw-plan";
import { makeLettering, makeStroke } from "../make-stroke";
import { STUB_M } from "../plan-symbols/draw-stub";
import { numberPoints } from "./number-points";

/** Lines of the grid that a picture is read back on to, metres: every five feet, or every metre. */
const GRID_M: Readonly<Record<Exercise["units"], number>> = { "ft-in": 5 * FOOT_M, m: 1 };
const LINE = "plan.stage.plaster-line";
const NAME = `${LINE}.name`;
const RAKE = "plan.stage.rake.ratio";
/** How far the plaster line runs past the wall, millimetres. */
const PAST_MM = 1.5;
/** The plaster line's name stands this far off it, millimetres. */
const NAME_CLEAR_MM = 1.4;

/**
 * The plan below the picture: the whole of it, or, where it is to be read back, the bare stage with a faint grid, a rule along
 * its plaster line, and what is given. Plan metres.
 */
export function sheetPlan(exercise: Exercise): DisplayList {
  return exercise.task.kind === "picture-to-plan" ? onSheet(emptyPlan(exercise), exercise) : wholePlan(exercise);
}

/** The same with the numbers of the points that are asked and have no letter, where the plan is what they are read from. */
export function numberedPlan(exercise: Exercise): DisplayList {
  const plan = sheetPlan(exercise);
  if (exercise.task.kind === "picture-to-plan") return plan;
  return [...plan, ...numberPoints(exercise, exercisePoints(exercise), unlettered, plan)];
}

/** Corners have their letters on the plan; other points are found by their numbers. */
function unlettered({ group, at }: ProjectedPoint): PlanPoint | null {
  return group === "corner" ? null : [at[0], at[1]];
}

/** The whole plan, for the key of an exercise that is read back as well. */
export function wholePlan(exercise: Exercise): DisplayList {
  return onSheet(drawPlan(exercise), exercise);
}

function onSheet(plan: DisplayList, exercise: Exercise): DisplayList {
  return nameInside(plan, exercise).map((item) => endSoon(item, exercise));
}

function emptyPlan(exercise: Exercise): DisplayList {
  const points = exercisePoints(exercise);
  const places = new Map(
    exercise.task.given.flatMap((name): [string, PlanPoint][] => {
      const point = points.get(name);
      return point ? [[name, [point.at[0], point.at[1]]]] : [];
    }),
  );
  // How steeply the floor rises is not to be read off a picture.
  const rake = drawPlan(exercise).filter(({ id }) => id === RAKE);
  const bare = [...drawGrid(exercise), ...ruledStage(exercise), ...rake];
  const edges = listEdges(exercise.plan, points);
  return [...bare, ...drawSetSoFar("plan", { exercise, points, edges, places, fresh: null, over: bare })];
}

function drawGrid({ stage, units }: Exercise): DisplayList {
  const step = GRID_M[units];
  const half = stage.opening.width / 2;
  const lines: DisplayItem[] = [];
  for (let i = 1; i * step < half; i++)
    for (const side of [-1, 1])
      lines.push(
        makeStroke(
          `plan.grid.across.${side * i}`,
          [
            [side * i * step, 0],
            [side * i * step, stage.depth],
          ],
          { faint: true },
        ),
      );
  for (let i = 1; i * step < stage.depth; i++)
    lines.push(
      makeStroke(
        `plan.grid.up.${i}`,
        [
          [-half, i * step],
          [half, i * step],
        ],
        { faint: true },
      ),
    );
  return lines;
}

/** The plaster line ends a little past the proscenium wall, so that the sheet has room for a larger scale. */
function endSoon(item: DisplayItem, { stage, scaleRatio }: Exercise): DisplayItem {
  if (item.kind !== "stroke" || item.id !== LINE) return item;
  const end = stage.opening.width / 2 + STUB_M + (PAST_MM * scaleRatio) / 1000;
  return {
    ...item,
    points: [
      [-end, 0],
      [end, 0],
    ],
  };
}

/** The plaster line's name goes inside the opening: under the line or over it, at either end, where it crosses least. */
function nameInside(plan: DisplayList, { stage, scaleRatio }: Exercise): DisplayList {
  const name = plan.find(({ id }) => id === NAME);
  if (name?.kind !== "lettering") return plan;
  const items = plan.filter(({ id }) => id !== NAME);
  const places = [-name.heightMm - NAME_CLEAR_MM, NAME_CLEAR_MM].flatMap((up) =>
    ([1, -1] as const).map((side) =>
      makeLettering(NAME, [(side * stage.opening.width) / 2, 0], name.text, {
        heightMm: name.heightMm,
        anchor: side === 1 ? "end" : "start",
        shiftMm: [-side * NAME_CLEAR_MM, up],
      }),
    ),
  );
  return [...items, clearest(places, { items, scaleRatio })];
}
