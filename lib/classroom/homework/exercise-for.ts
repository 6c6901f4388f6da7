import { type Exercise, UNITS } from "../../exercise/exercise";
import { readExercise } from "../../exercise/read-exercise";
import { generateExercise } from "../../generator/generate-exercise";
import type { VariantOrder } from "../../generator/variant-id";
import type { HomeworkItemTable, HomeworkTable } from "../store/tables/homework-tables";
import { nextSeed, variantOrder } from "./variant-order";

type Item = Readonly<Pick<HomeworkItemTable, "id" | "source" | "unit" | "level" | "exercise">>;
type Homework = Readonly<Pick<HomeworkTable, "strictness" | "hints" | "feedback">>;

export type ExerciseFor = {
  readonly exercise: Exercise;
  /** The same as the text of its file: what is stored with the marks. */
  readonly text: string;
};

/** Seeds tried before the generator's refusal is passed on. */
const MOST_SEEDS = 5;

/**
 * The exercise of an item as one student gets it: frozen as it was set, or a variant that is theirs alone, with the
 * homework's strictness and hints. Where feedback waits, the drawing goes on from the student's own marks: a true point on
 * the sheet would be feedback. Null where what was set can no longer be read.
 */
export function exerciseFor(item: Item, homework: Homework, memberId: string): ExerciseFor | null {
  const written = writtenFor(item, memberId);
  if (!written) return null;
  const task = {
    ...written.task,
    ...(homework.strictness === null ? {} : { strictness: homework.strictness }),
    ...(homework.hints === "none" ? { hints: "none" } : {}),
    ...(homework.feedback === "after-due" ? { goOnFrom: "own" } : {}),
  };
  const text = JSON.stringify({ ...written, task });
  const reading = readExercise(text);
  return reading.ok ? { exercise: reading.exercise, text } : null;
}

/** Whether an exercise of this order may be a student's own of an item: told by its number, without making it. */
export function mayBeVariant(
  { id, unit, level }: Pick<Item, "id" | "unit" | "level">,
  memberId: string,
  wanted: VariantOrder,
): boolean {
  if (unit !== wanted.unit || level !== wanted.level) return false;
  let { seed } = variantOrder({ id, unit: wanted.unit, level }, memberId);
  for (let tried = 0; tried < MOST_SEEDS; tried++) {
    if (seed === wanted.seed) return true;
    seed = nextSeed(seed);
  }
  return false;
}

type Written = { readonly task: object };

function writtenFor(item: Item, memberId: string): Written | null {
  if (item.source !== "variant") return item.exercise === null ? null : parse(item.exercise);
  const unit = UNITS.find((each) => each === item.unit);
  if (unit === undefined || item.level === null) return null;
  const order = variantOrder({ id: item.id, unit, level: item.level }, memberId);
  let seed = order.seed;
  for (let tried = 0; tried < MOST_SEEDS; tried++) {
    try {
      return generateExercise({ ...order, seed });
    } catch {
      // Of a few seeds no fair exercise comes: every student with this one goes on to the next alike.
      seed = nextSeed(seed);
    }
  }
  return null;
}

function parse(text: string): Written | null {
  try {
    const value: unknown = JSON.parse(text);
    const isFile = typeof value === "object" && value !== null && "task" in value && typeof value.task === "object";
    return isFile ? (value as Written) : null;
  } catch {
    return null;
  }
}
