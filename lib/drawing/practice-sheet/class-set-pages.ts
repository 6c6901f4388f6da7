import type { Exercise, Unit } from "../../exercise/exercise";
import { findVariant } from "../../generator/find-variant";
import { variantId } from "../../generator/variant-id";
import type { Paper } from "../../sheet/paper-size";
import type { PaperPage } from "../paper/paper-page";
import { type KeyChoice, sheetAndKeys } from "./practice-sheet-pages";

export type ClassSetOrder = {
  readonly unit: Unit;
  /** 1 to 5. */
  readonly level: number;
  readonly firstSeed: number;
  readonly count: number;
  readonly paper: Paper;
  readonly key?: KeyChoice;
};

/** A set is not looked for among more seeds than this many times its size: nearly every seed gives an exercise. */
const MOST_SEEDS = 4;

/**
 * A sheet of its own for each of a class: variants from a seed on, numbered from 1, all their sheets first and then all their
 * keys. A seed of which no fair exercise comes is passed over. The same order gives the same set.
 */
export function classSetPages({
  unit,
  level,
  firstSeed,
  count,
  paper,
  key = false,
}: ClassSetOrder): readonly PaperPage[] {
  const exercises: Exercise[] = [];
  for (let i = 0; exercises.length < count && i < MOST_SEEDS * count; i++) {
    const made = findVariant(variantId({ unit, level, seed: firstSeed + i }));
    if (made) exercises.push(made.exercise);
  }
  return gather(exercises.map((exercise, i) => sheetAndKeys(exercise, { paper, key, copy: i + 1 })));
}

/** So many sheets of one exercise, each with a number of its own, and one key for all of them. */
export function copiesPages(
  exercise: Exercise,
  { count, paper, key = false }: Pick<ClassSetOrder, "count" | "paper" | "key">,
): readonly PaperPage[] {
  const { keys } = sheetAndKeys(exercise, { paper, key });
  const copies = Array.from({ length: count }, (_, i) => sheetAndKeys(exercise, { paper, copy: i + 1 }));
  return [...gather(copies), ...keys];
}

function gather(sheets: readonly ReturnType<typeof sheetAndKeys>[]): readonly PaperPage[] {
  return [...sheets.flatMap(({ student }) => student), ...sheets.flatMap(({ keys }) => keys)];
}
