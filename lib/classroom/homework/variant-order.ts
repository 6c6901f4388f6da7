import type { Unit } from "../../exercise/exercise";
import type { VariantOrder } from "../../generator/variant-id";

/** Numbers of variants are below this, so that one can be read out. */
const SEEDS = 1_000_000;

/**
 * Which variant a student gets of an item: always the same for the same two, and as good as drawn by lot among students.
 * FNV-1a over both identifiers (offset basis 2166136261, prime 16777619), then the finishing mix of MurmurHash3, without
 * which neighbouring texts fall on neighbouring numbers. Constants of both from memory.
 */
export function variantOrder(item: { id: string; unit: Unit; level: number }, memberId: string): VariantOrder {
  const { unit, level } = item;
  return { unit, level, seed: mix(hash(`${item.id} ${memberId}`)) % SEEDS };
}

/** The seed to try where no fair exercise comes of this one. */
export function nextSeed(seed: number): number {
  return (seed + 1) % SEEDS;
}

function hash(text: string): number {
  let bits = 2166136261;
  for (const byte of new TextEncoder().encode(text)) bits = Math.imul(bits ^ byte, 16777619);
  return bits >>> 0;
}

function mix(hashed: number): number {
  let bits = hashed;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) >>> 0;
}
