import { describe, expect, it } from "vitest";
import type { BroughtUnit } from "@/lib/draft/bring/brought";
import { firstSizeChoice, metresOf, sizeChoices } from "@/lib/draft/bring/place/size-choices";

const words = (unit: BroughtUnit) => sizeChoices(unit).map((choice) => choice.words);

describe("the ways to tell a drawing's size", () => {
  it("begin with what the file tells", () => {
    const unit = { kind: "stage", name: "feet" } as const;
    expect(words(unit)).toEqual(["as the file tells: feet", "two places and a length"]);
    expect(firstSizeChoice(unit)?.scale).toEqual({ by: "file" });
    expect(sizeChoices(unit).map(metresOf)).toEqual([1, null]);
  });

  it("are the usual scales where the paper is known, and none of them is taken unasked", () => {
    const unit = { kind: "paper", name: "millimetres" } as const;
    expect(words(unit)).toEqual(
      expect.arrayContaining([`paper at 1/4" = 1'-0"`, "paper at 1:50", "two places and a length"]),
    );
    expect(firstSizeChoice(unit)).toBeNull();
    const quarter = sizeChoices(unit).find((choice) => choice.words.includes("1/4"));
    expect(quarter?.scale).toEqual({ by: "ratio", ratio: 48 });
    expect(quarter && metresOf(quarter)).toBe(48);
  });

  it("are the likely units where nothing is known, and none of them is taken unasked", () => {
    const unit = { kind: "unknown", likely: [{ name: "inches", metres: 0.0254 }] } as const;
    expect(words(unit)).toEqual(["drawn in inches", "two places and a length"]);
    expect(firstSizeChoice(unit)).toBeNull();
    expect(sizeChoices(unit).map(metresOf)).toEqual([0.0254, null]);
  });

  it("are two places and a length alone where no unit makes sense", () => {
    const only = firstSizeChoice({ kind: "unknown", likely: [] });
    expect(only?.key).toBe("length");
    expect(only?.scale).toBeNull();
  });
});
