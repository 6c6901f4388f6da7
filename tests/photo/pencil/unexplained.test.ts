import { describe, expect, it } from "vitest";
import type { PencilCorner, PencilLine } from "@/lib/photo/drawing-reading";
import type { ExpectedDrawing } from "@/lib/photo/pencil/expected-drawing";
import { unexplainedCost } from "@/lib/photo/pencil/unexplained";
import type { SheetPlace } from "@/lib/sheet/place-drawings";

function line(from: SheetPlace, to: SheetPlace): PencilLine {
  return { from, to, darkness: 0.4, widthMm: 0.5, straightMm: 0.05 };
}

const corner = (at: SheetPlace): PencilCorner => ({ at, lines: [], kind: "corner" });
/** Two points with a line between them. */
const expected: ExpectedDrawing = { asked: ["S.start", "S.end"], given: [], lines: [{ from: 0, to: 1 }], ways: [] };
const corners = [corner([0, 0]), corner([30, 0]), corner([25, 0]), corner([0, 8]), corner([30, 8])];

describe("what is left over of a drawing", () => {
  const cost = unexplainedCost(expected, [line([0, 0], [30, 0])], corners);

  it("is nothing where the line between the places taken was drawn", () => {
    expect(cost([0, 1])).toBe(0);
    expect(cost([1, 0])).toBe(0);
  });

  it("is the more the farther a line goes on past the place taken for its end", () => {
    expect(cost([0, 2])).toBeGreaterThan(0);
    expect(cost([0, 2])).toBeLessThan(cost([0, null]));
  });

  it("is the whole line where another one would have been drawn, up to a limit for hatching", () => {
    expect(cost([3, 4])).toBe(cost([null, null]));
    const long = unexplainedCost(expected, [line([0, 0], [90, 0])], corners);
    expect(long([null, null])).toBe(cost([null, null]));
  });

  it("is nothing of a letter's short strokes", () => {
    expect(unexplainedCost(expected, [line([0, 0], [3, 0])], corners)([null, null])).toBe(0);
  });
});
