/** Where the sum begins, and what it is multiplied by for each letter: those of the 32-bit hash FNV-1a (from memory). */
const FIRST = 0x811c9dc5;
const TIMES = 0x01000193;

/** A short name that follows from a text: two of the few that are kept do not share one but by a rare chance. */
export function nameOfText(text: string): string {
  let sum = FIRST;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), TIMES) >>> 0;
  return `${sum.toString(36)}-${text.length.toString(36)}`;
}
