import type { Unit } from "@/lib/exercise/exercise";

/** A unit's title, and what it trains. */
export const UNIT_WORDS: Readonly<Record<Unit, { readonly title: string; readonly trains: string }>> = {
  floor: {
    title: "The floor",
    trains: "Judging how far upstage a point lies, from the plaster line to the back wall.",
  },
  walls: { title: "Walls", trains: "Square, parallel and raking walls: feet by depth, tops by their vanishing point." },
  openings: { title: "Openings", trains: "Doors, windows and arches: dividing a wall that runs away from you." },
  furniture: { title: "Furniture", trains: "Boxes on the floor, turned and square, in scale with the set." },
  levels: { title: "Levels", trains: "Platforms, steps and stairs, one floor over another." },
  stage: { title: "The stage itself", trains: "Rakes, aprons and an eye off the centre line." },
  reading: { title: "Reading", trains: "From the picture back to the plan." },
  sets: { title: "Whole sets", trains: "Everything together, as on a first thumbnail." },
};

/** A skill's identifier as words: `depth-by-eye` is "depth by eye". */
export function skillWords(skill: string): string {
  return skill.replaceAll("-", " ").replace(/\bcvp\b/, "CVP");
}

/**
 * A sheet's place in its unit, from 1, and how many there are; or the seed of a generated one; or, of one that is in no course,
 * what it is set aside under in this browser (null where nothing can be).
 */
export type SheetPlace =
  | readonly [at: number, of: number]
  | { readonly variant: number }
  | { readonly own: string | null };

/** "3 of 6", "variant 48213", "own plan". */
export function sheetWords(sheet: SheetPlace): string {
  if ("own" in sheet) return "own plan";
  return "variant" in sheet ? `variant ${sheet.variant}` : `${sheet[0]} of ${sheet[1]}`;
}
