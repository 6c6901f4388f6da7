import type { PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { Mark } from "@/lib/exercise/marks";
import { listEdges } from "@/lib/plan/list-edges";
import type { SheetPlace } from "@/lib/sheet/place-drawings";

export type DrawnLine = {
  readonly from: SheetPlace;
  readonly to: SheetPlace;
  /** Whether more lines meet at its ends: there a hand runs over, at a lone end it stops. */
  readonly met: readonly [from: boolean, to: boolean];
};

/** What a student draws of a set of marks: the lines that they complete, and a cross at each point that no line reaches. */
export type Drawn = {
  /** Where each mark lies on the sheet. */
  readonly places: ReadonlyMap<string, SheetPlace>;
  readonly lines: readonly DrawnLine[];
  readonly crosses: readonly SheetPlace[];
};

/** Ends nearer than this are one place of the drawing, millimetres. */
const SAME_MM = 0.3;

export function drawnLines({ exercise, layout }: PracticeSheet, marks: readonly Mark[]): Drawn {
  const reading = exercise.task.kind === "picture-to-plan";
  const origin = reading ? layout.plan.at : layout.picture.at;
  const perMetre = 1000 / exercise.scaleRatio;
  const onSheet = ([x, up]: readonly [number, number]): SheetPlace => [
    origin[0] + x * perMetre,
    origin[1] - up * perMetre,
  ];
  const places = new Map(marks.map((mark): [string, SheetPlace] => [mark.point, onSheet(mark.at)]));
  if (reading) return { places, lines: [], crosses: [...places.values()] };
  const points = exercisePoints(exercise);
  const given = new Map(
    exercise.task.given.flatMap((name): [string, SheetPlace][] => {
      const at = points.get(name)?.picture;
      return at ? [[name, onSheet(at)]] : [];
    }),
  );
  const all = listEdges(exercise.plan, points).flatMap(({ from, to }) => {
    const [start, end] = [from, to].map((name) => places.get(name) ?? given.get(name));
    return start && end ? [{ from: start, to: end, printed: !places.has(from) && !places.has(to) }] : [];
  });
  const meeting = (place: SheetPlace) => all.filter(({ from, to }) => near(place, from) || near(place, to)).length;
  const lines = all
    .filter(({ from, to, printed }) => !printed && !near(from, to))
    .map(({ from, to }): DrawnLine => ({ from, to, met: [meeting(from) > 1, meeting(to) > 1] }));
  return { places, lines, crosses: [...places.values()].filter((place) => meeting(place) === 0) };
}

function near(a: SheetPlace, b: SheetPlace): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) < SAME_MM;
}
