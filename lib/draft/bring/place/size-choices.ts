import { FOOT_SCALES, METRIC_SCALES, parseScale, printScale } from "../../../measure/scale";
import type { BroughtUnit } from "../brought";
import type { PlaceScale } from "./place-frame";

/** A way in which the size of a drawing may be told; `scale` is null for two of its places and the length between them. */
export type SizeChoice = { readonly key: string; readonly words: string; readonly scale: PlaceScale | null };

/** Two places and the length between them, which every drawing can be told by. */
const BY_LENGTH: SizeChoice = { key: "length", words: "two places and a length", scale: null };

/** How the size of a drawing may be told, by what its file tells: its unit, the scale of its paper, or one of the units that are likely. */
export function sizeChoices(unit: BroughtUnit): readonly SizeChoice[] {
  switch (unit.kind) {
    case "stage":
      return [{ key: "file", words: `as the file tells: ${unit.name}`, scale: { by: "file" } }, BY_LENGTH];
    case "paper":
      return [
        ...[...FOOT_SCALES, ...METRIC_SCALES].map((written) => ({
          key: written,
          words: `paper at ${printScale(written)}`,
          scale: { by: "ratio", ratio: parseScale(written) as number } as const,
        })),
        BY_LENGTH,
      ];
    case "unknown":
      return [
        ...unit.likely.map(({ name, metres }) => ({
          key: name,
          words: `drawn in ${name}`,
          scale: { by: "unit", metres } as const,
        })),
        BY_LENGTH,
      ];
  }
}

/** The choice to begin with: what the file tells, else the only one there is; null where the author has to say. */
export function firstSizeChoice(unit: BroughtUnit): SizeChoice | null {
  const choices = sizeChoices(unit);
  return unit.kind === "stage" || choices.length === 1 ? (choices[0] ?? null) : null;
}

/** Metres of the stage in one unit of the drawing's numbers; null where two places tell it. */
export function metresOf({ scale }: SizeChoice): number | null {
  switch (scale?.by) {
    case "file":
      return 1;
    case "ratio":
      return scale.ratio;
    case "unit":
      return scale.metres;
    default:
      return null;
  }
}
