import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { planeBox } from "@/lib/drawing/clear-lettering";
import type { DisplayList, Lettering } from "@/lib/drawing/display-list";
import { drawPlace } from "@/lib/drawing/draw-place";
import { drawPlan } from "@/lib/drawing/draw-plan";
import { type Exercise, UNITS } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { readExercise, readExerciseJson } from "@/lib/exercise/read-exercise";
import type { ExerciseReading } from "@/lib/exercise/resolve-exercise";
import { generateExercise } from "@/lib/generator/generate-exercise";
import { loadFixture } from "./fixtures/load-fixture";

/** The paper's own size, and how many times larger letters are laid out in smaller and smaller panes. */
const SIZES = [1, 1.5, 2, 3] as const;

const SHIPPED = readdirSync("exercises", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".json"))
  .map((name) => read(readExercise(readFileSync(`exercises/${name}`, "utf8"))));
const GENERATED = UNITS.flatMap((unit) =>
  [1, 3, 5].map((level) => read(readExerciseJson(generateExercise({ unit, level, seed: 11 })))),
);
const PLANS = [...SHIPPED, ...GENERATED, loadFixture("tide-mill"), loadFixture("rope-walk")];

describe("the lettering of every plan of the course, and of generated ones", () => {
  it.each(PLANS)("can be read in $id: no two letterings overlap", (exercise) => {
    for (const size of SIZES) {
      const sheet = enlarged(exercise, size);
      expect(clashes(lettersOf(drawPlan(sheet)), [], sheet), `${size} times`).toEqual([]);
    }
  });

  it.each(PLANS)("can be read in $id: no dimension is written over a letter, nor over the other", (exercise) => {
    const points = exercisePoints(exercise);
    for (const size of SIZES) {
      const sheet = enlarged(exercise, size);
      const plan = drawPlan(sheet);
      for (const name of exercise.task.marks) {
        const at = points.get(name)?.at;
        if (!at) throw new Error(`${name} names no point.`);
        const numbers = lettersOf(drawPlace(sheet, at, name, { over: plan }));
        expect(clashes(numbers, lettersOf(plan), sheet), `${name}, ${size} times`).toEqual([]);
      }
    }
  });
});

function enlarged(exercise: Exercise, times: number): Exercise {
  return { ...exercise, scaleRatio: exercise.scaleRatio * times };
}

/** The centre line's sign is two letters over each other on purpose; its C stands for both. */
function lettersOf(list: DisplayList): readonly Lettering[] {
  return list.filter((item): item is Lettering => item.kind === "lettering" && item.id !== "plan.stage.centre-line.l");
}

function clashes(some: readonly Lettering[], others: readonly Lettering[], { scaleRatio }: Exercise): string[] {
  return some.flatMap((a, i) =>
    [...some.slice(i + 1), ...others].filter((b) => overlap(a, b, scaleRatio)).map((b) => `${a.id} over ${b.id}`),
  );
}

function overlap(one: Lettering, other: Lettering, scaleRatio: number): boolean {
  const [a, b] = [planeBox(one, scaleRatio), planeBox(other, scaleRatio)];
  return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
}

function read(reading: ExerciseReading): Exercise {
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}
