import fc from "fast-check";
import { type Exercise, STRICTNESSES } from "@/lib/exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { Mark, MarkSet } from "@/lib/exercise/marks";
import { readExerciseJson } from "@/lib/exercise/read-exercise";
import type { PicturePoint } from "@/lib/stage/frame";
import { real } from "../perspective/arbitraries";

/** Depths of the corners of a run of walls, as shares of the stage's depth, from stage right round to stage left. */
const depths = fc.tuple(real(0.05, 0.3), real(0.35, 0.9), real(0.35, 0.9), real(0.05, 0.3));

/**
 * A set of its own: three walls with a door and a window, a platform, a table and a column, on a level or raked stage, for
 * an eye on or off the centre line. Read from the written form, so that the whole way in is used.
 */
export function anyExercise(goOnFrom: "true" | "own"): fc.Arbitrary<Exercise> {
  return fc
    .record({
      width: real(8, 12),
      depth: real(6, 12),
      rake: fc.oneof(fc.constant(0), real(0.01, 1 / 18)),
      distance: real(7, 20),
      eyeHeight: real(1.4, 3.5),
      offset: real(-1.5, 1.5),
      shares: depths,
      height: real(2.6, 4),
      base: real(0, 0.4),
      turn: real(-60, 60),
      scale: fc.constantFrom("1:25", "1:50", "1/4in=1ft", "1/2in=1ft"),
      strictness: fc.constantFrom(...STRICTNESSES),
    })
    .map((draw) => {
      const [a, b, c, d] = draw.shares.map((share) => share * draw.depth) as [number, number, number, number];
      const across = draw.width / 2;
      const reading = readExerciseJson({
        format: "plasterline.exercise/1",
        id: "any",
        title: "Any set",
        unit: "sets",
        level: 5,
        units: "m",
        scale: draw.scale,
        stage: { opening: { width: draw.width, height: 6 }, depth: draw.depth, apron: 1, rake: draw.rake },
        viewer: { distance: draw.distance, eyeHeight: draw.eyeHeight, offset: draw.offset },
        plan: {
          corners: { A: [-0.9 * across, a], B: [-0.5 * across, b], C: [0.5 * across, c], D: [0.9 * across, d] },
          walls: [
            {
              id: "W1",
              from: "A",
              to: "B",
              height: draw.height,
              openings: [{ id: "door", kind: "door", at: 0.2, width: 0.9, head: 2.1 }],
            },
            {
              id: "W2",
              from: "B",
              to: "C",
              height: draw.height,
              openings: [{ id: "light", kind: "window", at: 1, width: 1.2, sill: 0.8, head: 2 }],
            },
            { id: "W3", from: "C", to: "D", height: draw.height + 0.5, base: draw.base },
          ],
          platforms: [
            {
              id: "P1",
              outline: [
                [0, 1],
                [1.5, 1],
                [1.5, 2.5],
                [0, 2.5],
              ],
              height: 0.4,
            },
          ],
          furniture: [
            { id: "table", kind: "table", at: [-1, 2], turn: draw.turn, width: 1.4, depth: 0.8, height: 0.75 },
          ],
          columns: [{ id: "K1", at: [1.2, 3], diameter: 0.3, height: 3 }],
        },
        task: { kind: "plan-to-picture", goOnFrom, strictness: draw.strictness },
      });
      if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
      return reading.exercise;
    });
}

export type AskedPoint = ProjectedPoint & { readonly picture: PicturePoint };

/** The points an exercise asks for, in its order, all of them seen. */
export function askedPoints(exercise: Exercise): readonly AskedPoint[] {
  const points = exercisePoints(exercise);
  return exercise.task.marks.map((name) => {
    const point = points.get(name);
    if (!point?.picture) throw new Error(`${name} is not seen.`);
    return { ...point, picture: point.picture };
  });
}

/** Every asked point marked, each where `place` puts it: in its true place when nothing is said. */
export function markAll(
  exercise: Exercise,
  place: (point: AskedPoint, index: number) => PicturePoint = ({ picture }) => picture,
): MarkSet {
  const marks = askedPoints(exercise).map((point, i): Mark => ({ point: point.name, at: place(point, i) }));
  return { format: "plasterline.marks/1", exercise: exercise.id, marks };
}

/** A picture point moved by so many millimetres of paper in a direction, radians. */
export function moved([X, Z]: PicturePoint, mm: number, angle: number, { scaleRatio }: Exercise): PicturePoint {
  const metres = (mm * scaleRatio) / 1000;
  return [X + metres * Math.cos(angle), Z + metres * Math.sin(angle)];
}
