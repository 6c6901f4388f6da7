import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";

/** Where one can jump to: the sheet, each corner where it begins, and the end. */
export function cornerEntries(
  steps: readonly DemonstrationStep[],
): readonly { readonly number: number; readonly title: string }[] {
  return steps
    .filter(({ kind, number }) => number === 1 || kind === "place" || kind === "finished")
    .map(({ number, title }) => ({ number, title: number === 1 ? "The empty sheet" : title }));
}
