/** Words as they begin a sentence. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A sentence or a name as it stands in the middle of another. */
export function inside(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
