import { sheetWords, UNIT_WORDS } from "@/app/_parts/course/course-words";
import { readVariantId } from "@/lib/generator/variant-id";
import { capital } from "@/lib/plan/first-letter";

/** The course, as far as its titles are needed. */
export type Catalogue = readonly { readonly id: string; readonly title: string }[];

/** A day as it is read everywhere the same: "5 Mar 2026"; of a moment that is none, nothing. */
export function sayDay(when: string): string {
  const time = Date.parse(when);
  return Number.isNaN(time)
    ? ""
    : new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric" }).format(time);
}

/** An exercise's title; a generated one goes by its unit and number, another that the course lacks by its identifier in words. */
export function sayExercise(id: string, catalogue: Catalogue): string {
  const title = catalogue.find((each) => each.id === id)?.title;
  if (title !== undefined) return title;
  const variant = readVariantId(id);
  if (variant)
    return `${UNIT_WORDS[variant.unit].title}, level ${variant.level}, ${sheetWords({ variant: variant.seed })}`;
  const words = id.replaceAll("-", " ");
  return capital(words);
}

export function sayPercent(share: number): string {
  return `${Math.round(100 * share)} %`;
}

/** How surely a skill is known: never quite to the full, since nothing is. */
export function sayKnown(probability: number): string {
  return `${Math.floor(100 * probability)} %`;
}
