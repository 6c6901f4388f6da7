import type { LibraryLink } from "./kept-links";

/** The plan as the library has it. */
type There = { readonly edition: number; readonly sum: string };
/** A plan of this browser that goes with it, as it is now. */
type Here = { readonly key: string; readonly link: LibraryLink; readonly sum: string };

export type Opening =
  /** This browser does not have it yet. */
  | { readonly open: "new" }
  /** Both are the same. */
  | { readonly open: "same"; readonly key: string }
  /** Nothing has changed here, and the library's is newer: it takes the place of the one here. */
  | { readonly open: "newer"; readonly key: string }
  /** What has changed has changed here. */
  | { readonly open: "here"; readonly key: string }
  /** Both have changed: whoever opens it has to say which. */
  | { readonly open: "either"; readonly key: string };

/** Which plan lies on the table when one of the library is opened in a browser that may have it already. Nothing is lost by it. */
export function whichToOpen(there: There, here: readonly Here[]): Opening {
  const same = here.find(({ sum }) => sum === there.sum);
  if (same) return { open: "same", key: same.key };
  const untouched = here.find(({ link, sum }) => link.sum === sum && link.beside === null);
  if (untouched) return { open: "newer", key: untouched.key };
  const [changed] = here;
  if (!changed) return { open: "new" };
  const goesOn = changed.link.edition === there.edition && changed.link.beside === null;
  return { open: goesOn ? "here" : "either", key: changed.key };
}
