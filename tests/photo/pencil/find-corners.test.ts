import { describe, expect, it } from "vitest";
import type { PencilLine } from "@/lib/photo/drawing-reading";
import { findCorners } from "@/lib/photo/pencil/find-corners";
import type { SheetPlace } from "@/lib/sheet/place-drawings";

function line(from: SheetPlace, to: SheetPlace): PencilLine {
  return { from, to, darkness: 0.4, widthMm: 0.5, straightMm: 0.05 };
}

describe("the corners of a drawing", () => {
  it.each([
    ["two lines that meet", [line([0, 0], [20, 0]), line([20, 0], [20, 15])], [[20, 0, "corner", 2]]],
    ["two that stop short of each other", [line([0, 0], [19, 0]), line([20, 0.8], [20, 15])], [[20, 0, "corner", 2]]],
    ["two that run over", [line([0, 0], [21, 0]), line([20, -1], [20, 15])], [[20, 0, "corner", 2]]],
    ["a line that ends on another", [line([0, 0], [20, 0]), line([10, 0.4], [10, 15])], [[10, 0, "corner", 2]]],
    ["lines that cross", [line([0, 0], [20, 0]), line([10, -8], [10, 9])], [[10, 0, "crossing", 2]]],
    [
      "three walls' lines in one place",
      [line([0, 6], [20, 0.3]), line([20.2, 0], [40, 0]), line([20, -0.2], [20, 25])],
      [[20.05, 0.1, "corner", 3]],
    ],
  ] as const)("are found of %s", (_, lines, expected) => {
    const corners = findCorners(lines).filter(({ kind }) => kind !== "end");
    expect(corners).toHaveLength(expected.length);
    expected.forEach(([x, y, kind, count], i) => {
      const corner = corners[i];
      expect(corner?.kind).toBe(kind);
      expect(corner?.lines).toHaveLength(count);
      expect(Math.hypot((corner?.at[0] ?? NaN) - x, (corner?.at[1] ?? NaN) - y)).toBeLessThan(0.3);
    });
  });

  it("are both ends of a lone line, and none of no line", () => {
    expect(findCorners([line([1, 2], [9, 2])]).map(({ at, kind }) => [at, kind])).toEqual([
      [[1, 2], "end"],
      [[9, 2], "end"],
    ]);
    expect(findCorners([])).toEqual([]);
  });

  it("are not made of lines that run alike, or that stop far from each other", () => {
    const kinds = findCorners([line([0, 0], [20, 0]), line([22, 0.5], [40, 1]), line([30, 10], [30, 30])]).map(
      ({ kind }) => kind,
    );
    expect(kinds).toEqual(["end", "end", "end", "end", "end", "end"]);
  });

  it("are the end of a line as well, where a letter's stroke stands just past it", () => {
    const nosing = line([0, 0], [30, 0]);
    const letter = line([31.5, -2], [31.5, 2]);
    const ends = findCorners([nosing, letter]).filter(({ kind, lines }) => kind === "end" && lines.includes(0));
    expect(ends.map(({ at }) => at)).toEqual([
      [0, 0],
      [30, 0],
    ]);
  });

  it("take a cross that was seen where one of its strokes was lost", () => {
    const corners = findCorners([line([8, 8], [12, 12])], [{ at: [10, 10], clear: 1 }]);
    expect(corners.filter(({ kind }) => kind === "crossing")).toEqual([{ at: [10, 10], lines: [0], kind: "crossing" }]);
  });
});
