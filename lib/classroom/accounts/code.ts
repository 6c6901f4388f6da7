import { randomBytes } from "node:crypto";

/** Letters and no digits, without those that are taken for another: I and L, O and Q, U and V, S and Z. */
export const CODE_LETTERS = "ABCDEFGHJKMNPRTWXY";
const CODE_LENGTH = 6;

/** Six letters, each as likely as any other. */
export function makeCode(random: (size: number) => Uint8Array = randomBytes): string {
  // Bytes beyond the last whole round of the letters are thrown away, or the first letters would come more often.
  const fair = 256 - (256 % CODE_LETTERS.length);
  let code = "";
  while (code.length < CODE_LENGTH)
    for (const byte of random(CODE_LENGTH))
      if (byte < fair && code.length < CODE_LENGTH) code += CODE_LETTERS[byte % CODE_LETTERS.length];
  return code;
}
