import { type Exercise, UNITS, type Unit } from "@/lib/exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { WrittenExercise } from "@/lib/exercise/exercise-schema";
import { readExercise } from "@/lib/exercise/read-exercise";
import { generateExercise } from "@/lib/generator/generate-exercise";
import { LEVELS } from "@/lib/generator/levels";

/** Seeds of a unit when nothing is said: 10 a level. `SEEDS=1000` makes the full run, 200 a level; it takes about two minutes on two cores. */
const USUAL_SEEDS = 50;

const asked = process.env.SEEDS === undefined ? USUAL_SEEDS : Number(process.env.SEEDS);
if (!(Number.isInteger(asked) && asked > 0)) throw new Error(`SEEDS must be a whole number of runs, not ${asked}.`);
const EACH = Math.ceil(asked / LEVELS.length);

/** Time allowed for making a unit's exercises and for going through them, milliseconds: 500 an exercise, on a busy machine. */
export const PATIENCE_MS = Math.max(60_000, EACH * LEVELS.length * 500);

export type Made = {
  readonly name: string;
  readonly text: string;
  readonly written: WrittenExercise;
  readonly exercise: Exercise;
  readonly points: ReadonlyMap<string, ProjectedPoint>;
};

function make(unit: Unit, level: number, seed: number): Made {
  const text = JSON.stringify(generateExercise({ unit, level, seed }));
  const reading = readExercise(text);
  if (!reading.ok) throw new Error(`${unit} ${level} ${seed}: ${JSON.stringify(reading.problems)}`);
  return {
    name: `${unit}-${level}-${seed}`,
    text,
    written: JSON.parse(text) as WrittenExercise,
    exercise: reading.exercise,
    points: exercisePoints(reading.exercise),
  };
}

/** A unit's exercises over the seeds of this run, read from their text as a file would be. */
export function makeUnit(unit: Unit): readonly Made[] {
  return LEVELS.flatMap((level) => Array.from({ length: EACH }, (_, seed) => make(unit, level, seed)));
}

export { UNITS };

/** Metres of the author's foot: in metric exercises 300 mm stand for it. */
export function footOf({ exercise }: Made): number {
  return exercise.units === "m" ? 0.3 : 0.3048;
}

/** Whether a place lies inside an outline, by crossings of a ray to its right. */
export function isInside(outline: readonly (readonly [number, number])[], [x, y]: readonly [number, number]): boolean {
  return (
    outline.filter(([ax, ay], i) => {
      const [bx, by] = outline[(i + 1) % outline.length] as readonly [number, number];
      return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax);
    }).length %
      2 ===
    1
  );
}

/** Outlines and tops of the boxes that stand on a level or raked stage: furniture, platforms and each tread, from their named points. */
export function boxesOf({ exercise, points }: Made): readonly Box[] {
  const at = (name: string) => (points.get(name) as ProjectedPoint).at;
  const corners = (id: string, count: number) => Array.from({ length: count }, (_, i) => `${id}.${i + 1}`);
  const { furniture, platforms, stairs } = exercise.plan;
  const named = [
    ...furniture.map(({ id }) => ({ id, count: 4 })),
    ...platforms.map(({ id, outline }) => ({ id, count: outline.length })),
  ];
  return [
    ...named.map(({ id, count }) => ({
      id,
      outline: corners(id, count).map((name): readonly [number, number] => [
        at(`${name}.foot`)[0],
        at(`${name}.foot`)[1],
      ]),
      top: at(`${id}.1.top`)[2],
    })),
    ...stairs.flatMap(({ id, steps, tread }) =>
      corners(id, steps).map((name) => {
        const [[ax, ay, top], [bx, by]] = [at(`${name}.start`), at(`${name}.end`)];
        const long = Math.hypot(bx - ax, by - ay);
        const [u, v] = [(-(by - ay) / long) * tread, ((bx - ax) / long) * tread];
        return {
          id,
          top,
          outline: [
            [ax, ay],
            [bx, by],
            [bx + u, by + v],
            [ax + u, ay + v],
          ] as const,
        };
      }),
    ),
  ];
}

export type Box = {
  readonly id: string;
  readonly outline: readonly (readonly [number, number])[];
  readonly top: number;
};
