import { UNITS, type Unit } from "../exercise/exercise";

/** What a generated exercise is made from: its identifier and its address say all three. */
export type VariantOrder = { readonly unit: Unit; readonly level: number; readonly seed: number };

/** Seeds that the app draws are below this: a variant's number can be read out to a class. */
const SEEDS = 1_000_000;

/** One way to write each number, so that a sheet has one address. */
const VARIANT_ID = new RegExp(`^(${UNITS.join("|")})-([1-5])-(0|[1-9]\\d{0,15})$`);

/** `walls-2-48213`, the generator's own identifier. */
export function variantId({ unit, level, seed }: VariantOrder): string {
  return `${unit}-${level}-${seed}`;
}

/** The order that an identifier writes, or null for one of another form or with a seed past all bounds. */
export function readVariantId(id: string): VariantOrder | null {
  const [, written, level, digits] = VARIANT_ID.exec(id) ?? [];
  const unit = UNITS.find((each) => each === written);
  const seed = Number(digits);
  return unit && Number.isSafeInteger(seed) ? { unit, level: Number(level), seed } : null;
}

/** A seed that is not `last`, by 32 random bits. */
export function freshSeed(bits: number, last: number | null): number {
  const seed = bits % SEEDS;
  return seed === last ? (seed + 1) % SEEDS : seed;
}
