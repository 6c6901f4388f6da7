import { cleanCode } from "./as-written";

const GROUP = /.{1,4}/g;

/** A one-time word as it is shown: in groups of four letters. */
export function sayWord(word: string): string {
  return (word.match(GROUP) ?? []).join("-");
}

/** A one-time word's link. The word stands behind the `#`, which a browser keeps to itself and no log ever has. */
export function writeWordLink(page: "invited" | "way-back", word: string): string {
  return `/class/${page}#${sayWord(word)}`;
}

/** The word in a link's part behind the `#`; an empty text when there is none. */
export function readWordLink(fragment: string): string {
  const word = cleanCode(fragment.replace(/^#/, ""));
  return /^[A-Z]+$/.test(word) ? sayWord(word) : "";
}
