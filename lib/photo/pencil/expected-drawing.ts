import type { PracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import { askedPoints } from "../../habits/asked";
import { hypotheses } from "../../habits/hypothesis";
import { perfectMarks } from "../../habits/reveal";
import { backProjectToFloor } from "../../perspective/project";
import { listEdges } from "../../plan/list-edges";
import type { SheetPlace } from "../../sheet/place-drawings";
import type { PicturePoint } from "../../stage/frame";
import { drawnOn } from "./drawn-on";

/** A line that a student draws when its ends are on the sheet: places in the list of points; of `given` ones after the asked. */
export type ExpectedLine = { readonly from: number; readonly to: number };

/** One way the whole drawing may lie: true, or as a wrong idea would have it. Places of the asked points, in their order. */
export type Way = { readonly places: readonly SheetPlace[]; readonly true: boolean };

export type ExpectedDrawing = {
  /** Names of the asked points. */
  readonly asked: readonly string[];
  /** Given points, which are printed where they are. */
  readonly given: readonly SheetPlace[];
  readonly lines: readonly ExpectedLine[];
  readonly ways: readonly Way[];
};

/** Ways that put no point farther apart than this are one, millimetres. */
const SAME_WAY_MM = 1.2;

/**
 * What may be on the sheet: the points that are asked, the lines between them, and where they lie in the true drawing and in
 * the drawings of students who hold a wrong idea. Those are all off alike, so that the whole drawing is known again by one of
 * them where its points alone are not.
 */
export function expectedDrawing(sheet: PracticeSheet): ExpectedDrawing {
  const { exercise } = sheet;
  const reading = exercise.task.kind === "picture-to-plan";
  const points = exercisePoints(exercise);
  const perfect = perfectMarks(exercise, points);
  const asked = perfect.map(({ point }) => point.name);
  const given = reading ? [] : exercise.task.given.filter((name) => points.get(name)?.picture);
  const all = [...asked, ...given];
  const lines = listEdges(exercise.plan, points).flatMap(({ from, to }): ExpectedLine[] => {
    const [a, b] = [all.indexOf(from), all.indexOf(to)];
    return a < 0 || b < 0 || (a >= asked.length && b >= asked.length) ? [] : [{ from: a, to: b }];
  });
  const onSheet = (place: PicturePoint, point: ProjectedPoint) => sheetPlace(sheet, place, point);
  const truth = perfect.map(({ point, target }) => onSheet(target, point));
  const ways: Way[] = [{ places: truth as readonly SheetPlace[], true: true }];
  for (const idea of hypotheses(askedPoints(exercise, points, perfect), perfect, exercise.scaleRatio)) {
    const fromTrue = perfect.map(({ target }, i) => idea.places[i] ?? target);
    const fromOwn = reading ? [] : [drawnOn(exercise, points, perfect, idea)];
    for (const drawn of [fromTrue, ...fromOwn]) {
      const way = perfect.map(({ point }, i) => onSheet(drawn[i] as PicturePoint, point));
      const fine = way.every((place) => place?.every(Number.isFinite));
      const isNew = () =>
        ways.every(({ places }) => places.some((place, i) => apart(place, way[i] as SheetPlace) >= SAME_WAY_MM));
      if (fine && isNew()) ways.push({ places: way as readonly SheetPlace[], true: false });
    }
  }
  return {
    asked,
    given: given.map((name) => sheetPlace(sheet, points.get(name)?.picture as PicturePoint, null) as SheetPlace),
    lines: reading ? [] : lines,
    ways,
  };
}

/** Where a place of the picture stands on the sheet; reading back, where the place on the plan stands that it shows, null where it shows none. */
function sheetPlace(
  { exercise, layout, scale }: PracticeSheet,
  place: PicturePoint,
  point: ProjectedPoint | null,
): SheetPlace | null {
  const perMetre = 1000 / scale.ratio;
  if (exercise.task.kind === "plan-to-picture") {
    const [right, down] = layout.picture.at;
    return [right + place[0] * perMetre, down - place[1] * perMetre];
  }
  const shown = backProjectToFloor(exercise.viewer, exercise.stage, place, point?.base ?? 0);
  const [right, down] = layout.plan.at;
  return shown.found ? [right + shown.at[0] * perMetre, down - shown.at[1] * perMetre] : null;
}

function apart(a: SheetPlace, b: SheetPlace): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
