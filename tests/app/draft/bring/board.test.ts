import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromBoard, layBoard, sayShare, toBoard, toSheet } from "@/app/draft/bring/board";
import { seeded } from "../../../seeded";

const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const place = fc.tuple(number, number);

describe("the board that something is pointed at on", () => {
  it("takes every place there and back, whatever its unit and wherever its origin", () => {
    fc.assert(
      fc.property(place, place, place, (one, other, at) => {
        const least = [Math.min(one[0], other[0]), Math.min(one[1], other[1])] as const;
        const most = [Math.max(one[0], other[0]), Math.max(one[1], other[1])] as const;
        const board = layBoard({ least, most });
        const [x, y] = fromBoard(board, toBoard(board, at));
        const size = Math.max(1, ...at.map(Math.abs), ...least.map(Math.abs), ...most.map(Math.abs));
        expect(Math.hypot(x - at[0], y - at[1])).toBeLessThan(1e-9 * size);
      }),
      seeded,
    );
  });

  it("is as large for a drawing in millimetres as for one in miles, with room round it", () => {
    for (const unit of [0.001, 1, 1609]) {
      const board = layBoard({ least: [-8 * unit, 0], most: [8 * unit, 12 * unit] });
      expect(board.bounds.right - board.bounds.left).toBeCloseTo(10.8, 9);
      expect(toSheet(board, [0, 6 * unit]).map((value) => value + 0)).toEqual([0, 0]);
      // Up the drawing is up the sheet, whose y runs down.
      expect(toSheet(board, [0, 12 * unit])[1]).toBeLessThan(0);
    }
  });

  it("has a size for what has none", () => {
    const board = layBoard({ least: [5, 5], most: [5, 5] });
    expect(Number.isFinite(toBoard(board, [6, 6])[0])).toBe(true);
    expect(board.bounds.right).toBeGreaterThan(board.bounds.left);
  });

  it("tells a place in shares of what is shown", () => {
    const board = layBoard({ least: [0, 0], most: [100, 100] });
    expect(sayShare(board, [50, 100])).toBe("50 percent across, 96 percent up.");
  });
});
