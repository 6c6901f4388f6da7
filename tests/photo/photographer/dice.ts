/** Draws of one seed, one after another, the same on every run. */
export type Dice = {
  /** From 0 up to 1. */
  next(): number;
  between(least: number, most: number): number;
  /** Of the normal distribution with this standard deviation, about 0. */
  normal(sigma: number): number;
  pick<Item>(items: readonly Item[]): Item;
  /** True with this probability. */
  chance(probability: number): boolean;
};

const WORD = 2 ** 32;

/** Dice for one purpose: a purpose is a word, so that more draws for the light do not move the pencil. */
export function throwDice(seed: number, purpose: string): Dice {
  let state = seed >>> 0;
  for (const letter of purpose) state = mix(state ^ Math.imul(letter.codePointAt(0) ?? 0, 0x9e3779b1));
  // A counter with its bits mixed (the form of Steele, Lea and Flood's SplitMix, 2014; the constants from memory).
  const next = () => {
    state = (state + 0x9e3779b9) >>> 0;
    return mix(state) / WORD;
  };
  const normal = (sigma: number) =>
    sigma * Math.sqrt(-2 * Math.log(next() || 1 / WORD)) * Math.cos(2 * Math.PI * next());
  return {
    next,
    normal,
    between: (least, most) => least + (most - least) * next(),
    pick: <Item>(items: readonly Item[]) => items[Math.floor(next() * items.length)] as Item,
    chance: (probability) => next() < probability,
  };
}

/** 32 bits, each hanging on all of those before. */
export function mix(bits: number): number {
  let mixed = bits >>> 0;
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
  return (mixed ^ (mixed >>> 15)) >>> 0;
}
