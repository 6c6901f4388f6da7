import { randomBytes } from "node:crypto";

/** Letters and no digits, without those that are taken for another: I and L, O and Q, U and V, S and Z. */
export const CODE_LETTERS = "ABCDEFGHJKMNPRTWXY";
const CODE_LENGTH = 6;

type Random = (size: number) => Uint8Array;

/** Six letters, each as likely as any other. */
export function makeCode(random: Random = randomBytes): string {
  return drawLetters(CODE_LENGTH, random);
}

/** So many letters by lot, each as likely as any other. */
export function drawLetters(letters: number, random: Random = randomBytes): string {
  // Bytes beyond the last whole round of the letters are thrown away, or the first letters would come more often.
  const fair = 256 - (256 % CODE_LETTERS.length);
  let drawn = "";
  while (drawn.length < letters)
    for (const byte of random(letters))
      if (byte < fair && drawn.length < letters) drawn += CODE_LETTERS[byte % CODE_LETTERS.length];
  return drawn;
}
