import { randomInt } from "node:crypto";
import { PASSPHRASE_WORDS } from "./passphrase-words";

const WORDS = 4;

/** Four plain words by lot, to be written down: `willow drum lantern oat`. */
export function makePassphrase(random: (below: number) => number = randomInt): string {
  return Array.from({ length: WORDS }, () => PASSPHRASE_WORDS[random(PASSPHRASE_WORDS.length)]).join(" ");
}
