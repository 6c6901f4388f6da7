import { describe, expect, it } from "vitest";
import { classSetPages, copiesPages } from "@/lib/drawing/practice-sheet/class-set-pages";
import { shippedExercise } from "./exercises";

const ORDER = { unit: "walls", level: 2, firstSeed: 100, count: 5, paper: "letter" } as const;

type Pages = ReturnType<typeof classSetPages>;

/** What is lettered on the pages under an id. */
function lettered(pages: Pages, id: string): readonly string[] {
  return pages.flatMap(({ layers }) =>
    layers.flatMap(({ list }) =>
      list.flatMap((item) => (item.id === id && item.kind === "lettering" ? [item.text] : [])),
    ),
  );
}

/** The sheets' own names at their feet. */
const names = (pages: Pages) => lettered(pages, "sheet.id");

describe("a class set", () => {
  it("has a variant for each, numbered, and the same ones for the same order", () => {
    const pages = classSetPages(ORDER);
    expect(names(pages)).toEqual(
      [100, 101, 102, 103, 104].map((seed, i) => `walls-2-${seed}, version 1, sheet ${i + 1}`),
    );
    expect(classSetPages(ORDER)).toEqual(pages);
  });

  it.each([
    ["ft-in", /^SCALE .*" = 1'-0"$/],
    ["m", /^SCALE 1:\d+$/],
  ] as const)("is all in %s where the class has rules of those units, and still complete", (units, scale) => {
    for (const count of [1, 6]) {
      const pages = classSetPages({ ...ORDER, units, count });
      expect(pages).toHaveLength(count);
      expect(lettered(pages, "sheet.scale").filter((text) => !scale.test(text))).toEqual([]);
      expect(names(pages).map((name) => /sheet (\d+)$/.exec(name)?.[1])).toEqual(pages.map((_, i) => String(i + 1)));
    }
  });

  it("has all sheets before all keys", () => {
    const pages = classSetPages({ ...ORDER, key: "points" });
    expect(pages).toHaveLength(10);
    expect(pages.map(({ title }) => title.startsWith("Answer key"))).toEqual([
      ...Array.from({ length: 5 }, () => false),
      ...Array.from({ length: 5 }, () => true),
    ]);
  });

  it("of one exercise has one key for all copies", () => {
    const pages = copiesPages(shippedExercise("raking-wall"), { count: 3, paper: "a4", key: "points" });
    expect(names(pages)).toEqual([
      "raking-wall, version 1, sheet 1",
      "raking-wall, version 1, sheet 2",
      "raking-wall, version 1, sheet 3",
      "raking-wall, version 1",
    ]);
  });
});
