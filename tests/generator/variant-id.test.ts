import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { UNITS } from "@/lib/exercise/exercise";
import { findVariant } from "@/lib/generator/find-variant";
import { freshSeed, readVariantId, variantId } from "@/lib/generator/variant-id";

describe("the identifier of a generated exercise", () => {
  it.each([
    ["walls-2-48213", { unit: "walls", level: 2, seed: 48213 }],
    ["reading-5-0", { unit: "reading", level: 5, seed: 0 }],
    ["sets-1-9007199254740991", { unit: "sets", level: 1, seed: Number.MAX_SAFE_INTEGER }],
  ])("%s is read", (id, order) => expect(readVariantId(id)).toEqual(order));

  it.each([
    "",
    "walls",
    "walls-2",
    "walls-2-",
    "walls-0-1",
    "walls-6-1",
    "walls-2-007",
    "walls-2--1",
    "walls-2-1e3",
    "walls-2-9007199254740992",
    "walls-2-12345678901234567890",
    "ceilings-2-1",
    "Walls-2-1",
    " walls-2-1",
    "walls-2-1\n",
    "__proto__-1-1",
  ])("%j is none", (id) => expect(readVariantId(id)).toBeNull());

  it("comes back from what it writes", () => {
    const order = fc.record({
      unit: fc.constantFrom(...UNITS),
      level: fc.integer({ min: 1, max: 5 }),
      seed: fc.maxSafeNat(),
    });
    fc.assert(
      fc.property(order, (each) => {
        expect(readVariantId(variantId(each))).toEqual(each);
      }),
    );
  });

  it("gets a fresh seed, short enough to be read out, that is not the last one", () => {
    const bits = fc.integer({ min: 0, max: 2 ** 32 - 1 });
    fc.assert(
      fc.property(bits, fc.option(fc.integer({ min: 0, max: 999_999 })), (each, last) => {
        const seed = freshSeed(each, last);
        expect(seed).toBeGreaterThanOrEqual(0);
        expect(seed).toBeLessThan(1_000_000);
        expect(seed).not.toBe(last);
      }),
    );
    expect(freshSeed(999_999, 999_999)).toBe(0);
  });
});

describe("a generated exercise by its identifier", () => {
  it("carries the identifier, and is the same each time", () => {
    const found = findVariant("walls-2-48213");
    expect(found?.exercise.id).toBe("walls-2-48213");
    expect(found?.seed).toBe(48213);
    expect(findVariant("walls-2-48213")).toEqual(found);
  });

  it("is none for an identifier of another form", () => expect(findVariant("tide-office")).toBeNull());
});
