import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clipArea, clipLine } from "@/lib/drawing/paper/clip-to-box";
import { seeded } from "@/tests/seeded";

const BOX = [0, 0, 10, 10] as const;

describe("a line cut off at a box", () => {
  it.each([
    [
      "inside",
      [
        [1, 1],
        [2, 3],
      ],
      [
        [
          [1, 1],
          [2, 3],
        ],
      ],
    ],
    [
      "across",
      [
        [-5, 5],
        [15, 5],
      ],
      [
        [
          [0, 5],
          [10, 5],
        ],
      ],
    ],
    [
      "outside",
      [
        [-5, -1],
        [15, -1],
      ],
      [],
    ],
    [
      "in, out and in again",
      [
        [5, 5],
        [15, 5],
        [15, 6],
        [5, 6],
      ],
      [
        [
          [5, 5],
          [10, 5],
        ],
        [
          [10, 6],
          [5, 6],
        ],
      ],
    ],
    [
      "round a corner inside",
      [
        [-5, 5],
        [5, 5],
        [5, 15],
      ],
      [
        [
          [0, 5],
          [5, 5],
          [5, 10],
        ],
      ],
    ],
    ["a point", [[5, 5]], []],
  ] as const)("%s", (_, points, pieces) => {
    expect(clipLine(points, BOX)).toEqual(pieces);
  });

  it("keeps just what is inside", () => {
    const number = fc.double({ min: -20, max: 30, noNaN: true });
    const point = fc.tuple(number, number);
    fc.assert(
      fc.property(fc.array(point, { minLength: 2, maxLength: 6 }), (points) => {
        const pieces = clipLine(points, BOX);
        const kept = pieces.reduce((sum, piece) => sum + lengthOf(piece), 0);
        for (const [x, y] of pieces.flat()) {
          expect(x).toBeGreaterThanOrEqual(-1e-9);
          expect(x).toBeLessThanOrEqual(10 + 1e-9);
          expect(y).toBeGreaterThanOrEqual(-1e-9);
          expect(y).toBeLessThanOrEqual(10 + 1e-9);
        }
        expect(Math.abs(kept - lengthByTrying(points))).toBeLessThan(0.05 * points.length);
      }),
      seeded,
    );
  });
});

describe("an area cut off at a box", () => {
  it.each([
    [
      "inside",
      [
        [1, 1],
        [2, 1],
        [2, 2],
      ],
      0.5,
    ],
    [
      "over all of it",
      [
        [-5, -5],
        [15, -5],
        [15, 15],
        [-5, 15],
      ],
      100,
    ],
    [
      "outside",
      [
        [11, 1],
        [12, 1],
        [12, 2],
      ],
      0,
    ],
    [
      "a triangle over one corner",
      [
        [-10, 0],
        [10, 0],
        [10, 20],
      ],
      50 + 50 - 0,
    ],
  ] as const)("%s", (_, outline, area) => {
    expect(areaOf(clipArea(outline, BOX))).toBeCloseTo(area, 9);
  });
});

describe("any area cut off at a box", () => {
  it("keeps just what is inside, of triangles", () => {
    const number = fc.integer({ min: -15, max: 25 });
    const point = fc.tuple(number, number);
    fc.assert(
      fc.property(fc.tuple(point, point, point), (triangle) => {
        const kept = clipArea(triangle, BOX);
        for (const [x, y] of kept) {
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-9);
          expect(Math.max(x, y)).toBeLessThanOrEqual(10 + 1e-9);
        }
        // A cell of the grid is missed or counted in vain only where the outline runs: at most about 4 times 100 of 10,000.
        expect(Math.abs(areaOf(kept) - areaByTrying(triangle))).toBeLessThan(4);
      }),
      seeded,
    );
  });

  it("cuts a winding outline to no more than the box", () => {
    const number = fc.double({ min: -20, max: 30, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { minLength: 3, maxLength: 9 }), (outline) => {
        for (const [x, y] of clipArea(outline, BOX)) {
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-9);
          expect(Math.max(x, y)).toBeLessThanOrEqual(10 + 1e-9);
        }
      }),
      seeded,
    );
  });
});

type Points = readonly (readonly [number, number])[];

function lengthOf(points: Points): number {
  return points.slice(1).reduce((sum, [x, y], i) => {
    const [a, b] = points[i] as [number, number];
    return sum + Math.hypot(x - a, y - b);
  }, 0);
}

/** The same length by walking along in small steps. */
function lengthByTrying(points: Points): number {
  const STEPS = 4000;
  return points.slice(1).reduce((sum, [x, y], i) => {
    const [a, b] = points[i] as [number, number];
    const step = Math.hypot(x - a, y - b) / STEPS;
    let inside = 0;
    for (let k = 0; k < STEPS; k++) {
      const [u, v] = [a + ((x - a) * (k + 0.5)) / STEPS, b + ((y - b) * (k + 0.5)) / STEPS];
      if (u >= 0 && u <= 10 && v >= 0 && v <= 10) inside += 1;
    }
    return sum + inside * step;
  }, 0);
}

/** Gauss's shoelace. */
function areaOf(points: Points): number {
  return Math.abs(
    points.reduce((sum, [x, y], i) => {
      const [a, b] = points[(i + 1) % points.length] as [number, number];
      return sum + (x * b - a * y) / 2;
    }, 0),
  );
}

/** The area of a triangle in the box by asking a grid of points. */
function areaByTrying([a, b, c]: readonly [
  readonly [number, number],
  readonly [number, number],
  readonly [number, number],
]) {
  const CELLS = 100;
  const side = ([px, py]: readonly [number, number], [qx, qy]: readonly [number, number], x: number, y: number) =>
    Math.sign((qx - px) * (y - py) - (qy - py) * (x - px));
  let inside = 0;
  for (let i = 0; i < CELLS; i++)
    for (let j = 0; j < CELLS; j++) {
      const [x, y] = [((i + 0.5) / CELLS) * 10, ((j + 0.5) / CELLS) * 10];
      const sides = [side(a, b, x, y), side(b, c, x, y), side(c, a, x, y)];
      if (sides.every((each) => each > 0) || sides.every((each) => each < 0)) inside += 1;
    }
  return (inside / CELLS ** 2) * 100;
}
