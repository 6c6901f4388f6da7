import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { markFromSheet, sheetFromMark } from "@/lib/photo/straighten/mark-places";
import { shippedExercise } from "@/tests/drawing/practice-sheet/exercises";
import { seeded } from "@/tests/seeded";

function sheetOf(id: string) {
  const sheet = layOutPracticeSheet(shippedExercise(id), { paper: "letter" });
  if (!sheet) throw new Error("The sheet does not fit.");
  return sheet;
}

describe("a place on the sheet and the mark it makes", () => {
  it("is of the picture, or of the plan where that is read back; up the paper is up, or upstage", () => {
    // 1:96 (1/8 inch to the foot): 9.6 m are 100 mm.
    const tide = sheetOf("the-tide-office");
    expect(tide.scale.ratio).toBe(96);
    const [right, down] = tide.layout.picture.at;
    const mark = markFromSheet(tide, [right - 50, down - 100]);
    expect(mark[0]).toBeCloseTo(-4.8, 9);
    expect(mark[1]).toBeCloseTo(9.6, 9);
    const room = sheetOf("room-from-its-picture");
    expect(markFromSheet(room, room.layout.plan.at)).toEqual([0, 0]);
    expect(markFromSheet(room, room.layout.picture.at)[1]).toBeGreaterThan(1);
  });

  it("comes back to where it was", () => {
    const metres = fc.double({ min: -20, max: 20, noNaN: true });
    const sheets = ["the-tide-office", "room-from-its-picture"].map(sheetOf);
    fc.assert(
      fc.property(fc.constantFrom(...sheets), metres, metres, (sheet, x, y) => {
        const back = markFromSheet(sheet, sheetFromMark(sheet, [x, y]));
        expect(Math.hypot(back[0] - x, back[1] - y)).toBeLessThan(1e-9);
      }),
      seeded,
    );
  });
});
