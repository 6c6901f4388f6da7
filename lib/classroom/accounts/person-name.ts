/** Longest name that is kept, in letters; a list in a narrow window still shows it. */
export const LONGEST_NAME = 60;

/**
 * A name as it is kept and shown: one form for each letter, single blanks, nothing that cannot be seen.
 *
 * @returns an empty text when nothing is left of it
 */
export function cleanName(written: string): string {
  return written
    .normalize("NFC")
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}\s]+/gu, " ")
    .trim();
}

/** Whether two names would be taken for the same in a class: capitals and kinds of letters do not matter. */
export function sameName(a: string, b: string): boolean {
  return plain(a) === plain(b);
}

function plain(name: string): string {
  return cleanName(name).normalize("NFKC").toLocaleLowerCase("en");
}
