import { constructPoint } from "../construction/construct-point";
import type { Exercise } from "../exercise/exercise";
import { boardOf } from "../exercise/exercise-board";
import { exercisePoints } from "../exercise/exercise-points";
import { nearestName } from "../exercise/nearest-name";
import { printLength } from "../measure/print-length";
import { done, type Outcome, refused, wrongCall } from "./outcome";
import { readSoundExercise } from "./read-input";

/** `construct EXERCISE POINT`: the ruler construction of a point from what is given. */
export function construct(words: readonly string[], text: boolean): Outcome {
  const [file, name] = words;
  if (file === undefined || name === undefined || words.length > 2)
    return wrongCall("construct needs an exercise file and the name of a point", "construct EXERCISE POINT");
  const exercise = readSoundExercise(file);
  if (!exercise.ok) return refused(...exercise.errors);
  const names = [...exercisePoints(exercise.value).keys()];
  if (!names.includes(name))
    return refused({
      file,
      where: "/plan",
      message: `${name} names no point of the plan`,
      hint: `did you mean ${nearestName(name, names)}?`,
    });
  const result = constructPoint(boardOf(exercise.value, exercise.value.task.given), name);
  if (!result.found)
    return refused({ file, where: "/plan", message: result.reason, hint: "choose another point, or move the eye" });
  const { construction } = result;
  if (!text) return done(JSON.stringify(construction, null, 2));
  return done(
    [
      `${construction.point}, by ${construction.method}`,
      ...construction.steps.map((step, i) => `  ${i + 1}. ${step.say}`),
      placeInWords(construction.steps.at(-1), exercise.value),
    ].join("\n"),
  );
}

function placeInWords(last: { at?: readonly [number, number] } | object | undefined, { units }: Exercise): string {
  const at = last && "at" in last ? last.at : undefined;
  if (!at) return "";
  const across = `${printLength(Math.abs(at[0]), units)} ${at[0] < 0 ? "left" : "right"} of the centre line`;
  return `  There: ${across}, ${printLength(Math.abs(at[1]), units)} ${at[1] < 0 ? "below" : "above"} the plaster line, by its rule.`;
}
