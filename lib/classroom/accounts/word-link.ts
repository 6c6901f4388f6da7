import { cleanCode } from "./as-written";

const GROUP = /.{1,4}/g;

/** A one-time word as it is shown: in groups of four letters. */
export function sayWord(word: string): string {
  return (word.match(GROUP) ?? []).join("-");
}

/** The link of a one-time word, or of a plan that is shared. The word stands behind the `#`, which a browser keeps to itself and no log ever has. */
export function writeWordLink(page: "invited" | "way-back" | "shared", word: string): string {
  return `/class/${page}#${sayWord(word)}`;
}

/** The word in such a link's part behind the `#`; an empty text when there is none. */
export function readWordLink(fragment: string): string {
  const word = cleanCode(fragment.replace(/^#/, ""));
  return /^[A-Z]+$/.test(word) ? sayWord(word) : "";
}
