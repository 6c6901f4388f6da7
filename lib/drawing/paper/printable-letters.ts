/** Stands where a letter is in no face of ours, and has no plainer form that is. */
const UNKNOWN = "?";

/** Signs that are spelled with plainer ones where a face lacks them. */
const SPELLED: ReadonlyMap<string, string> = new Map([
  ["→", "->"],
  ["←", "<-"],
  ["↔", "<->"],
  ["≤", "<="],
  ["≥", ">="],
  ["≠", "not ="],
  ["≈", "about "],
]);

/** A letter as it is written, marks above and below included, and what is printed for it: itself where there is a face for it. */
export type PrintableLetter = { readonly written: string; readonly printed: string };

/**
 * What a text is printed as when a face has only some letters: a letter that is in none stands without its marks, in plainer
 * ones, or as a question mark, never as the empty box that faces keep for it. Control characters are spaces.
 */
export function printableLetters(text: string, has: (letters: string) => boolean): readonly PrintableLetter[] {
  const clean = withoutControls(text).normalize("NFC");
  const letters = [...new Intl.Segmenter("en", { granularity: "grapheme" }).segment(clean)];
  return letters.map(({ segment: written }) => {
    const bare = written.normalize("NFKD").replace(/\p{M}/gu, "");
    const forms = [written, bare, SPELLED.get(written) ?? ""];
    return { written, printed: forms.find((form) => form !== "" && has(form)) ?? UNKNOWN };
  });
}

/** A text with spaces for the characters that no file of letters may hold: control characters and halves of pairs. */
export function withoutControls(text: string): string {
  return text.replace(/[\p{Cc}\p{Cs}\ufffe\uffff]/gu, " ");
}
