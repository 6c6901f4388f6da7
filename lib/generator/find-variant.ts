import type { Exercise } from "../exercise/exercise";
import { readExerciseJson } from "../exercise/read-exercise";
import { generateExercise } from "./generate-exercise";
import { readVariantId } from "./variant-id";

/**
 * The generated exercise of an identifier like `walls-2-48213`, read as a file of the course is; null for an identifier of
 * another form, and for a seed of which no fair exercise comes.
 */
export function findVariant(id: string): { readonly exercise: Exercise; readonly seed: number } | null {
  const order = readVariantId(id);
  if (!order) return null;
  try {
    const reading = readExerciseJson(generateExercise(order));
    return reading.ok ? { exercise: reading.exercise, seed: order.seed } : null;
  } catch {
    // The order has been checked: what is left is a seed whose sets were all refused, and there is no sheet of it.
    return null;
  }
}
