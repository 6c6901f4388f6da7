import type { PicturePoint, StageDirection, StagePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";
import cases from "./published-cases.json";

/**
 * A worked example or engraving from a book or handout, restated in the project's frame of reference and in its own unit
 * of length. (Projection knows no unit: all lengths of a case may be taken for metres.)
 */
export type PublishedCase = {
  readonly id: string;
  readonly source: {
    readonly author: string;
    readonly title: string;
    readonly year: number | string | null;
    readonly where: string;
  };
  /** What the expected numbers are: printed by the source, measured on a plate, or derived (then no independent proof). */
  readonly expectOrigin: string;
  readonly units: string;
  readonly note: string;
  readonly tolerance: number;
  readonly viewer?: Viewer;
  readonly points?: Readonly<
    Record<string, { readonly stage: StagePoint; readonly picture: PicturePoint; readonly s?: number }>
  >;
  readonly lines?: Readonly<
    Record<
      string,
      { readonly direction: StageDirection; readonly vanishing: PicturePoint; readonly measuring?: number }
    >
  >;
  readonly values?: Readonly<Record<string, { readonly value: number; readonly tolerance: number }>>;
};

export const publishedCases = cases as unknown as readonly PublishedCase[];

/** A case that a test is written for by name. */
export function publishedCase(id: string): PublishedCase {
  const found = publishedCases.find((one) => one.id === id);
  if (!found) throw new Error(`There is no published case ${id}.`);
  return found;
}

/** Its viewer, for a case that has one. */
export function viewerOf({ id, viewer }: PublishedCase): Viewer {
  if (!viewer) throw new Error(`The published case ${id} names no viewer.`);
  return viewer;
}

/** A value of a case, by its name, with what it may be off. */
export function expectedOf({ id, values }: PublishedCase, name: string) {
  const found = values?.[name];
  if (!found) throw new Error(`The published case ${id} has no value "${name}".`);
  return found;
}

/** Who says so, for the title of a test. */
export function sourceOf({ source: { author, title, year, where }, expectOrigin }: PublishedCase): string {
  return `${author}, ${title}${year === null ? "" : `, ${year}`}, ${where} [${expectOrigin}]`;
}
