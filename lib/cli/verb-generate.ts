import { UNITS } from "../exercise/exercise";
import { nearestName } from "../exercise/nearest-name";
import { generateExercise } from "../generator/generate-exercise";
import { LEVELS } from "../generator/levels";
import { done, type Outcome, wrongCall } from "./outcome";

/** What `generate` is told beside its name: each absent when the call leaves it out. */
export type GenerateOptions = { readonly unit?: string; readonly level?: string; readonly seed?: string };

const CALL = "generate --unit U --level N --seed S";
const UNIT_LIST = UNITS.join(", ");
/** A whole number as one writes it: no sign, no point, nothing beside its digits. */
const WHOLE = /^\d{1,16}$/;

/** `generate --unit U --level N --seed S`: a new exercise, the same bytes for the same seed. */
export function generate(words: readonly string[], text: boolean, options: GenerateOptions): Outcome {
  if (words.length > 0) return wrongCall(`generate takes no file: "${words[0]}" is one word too many`, CALL);
  const missing = (["unit", "level", "seed"] as const).filter((name) => options[name] === undefined);
  if (missing.length > 0) return wrongCall(`generate needs ${missing.map((name) => `--${name}`).join(", ")}`, CALL);
  const unit = UNITS.find((one) => one === options.unit);
  if (!unit)
    return wrongCall(
      `there is no unit "${options.unit}"`,
      `did you mean "${nearestName(options.unit ?? "", UNITS)}"? The units are ${UNIT_LIST}`,
    );
  const level = LEVELS.find((one) => String(one) === options.level);
  if (!level) return wrongCall(`there is no level "${options.level}"`, "the levels are 1 to 5");
  const seed = readSeed(options.seed ?? "");
  if (seed === null)
    return wrongCall(
      `"${options.seed}" is not a seed`,
      `a seed is a whole number from 0 to ${Number.MAX_SAFE_INTEGER}, like 4711`,
    );
  const exercise = generateExercise({ unit, level, seed });
  if (!text) return done(JSON.stringify(exercise, null, 2));
  return done(
    [
      `${exercise.title} (${exercise.id})`,
      exercise.scenario ?? "",
      exercise.brief ?? "",
      exercise.notes ?? "",
      `Asked: ${(exercise.task.marks ?? []).join(", ")}`,
    ].join("\n"),
  );
}

function readSeed(written: string): number | null {
  const seed = WHOLE.test(written) ? Number(written) : Number.NaN;
  return Number.isSafeInteger(seed) ? seed : null;
}
