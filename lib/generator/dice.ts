import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";

/** Draws of one seed, one after another. Only whole numbers are drawn, so that every platform draws the same. */
export type Dice = {
  /** A whole number from `least` to `most`, both included. */
  whole(least: number, most: number): number;
  /** A multiple of a half from `least` to `most`, both included. */
  half(least: number, most: number): number;
  pick<Item>(items: readonly Item[]): Item;
  /** True so many times in a hundred. */
  chance(percent: number): boolean;
  shuffle<Item>(items: readonly Item[]): readonly Item[];
  /** 1 or -1. */
  side(): 1 | -1;
};

const WORD = 2 ** 32;
/** Any number but 0: a generator whose whole state is 0 draws nothing else. */
const NOT_ZERO = 0x2545f491;
/** Draws thrown away, until neighbouring seeds have nothing in common. */
const WARM_UP = 24;

/** The draws of a seed for one purpose: a purpose is a word, so that the same seed gives another set in another unit. */
export function rollDice(seed: number, purpose: string): Dice {
  const generator = xoroshiro128plusFromState([seed % WORD, Math.floor(seed / WORD), hashWord(purpose), NOT_ZERO]);
  for (let i = 0; i < WARM_UP; i += 1) generator.next();
  const whole = (least: number, most: number) => uniformInt(generator, least, most);
  return {
    whole,
    half: (least, most) => whole(Math.ceil(least * 2), Math.floor(most * 2)) / 2,
    pick: <Item>(items: readonly Item[]) => items[whole(0, items.length - 1)] as Item,
    chance: (percent) => whole(1, 100) <= percent,
    shuffle: <Item>(items: readonly Item[]) => {
      const mixed = [...items];
      for (let i = mixed.length - 1; i > 0; i -= 1) {
        const j = whole(0, i);
        [mixed[i], mixed[j]] = [mixed[j] as Item, mixed[i] as Item];
      }
      return mixed;
    },
    side: () => (whole(0, 1) === 0 ? 1 : -1),
  };
}

/** A word as 32 bits (FNV-1a: offset basis 2166136261, prime 16777619). */
function hashWord(word: string): number {
  let bits = 2166136261;
  for (let i = 0; i < word.length; i += 1) bits = Math.imul(bits ^ word.charCodeAt(i), 16777619);
  return bits | 0;
}
