import { join } from "node:path";
import { bench, describe } from "vitest";
import { drawFinishedPicture } from "@/lib/drawing/draw-finished-picture";
import { loadExercises } from "@/lib/exercise/load-exercises";

/** The finished picture of no exercise of the course may take longer than this, milliseconds. */
const PROMISED_MS = 100;
const ROUNDS = 5;

const entries = await loadExercises(join(process.cwd(), "exercises"));
const exercises = entries.flatMap((entry) => (entry.ok ? [entry.exercise] : []));
if (exercises.length === 0) throw new Error("No exercise of the course was read.");

// The first rounds of a fresh process time the compiler, not the work.
for (const exercise of exercises) drawFinishedPicture(exercise);

const times = exercises.map((exercise) => {
  const rounds = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    drawFinishedPicture(exercise);
    return performance.now() - start;
  });
  return { id: exercise.id, exercise, ms: rounds.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] as number };
});
times.sort((a, b) => b.ms - a.ms);
const slowest = times.slice(0, 3);
console.log(
  `Finished pictures of ${times.length} exercises, the median of ${ROUNDS} rounds; the slowest: ${slowest
    .map(({ id, ms }) => `${id} ${ms.toFixed(1)} ms`)
    .join(", ")}.`,
);
const worst = times[0];
if (worst && !(worst.ms < PROMISED_MS))
  throw new Error(`The picture of ${worst.id} took ${Math.round(worst.ms)} ms, not less than ${PROMISED_MS}.`);

describe("the finished picture", () => {
  for (const { id, exercise } of slowest) {
    bench(id, () => {
      drawFinishedPicture(exercise);
    });
  }
});
