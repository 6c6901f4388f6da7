import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { constrain, NUDGE_STEPS_MM, nudge } from "@/app/_sheet/constrain";
import { FREE, move, press, release } from "@/app/_sheet/pick-up";
import type { View } from "@/app/_sheet/view";

const BOUNDS = { left: -5, right: 5, bottom: -1, top: 6 };
const VIEW: View<"picture"> = { plane: "picture", origin: [500, 600], pxPerMetre: 100 };

describe("constrain", () => {
  it("leaves a place on the drawing alone", () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: -1, max: 6, noNaN: true }), (x, z) => {
        expect(constrain([x, z], BOUNDS)).toEqual([x, z]);
      }),
    );
  });

  it.each([
    [
      [9, 9],
      [5, 6],
    ],
    [
      [-9, -9],
      [-5, -1],
    ],
    [
      [Number.NaN, Number.POSITIVE_INFINITY],
      [0, 2.5],
    ],
  ] as const)("brings %j to %j", (from, to) => {
    expect(constrain(from, BOUNDS)).toEqual(to);
  });
});

describe("nudge", () => {
  it("moves by millimetres of paper: 1 mm at 1:48 is 48 mm", () => {
    expect(nudge([0, 0], "right", NUDGE_STEPS_MM.plain, 48, BOUNDS)).toEqual([0.048, 0]);
    expect(nudge([0, 0], "down", NUDGE_STEPS_MM.fine, 48, BOUNDS)[1]).toBeCloseTo(-0.0096, 12);
  });

  it("never draws a mark to any place: equal steps are equal wherever they start", () => {
    fc.assert(
      fc.property(fc.double({ min: -4, max: 4, noNaN: true }), (x) => {
        expect(nudge([x, 0], "right", 5, 48, BOUNDS)[0] - x).toBeCloseTo(0.24, 9);
      }),
    );
  });
});

describe("picking up", () => {
  it("brings a mark to a press away from it", () => {
    expect(press(FREE, VIEW, [700, 400], null, "mouse").at).toEqual([2, 2]);
  });

  it("takes hold of a mark near the press without moving it", () => {
    const taken = press(FREE, VIEW, [705, 402], [2, 2], "mouse");
    expect(taken.at).toBeNull();
    expect(move(taken.hold, VIEW, [707, 402]).at).toBeNull();
    const dragged = move(taken.hold, VIEW, [805, 402]).at;
    expect(dragged?.[0]).toBeCloseTo(3, 9);
    expect(dragged?.[1]).toBeCloseTo(2, 9);
  });

  it("is a tap to take and a tap to put down, with a hover between", () => {
    const held = release(press(FREE, VIEW, [705, 402], [2, 2], "mouse").hold);
    expect(held).toEqual({ kind: "held" });
    expect(move(held, VIEW, [600, 500]).at).toEqual([1, 1]);
    const down = press(held, VIEW, [600, 500], [1, 1], "mouse");
    expect(down.at).toEqual([1, 1]);
    expect(release(down.hold)).toEqual(FREE);
  });

  it("does nothing to a mark that is not held", () => {
    expect(move(FREE, VIEW, [1, 1])).toEqual({ hold: FREE, at: null });
  });
});
