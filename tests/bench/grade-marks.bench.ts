import { bench, describe } from "vitest";
import { checkSense } from "@/lib/exercise/check-sense";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { Mark } from "@/lib/exercise/marks";
import { readExercise } from "@/lib/exercise/read-exercise";
import { readMarks } from "@/lib/exercise/read-marks";
import { gradeMarks } from "@/lib/grading/grade-marks";

const MARKS = 20;

/** Ten walls of three feet in a shallow zigzag: eleven corners, so more than enough to ask twenty marks of. */
const corners = Object.fromEntries(Array.from({ length: 11 }, (_, i) => [`C${i}`, [3 * i - 15, i % 2 === 0 ? 6 : 11]]));
const walls = Array.from({ length: 10 }, (_, i) => ({ id: `W${i}`, from: `C${i}`, to: `C${i + 1}`, height: 12 }));
const marked = Array.from({ length: MARKS / 2 }, (_, i) => `C${i}`);

const written = JSON.stringify({
  format: "plasterline.exercise/1",
  id: "zigzag",
  title: "A zigzag",
  unit: "walls",
  level: 3,
  units: "ft-in",
  scale: "1/4in=1ft",
  stage: { opening: { width: 32, height: 18 }, depth: 24 },
  viewer: { distance: 36, eyeHeight: 8 },
  plan: { corners, walls },
  task: {
    kind: "plan-to-picture",
    goOnFrom: "own",
    marks: [...marked.map((name) => `${name}.foot`), ...marked.map((name) => `${name}.top`)],
  },
});

function soundExercise() {
  const reading = readExercise(written);
  if (!reading.ok) throw new Error("The exercise cannot be read.");
  const { exercise } = reading;
  const faults = checkSense(exercise).filter(({ weight }) => weight === "fault");
  if (faults.length > 0) throw new Error(`The exercise makes no sense: ${faults[0]?.message}.`);
  return exercise;
}

const exercise = soundExercise();
const points = exercisePoints(exercise);

/** A hand that slips by up to some 10 cm at the plaster line, the same way each time. */
const marks = exercise.task.marks.map((point, i): Mark => {
  const [X, Z] = points.get(point)?.picture ?? [0, 0];
  return { point, at: [X + 0.1 * Math.sin(7 * i), Z + 0.1 * Math.cos(5 * i)], with: "mouse" };
});
const writtenMarks = JSON.stringify({ format: "plasterline.marks/1", exercise: exercise.id, marks });

function readSet() {
  const reading = readMarks(writtenMarks);
  if (!reading.ok) throw new Error("The marks cannot be read.");
  return reading.marks;
}

const set = readSet();
const { score, marks: graded } = gradeMarks(exercise, set);
if (!(graded.length === MARKS && score !== null && score > 0 && score < 100))
  throw new Error(`The marks are not the slips of a usual hand: ${graded.length} of them, score ${score}.`);

describe(`grading ${MARKS} marks`, () => {
  bench("gradeMarks", () => {
    gradeMarks(exercise, set);
  });
});

describe(`reading a file of ${MARKS} marks`, () => {
  bench("readMarks", () => {
    readSet();
  });
});

describe("reading an exercise of ten walls", () => {
  bench("readExercise", () => {
    readExercise(written);
  });
});

describe("reading it and checking its sense", () => {
  bench("readExercise, checkSense", () => {
    soundExercise();
  });
});
