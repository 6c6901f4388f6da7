import type { Exercise } from "../exercise/exercise";
import { exercisePoints } from "../exercise/exercise-points";
import { printLength } from "../measure/print-length";
import { distancePoints } from "../perspective/vanishing-point";
import { wallVanishing } from "../perspective/wall-vanishing";
import { done, type Outcome, refused, wrongCall } from "./outcome";
import { readExerciseFile } from "./read-input";

/** `truth EXERCISE`: every named point and the vanishing and measuring points of the walls, metres, full precision. */
export function truth(files: readonly string[], text: boolean): Outcome {
  const [file] = files;
  if (file === undefined || files.length > 1)
    return wrongCall("truth needs exactly one exercise file", "truth EXERCISE");
  const exercise = readExerciseFile(file);
  if (!exercise.ok) return refused(...exercise.errors);
  return done(text ? truthInWords(exercise.value) : JSON.stringify(truthOf(exercise.value), null, 2));
}

function truthOf(exercise: Exercise) {
  const { viewer, stage, plan } = exercise;
  return {
    scale: exercise.scaleRatio,
    viewer: { distance: viewer.distance, eyeHeight: viewer.eyeHeight, offset: viewer.offset },
    horizon: viewer.eyeHeight,
    distancePoints: distancePoints(viewer),
    points: Object.fromEntries(
      [...exercisePoints(exercise)].map(([name, { at, picture, s }]) => [name, { plan: at, picture, s }]),
    ),
    walls: Object.fromEntries(plan.walls.map((wall) => [wall.id, wallVanishing(plan, wall, stage, viewer)])),
  };
}

function truthInWords(exercise: Exercise): string {
  const show = (metres: number) => printLength(metres, exercise.units);
  const rows = [...exercisePoints(exercise)].map(([name, { picture }]) =>
    picture ? `  ${name}: ${show(picture[0])} across, ${show(picture[1])} up` : `  ${name}: behind the eye`,
  );
  return [`${exercise.title}: places in the picture, by the plaster line's rule`, ...rows].join("\n");
}
