import fc from "fast-check";
import { FOOT_M } from "@/lib/measure/length";

/** Nobody points finer than this; what is finer is lost in the file as rounding, metres. */
const FINEST_M = 1e-7;

/** Metres, at times on an author's grid of three quarters of an inch, at times anywhere. */
export const length = (min: number, max: number) =>
  fc.oneof(
    fc.integer({ min: Math.round(min * 16), max: Math.round(max * 16) }).map((n) => (n * FOOT_M) / 16),
    fc.double({ min, max, noNaN: true }).map((n) => Math.round(n / FINEST_M) * FINEST_M + 0),
  );

/** A place on or about a stage. */
export const place = fc.tuple(length(-8, 8), length(-1, 9));

export const angle = fc.oneof(
  fc.constantFrom(0, Math.PI / 2, -Math.PI / 2, Math.PI),
  fc.double({ min: -7, max: 7, noNaN: true }),
);

/** A number to choose by, and what it chooses. */
export const pick = fc.nat({ max: 10_000 });
export const one = <Item>(items: readonly Item[], n: number): Item | undefined => items[n % Math.max(1, items.length)];
