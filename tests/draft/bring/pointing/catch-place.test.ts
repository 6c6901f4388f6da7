import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BroughtLine, BroughtPoint } from "@/lib/draft/bring/brought";
import { catchPlace, nextPlace, openCatching } from "@/lib/draft/bring/pointing/catch-place";
import { layOutPieces } from "@/lib/draft/bring/pointing/lay-out-pieces";
import { distance } from "@/lib/geometry/vector";

const straight = (...points: readonly BroughtPoint[]): BroughtLine => ({ points, curved: false });
const layers = (...lists: readonly (readonly BroughtLine[])[]) => lists.map((lines) => ({ lines }));
const all = () => true;

/** A wall along x from 0 to 10, one up y from 4, crossing it 2 below its end, and a bend beside them. */
const drawing = layers(
  [straight([0, 0], [10, 0]), straight([4, -2], [4, 8])],
  [
    {
      points: [
        [20, 0],
        [21, 1],
        [22, 1.5],
        [23, 1],
        [24, 0],
      ],
      curved: true,
    },
  ],
);
const catching = openCatching(layOutPieces(drawing), all);

describe("catching a place of a drawing", () => {
  it.each([
    ["an end before the line it ends", [0.3, 0.1], [0, 0], "end"],
    ["a crossing before the lines that cross", [4.2, 0.3], [4, 0], "crossing"],
    ["a middle where no end is near", [5.1, 0.2], [5, 0], "middle"],
    ["a line where nothing else of it is", [7.5, 0.4], [7.5, 0], "line"],
    ["an end of a bend", [20.1, 0.1], [20, 0], "end"],
    ["a bend itself, but none of the points it is drawn by", [21.9, 1.6], [21.94, 1.47], "line"],
  ] as const)("catches %s", (_, from, to, by) => {
    const found = catchPlace(catching, from, 0.5);
    expect(found?.by).toBe(by);
    expect(distance(found?.at ?? [Number.NaN, 0], to)).toBeLessThan(0.05);
  });

  it("catches nothing out of reach, on a layer that is not shown, or in an empty drawing", () => {
    expect(catchPlace(catching, [7.5, 0.6], 0.5)).toBeNull();
    expect(
      catchPlace(
        openCatching(layOutPieces(drawing), (layer) => layer !== 0),
        [0, 0],
        0.5,
      ),
    ).toBeNull();
    expect(catchPlace(openCatching(layOutPieces([]), all), [0, 0], 0.5)).toBeNull();
  });

  it("jumps that way to the nearest end or middle, and stays where there is none", () => {
    expect(nextPlace(catching, [0, 0], [1, 0], 100)).toEqual({ at: [5, 0], by: "middle" });
    expect(nextPlace(catching, [5, 0], [1, 0], 100)?.at).toEqual([10, 0]);
    expect(nextPlace(catching, [5, 0], [0, 1], 100)?.at).toEqual([4, 3]);
    expect(nextPlace(catching, [0, 0], [-1, 0], 100)).toBeNull();
    expect(nextPlace(catching, [10, 0], [1, 0], 5)).toBeNull();
  });

  it("never goes farther than its reach, and lies on a line of the drawing", () => {
    const number = fc.double({ min: -20, max: 20, noNaN: true });
    const place = fc.tuple(number, number);
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 1, maxLength: 12 }), place, (lines, at) => {
        const drawn = layers(lines.map(([a, b]) => straight(a, b)));
        const found = catchPlace(openCatching(layOutPieces(drawn), all), at, 2);
        if (!found) return;
        expect(distance(found.at, at)).toBeLessThanOrEqual(2);
        const again = catchPlace(openCatching(layOutPieces(drawn), all), found.at, 1e-6);
        expect(again).not.toBeNull();
      }),
      { seed: 21, numRuns: 300 },
    );
  });
});
