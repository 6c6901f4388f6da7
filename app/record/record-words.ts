/** The course, as far as its titles are needed. */
export type Catalogue = readonly { readonly id: string; readonly title: string }[];

/** A day as it is read everywhere the same: "5 Mar 2026"; of a moment that is none, nothing. */
export function sayDay(when: string): string {
  const time = Date.parse(when);
  return Number.isNaN(time)
    ? ""
    : new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric" }).format(time);
}

/** An exercise's title; one that the course does not have goes by its identifier in words. */
export function sayExercise(id: string, catalogue: Catalogue): string {
  const title = catalogue.find((each) => each.id === id)?.title;
  const words = id.replaceAll("-", " ");
  return title ?? words.charAt(0).toUpperCase() + words.slice(1);
}

export function sayPercent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
