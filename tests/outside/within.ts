import { expect } from "vitest";

/** Holds a number to another within an allowance, and says by how much it is off. */
export function expectWithin(actual: number, expected: number, allowance: number): void {
  const off = Math.abs(actual - expected);
  expect(off, `${actual} should be within ${allowance} of ${expected}; it is ${off} off`).toBeLessThanOrEqual(
    allowance,
  );
}
