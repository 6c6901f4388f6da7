import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutSegment, cutStroke } from "@/lib/drawing/demonstration/cut-to-box";
import { fitDrawing } from "@/lib/drawing/demonstration/fit-drawing";
import { thinFigures } from "@/lib/drawing/demonstration/thin-figures";
import type { Stroke } from "@/lib/drawing/display-list";
import { makeLettering, makeStroke } from "@/lib/drawing/make-stroke";
import { seeded } from "../../seeded";

describe("fitting a drawing into a room", () => {
  const margins = { side: 2, top: 1, foot: 5 };

  it.each([
    // By hand: 10 m by 5 m; across 200 - 4 x 1 leaves 196 for 10 m, up 100 - 6 leaves 94 for 5 m.
    { width: 200, height: 100, letterUnit: 1, perMetre: 18.8 },
    { width: 104, height: 1000, letterUnit: 1, perMetre: 10 },
    { width: 208, height: 1000, letterUnit: 2, perMetre: 20 },
  ])("makes a metre $perMetre of a room of $width by $height", ({ perMetre, ...room }) => {
    const fitted = fitDrawing([-5, 0, 5, 5], margins, room);
    expect(fitted.perMetre).toBeCloseTo(perMetre, 9);
    expect(fitted.scaleRatio).toBeCloseTo((1000 * room.letterUnit) / perMetre, 9);
  });

  it("shows the box with its margins, and what is left over on both sides, in a window of the room's shape", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 300, max: 3000, noNaN: true }),
        fc.double({ min: 200, max: 2000, noNaN: true }),
        fc.double({ min: 1, max: 12, noNaN: true }),
        (width, height, letterUnit) => {
          const { perMetre, window } = fitDrawing([-6, -1, 6, 7], margins, { width, height, letterUnit });
          const [left, bottom, right, top] = window;
          expect((right - left) * perMetre).toBeCloseTo(width, 6);
          expect((top - bottom) * perMetre).toBeCloseTo(height, 6);
          expect(left).toBeCloseTo(-right, 9);
          const side = (2 * letterUnit) / perMetre;
          expect(left).toBeLessThanOrEqual(-6 - side + 1e-9);
          expect(bottom).toBeLessThanOrEqual(-1 - (5 * letterUnit) / perMetre + 1e-9);
          expect(top).toBeGreaterThanOrEqual(7 + letterUnit / perMetre - 1e-9);
        },
      ),
      seeded,
    );
  });

  it("keeps to a size shared with another drawing, and to the least one where there is no room", () => {
    expect(
      fitDrawing([-5, 0, 5, 5], margins, { width: 900, height: 900, letterUnit: 1, mostPerMetre: 7 }).perMetre,
    ).toBe(7);
    expect(fitDrawing([-5, 0, 5, 5], margins, { width: 0, height: 0, letterUnit: 9 }).perMetre).toBe(0.1);
  });
});

describe("the figures of a rule", () => {
  const figures = [-4, -3, -2, -1, 0, 1, 2, 3, 4].map((x) => makeLettering(`f.${x}`, [x, 0], `${Math.abs(x)} m`));
  const line = makeStroke("line", [
    [-4, 0],
    [4, 0],
  ]);
  const shown = (scaleRatio: number) =>
    thinFigures([line, ...figures], ({ id }) => id.startsWith("f."), scaleRatio).flatMap((item) =>
      item.kind === "lettering" ? [item.at[0]] : [],
    );

  it("all stand where there is room, and fewer the smaller the drawing, the centre line's always", () => {
    expect(shown(50)).toHaveLength(9);
    expect(shown(150)).toEqual([-4, -2, 0, 2, 4]);
    expect(shown(300)).toEqual([-3, 0, 3]);
    expect(thinFigures([line], () => true, 50)).toEqual([line]);
  });
});

describe("cutting lines at the edge of a drawing", () => {
  it.each([
    {
      from: [-2, 1],
      to: [2, 1],
      cut: [
        [-1, 1],
        [1, 1],
      ],
    },
    {
      from: [0, -1],
      to: [0, 3],
      cut: [
        [0, 0],
        [0, 2],
      ],
    },
    { from: [-3, 1], to: [-2, 1], cut: null },
    {
      from: [-2, 0],
      to: [0, 2],
      cut: [
        [-1, 1],
        [0, 2],
      ],
    },
  ] as const)("of $from to $to leaves $cut", ({ from, to, cut }) => {
    expect(cutSegment([from, to], [-1, 0, 1, 2])).toEqual(cut);
  });

  it("leaves a stroke inside as it is, and of another the pieces inside", () => {
    const inside = makeStroke("a", [
      [0, 0],
      [1, 1],
    ]);
    expect(cutStroke(inside, [-1, -1, 2, 2])).toEqual([inside]);
    const bent: Stroke = makeStroke("b", [
      [0, 0],
      [3, 0],
      [3, 3],
    ]);
    expect(cutStroke(bent, [-1, -1, 2, 2]).map(({ points }) => points)).toEqual([
      [
        [0, 0],
        [2, 0],
      ],
    ]);
  });
});
