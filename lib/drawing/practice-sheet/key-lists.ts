import { constructPoint } from "../../construction/construct-point";
import type { Step } from "../../construction/step";
import type { Exercise } from "../../exercise/exercise";
import { boardOf } from "../../exercise/exercise-board";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import { shortName } from "../../plan/say-point";
import type { PlaneBox } from "../clear-lettering";
import { drawConstruction } from "../demonstration/draw-construction";
import { readBack } from "../demonstration/read-back";
import type { DisplayItem, DisplayList, DrawingPoint, Stroke } from "../display-list";
import { makeStroke } from "../make-stroke";
import { numberPoints } from "./number-points";

type Points = ReadonlyMap<string, ProjectedPoint>;

/** Where a point truly falls on the drawing that the student marks, metres; null where it is not seen. */
export function trueOn({ task }: Pick<Exercise, "task">, point: ProjectedPoint): DrawingPoint | null {
  return task.kind === "picture-to-plan" ? [point.at[0], point.at[1]] : point.picture;
}

/** The asked points in red at their true places, each with a cross, its number, and a corner's letter; metres of the drawing that is marked. */
export function drawTruePoints(exercise: Exercise, points: Points, over: DisplayList): DisplayList {
  const arm = (CROSS_MM * exercise.scaleRatio) / 1000;
  const crosses = exercise.task.marks.flatMap((name): Stroke[] => {
    const point = points.get(name);
    const at = point && trueOn(exercise, point);
    if (!at) return [];
    const [x, y] = at;
    return [
      [-arm, 0],
      [0, arm],
    ].map(([dx = 0, dy = 0], i) =>
      makeStroke(
        `key.${name}.${i}`,
        [
          [x - dx, y - dy],
          [x + dx, y + dy],
        ],
        { pencil: "red", weight: "thick" },
      ),
    );
  });
  const label = (point: ProjectedPoint, number: number) =>
    point.group === "corner" ? `${number} ${shortName(point)}` : String(number);
  const numbers = numberPoints(exercise, points, (each) => trueOn(exercise, each), [...over, ...crosses], label);
  return [...crosses, ...numbers.map((item) => ({ ...item, id: `key.${item.id}`, pencil: "red" as const }))];
}

/** Arms of the cross at a true point, millimetres. */
const CROSS_MM = 1.3;

export type KeyConstruction = {
  readonly point: ProjectedPoint;
  readonly method: string;
  readonly steps: readonly Step[];
};

/** How each asked point is found with the ruler, from what is on the sheet when its turn comes. */
export function keyConstructions(exercise: Exercise, points: Points): readonly KeyConstruction[] {
  const { marks, given, kind } = exercise.task;
  return marks.flatMap((name, i): KeyConstruction[] => {
    const point = points.get(name);
    if (!point) return [];
    if (kind === "picture-to-plan")
      return [{ point, method: "read back", steps: readBack(exercise, point)?.steps ?? [] }];
    const result = constructPoint(boardOf(exercise, [...given, ...marks.slice(0, i)]), name);
    if (!result.found) return [{ point, method: "by eye", steps: [] }];
    return [{ point, method: result.construction.method, steps: result.construction.steps }];
  });
}

/** The lines of all constructions in one drawing, each line once, thin and blue; picture metres. */
export function drawKeyConstructions(
  constructions: readonly KeyConstruction[],
  { scaleRatio }: Pick<Exercise, "scaleRatio">,
  window: PlaneBox,
): DisplayList {
  const drawn = new Map<string, DisplayItem>();
  for (const { point, steps } of constructions) {
    const list = drawConstruction(steps, { drawn: steps.length, scaleRatio, window, over: [] });
    for (const item of list) {
      if (item.kind === "lettering") continue;
      const place = item.points.map((at) => at.map((metres) => metres.toFixed(3)).join()).join(" ");
      drawn.set(place, { ...item, id: `key.${point.name}.${item.id}`, weight: "thin" });
    }
  }
  return [...drawn.values()];
}
