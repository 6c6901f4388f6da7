import type { Exercise } from "../../exercise/exercise";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import { clearest } from "../clear-lettering";
import type { DisplayItem, DisplayList, DrawingPoint } from "../display-list";
import { LETTER_MM, makeLettering } from "../make-stroke";

/** Directions and reaches from the point to the middle of its number, degrees and millimetres, best first. */
const TURNS_DEG = [-45, -135, 45, 135, -90, 90, 0, 180, -20, -160, 20, 160] as const;
const REACHES_MM = [2.6, 3.6, 5] as const;
/** Points nearer than this are one place, millimetres of paper. */
const ONE_PLACE_MM = 0.3;

/**
 * The numbers of asked points beside them, on the drawing that shows where they are: "3", or "3, 7" where a top stands over
 * its foot. `where` gives a point's place on that drawing, metres; a point that has none is left out. `label` may
 * say more than the number.
 */
export function numberPoints(
  { task, scaleRatio }: Pick<Exercise, "task" | "scaleRatio">,
  points: ReadonlyMap<string, ProjectedPoint>,
  where: (point: ProjectedPoint) => DrawingPoint | null,
  over: DisplayList,
  label: (point: ProjectedPoint, number: number) => string = (_, number) => String(number),
): DisplayList {
  const places: { at: DrawingPoint; numbers: string[] }[] = [];
  task.marks.forEach((name, i) => {
    const point = points.get(name);
    const at = point && where(point);
    if (!at) return;
    const near = (ONE_PLACE_MM * scaleRatio) / 1000;
    const known = places.find((place) => Math.hypot(place.at[0] - at[0], place.at[1] - at[1]) < near);
    if (known) known.numbers.push(label(point, i + 1));
    else places.push({ at, numbers: [label(point, i + 1)] });
  });
  const letters: DisplayItem[] = [];
  for (const { at, numbers } of places) {
    const text = numbers.join(", ");
    const heightMm = LETTER_MM.small;
    const tried = REACHES_MM.flatMap((reach) =>
      TURNS_DEG.map((turn) => {
        const angle = (turn * Math.PI) / 180;
        const wide = reach + (text.length - 1) * heightMm * 0.3;
        const shiftMm = [wide * Math.cos(angle), reach * Math.sin(angle) - heightMm / 2] as const;
        return makeLettering(`number.${numbers[0]}`, at, text, { heightMm, shiftMm, face: "strong" });
      }),
    );
    letters.push(clearest(tried, { items: [...over, ...letters], scaleRatio }));
  }
  return letters;
}
