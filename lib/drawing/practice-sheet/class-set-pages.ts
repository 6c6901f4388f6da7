import type { Exercise, Unit } from "../../exercise/exercise";
import { findVariant } from "../../generator/find-variant";
import { variantId } from "../../generator/variant-id";
import type { LengthUnits } from "../../measure/length";
import type { Paper } from "../../sheet/paper-size";
import type { PaperPage } from "../paper/paper-page";
import { type KeyChoice, sheetAndKeys } from "./practice-sheet-pages";

export type ClassSetOrder = {
  readonly unit: Unit;
  /** 1 to 5. */
  readonly level: number;
  /** Those of the class's scale rules; left out, sheets in feet and sheets in metres come mixed. */
  readonly units?: LengthUnits;
  readonly firstSeed: number;
  readonly count: number;
  readonly paper: Paper;
  readonly key?: KeyChoice;
};

/** A set is looked for among so many seeds for each of its sheets: nearly all give an exercise, half of them in feet. */
const SEEDS_EACH = 6;
/** And so many more, for a set of a few sheets to have as fair a chance as a large one. */
const SEEDS_MORE = 20;

/**
 * A sheet of its own for each of a class: variants from a seed on, numbered from 1, all their sheets first and then all their
 * keys. A seed is passed over when no fair exercise comes of it, or one in other units or too large for the paper. The same
 * order gives the same set.
 */
export function classSetPages({
  unit,
  level,
  units,
  firstSeed,
  count,
  paper,
  key = false,
}: ClassSetOrder): readonly PaperPage[] {
  const sheets: ReturnType<typeof sheetAndKeys>[] = [];
  for (let i = 0; sheets.length < count && i < SEEDS_EACH * count + SEEDS_MORE; i++) {
    const made = findVariant(variantId({ unit, level, seed: firstSeed + i }));
    if (!made || (units !== undefined && made.exercise.units !== units)) continue;
    const sheet = sheetAndKeys(made.exercise, { paper, key, copy: sheets.length + 1 });
    if (sheet.student.length > 0) sheets.push(sheet);
  }
  return gather(sheets);
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
