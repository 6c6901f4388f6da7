import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance, nearestName } from "@/lib/exercise/nearest-name";
import { seeded } from "../seeded";

describe("editDistance", () => {
  it.each([
    ["", "", 0],
    ["head", "head", 0],
    ["", "head", 4],
    ["heigth", "height", 1], // two neighbours swapped
    ["hight", "height", 1],
    ["kitten", "sitting", 3], // the textbook pair (Levenshtein distance 3)
    ["saturday", "sunday", 3],
    ["ca", "abc", 3], // optimal string alignment; the unrestricted distance is 2
  ])("from %j to %j is %s", (a, b, steps) => {
    expect(editDistance(a, b)).toBe(steps);
  });

  it("is the same both ways, and no more than the longer word", () => {
    const word = fc.string({ maxLength: 12 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
      seeded,
    );
  });
});

describe("nearestName", () => {
  it.each([
    ["heigth", ["width", "height", "head"], "height"],
    ["b.foot", ["A.foot", "B.foot", "B.top"], "B.foot"],
    ["HEAD", ["width", "head"], "head"],
    ["x", [], null],
  ])("of %s among %o is %s", (written, known, expected) => {
    expect(nearestName(written, known)).toBe(expected);
  });

  it("is any known name itself", () => {
    const names = fc.uniqueArray(fc.stringMatching(/^[a-z0-9.]{1,10}$/), { minLength: 1 });
    fc.assert(
      fc.property(names, fc.nat(), (known, i) => {
        const name = known[i % known.length] as string;
        expect(nearestName(name, known)).toBe(name);
      }),
      seeded,
    );
  });
});
