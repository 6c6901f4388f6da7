/** The place where a teacher writes whose guess comes next. */
export const LABEL_ID = "guess-label";

/** What is written there, taken off for the next; empty where nothing is. */
export function guessLabel(): string {
  const field = document.getElementById(LABEL_ID);
  if (!(field instanceof HTMLInputElement)) return "";
  const label = field.value.trim();
  field.value = "";
  return label;
}
