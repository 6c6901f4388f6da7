import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { MarkSet } from "@/lib/exercise/marks";
import { readExercise } from "@/lib/exercise/read-exercise";
import { asDrawn } from "@/lib/grading/as-drawn";
import { gradeMarks } from "@/lib/grading/grade-marks";
import type { PicturePoint } from "@/lib/stage/frame";

function squareAndParallel() {
  const reading = readExercise(readFileSync("exercises/walls/01-square-and-parallel.json", "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

const exercise = squareAndParallel();
const mark = (device?: MarkSet["marks"][number]["with"]) => ({
  point: exercise.task.marks[0] ?? "",
  at: [0, 0] as const,
  ...(device ? { with: device } : {}),
});

describe("an exercise as it was drawn", () => {
  it.each([
    ["paper alone", [mark("paper"), mark("paper")], "own"],
    ["a mouse", [mark("mouse")], "true"],
    ["nothing said", [mark()], "true"],
    ["paper and a mouse", [mark("paper"), mark("mouse")], "true"],
    ["no mark", [], "true"],
  ] as const)("goes on from where %s has it", (_, marks, from) => {
    expect(exercise.task.goOnFrom).toBe("true");
    expect(asDrawn(exercise, { marks }).task.goOnFrom).toBe(from);
  });

  it("changes nothing else, and nothing where the student's own is gone on from already", () => {
    const own = { ...exercise, task: { ...exercise.task, goOnFrom: "own" as const } };
    expect(asDrawn(exercise, { marks: [mark("paper")] })).toEqual(own);
    expect(asDrawn(own, { marks: [mark("mouse")] })).toBe(own);
  });

  it("does not punish tops twice that stand over wrong feet at their right heights", () => {
    const points = exercisePoints(exercise);
    const { eyeHeight, offset } = exercise.viewer;
    const feet = new Map<string, PicturePoint>();
    for (const name of exercise.task.marks) {
      const { at, picture, onFloor } = points.get(name) ?? {};
      if (!at || !picture || !onFloor) continue;
      // On the ray to the CVP, but only six tenths of the way that its depth goes up.
      const Z = 0.6 * picture[1];
      feet.set(name, [at[0] + ((offset - at[0]) * Z) / eyeHeight, Z]);
    }
    const drawn = exercise.task.marks.map((point) => {
      const named = points.get(point);
      const foot = named?.over ? feet.get(named.over) : undefined;
      const truth = named?.picture;
      if (!named || !truth) throw new Error(`${point} is not seen.`);
      if (!foot) return { point, at: feet.get(point) ?? truth, with: "paper" as const };
      // Similar triangles: at its foot's depth, as read from the drawn foot, a height is shown in its own measure.
      const s = 1 - foot[1] / eyeHeight;
      const height = named.at[2] * s + foot[1];
      return { point, at: [foot[0], height] as const, with: "paper" as const };
    });
    const set: MarkSet = { format: "plasterline.marks/1", exercise: exercise.id, marks: drawn };
    const tops = (graded: ReturnType<typeof gradeMarks>) =>
      graded.marks.filter(({ point }) => point.endsWith(".top")).map(({ score }) => score);
    expect(Math.min(...tops(gradeMarks(asDrawn(exercise, set), set)))).toBeCloseTo(100, 6);
    expect(Math.min(...tops(gradeMarks(exercise, set)))).toBeLessThan(90);
  });
});
