import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arcPoints, circlePoints } from "@/lib/drawing/arc-points";
import type { DrawingPoint } from "@/lib/drawing/display-list";
import { HAND_REACH_MM, handPath, ruledPath } from "@/lib/drawing/hand-stroke";
import { distanceToSegment } from "@/lib/geometry/segments-cross";
import { seeded } from "../seeded";
import { gap } from "./fixtures/find-stroke";

/** Room for the rounding of path data, millimetres. */
const ROUNDING_MM = 0.002;
/** A curve is drawn through fewer points than its polyline has; between them it may leave it by so much more, millimetres. */
const CURVE_CHORD_MM = 0.05;

/** Path data read back: each run's points, curves sampled. */
function readPath(d: string): DrawingPoint[][] {
  const runs: DrawingPoint[][] = [];
  for (const [, letter, numbers] of d.matchAll(/([MLC])([^MLC]*)/g)) {
    const v = (numbers ?? "")
      .trim()
      .split(/[\s,]+/)
      .map(Number) as [number, number, number, number, number, number];
    const run = runs.at(-1);
    if (letter === "M") runs.push([[v[0], v[1]]]);
    else if (letter === "L") run?.push([v[0], v[1]]);
    else {
      const [x, y] = run?.at(-1) ?? [0, 0];
      for (let k = 1; k <= 20; k++) {
        const [t, r] = [k / 20, 1 - k / 20];
        const blend = (a: number, b: number, c: number, e: number) =>
          r ** 3 * a + 3 * r * r * t * b + 3 * r * t * t * c + t ** 3 * e;
        run?.push([blend(x, v[0], v[2], v[4]), blend(y, v[1], v[3], v[5])]);
      }
    }
  }
  return runs;
}

function offPolyline(point: DrawingPoint, ideal: readonly DrawingPoint[]): number {
  return Math.min(...ideal.slice(1).map((b, i) => distanceToSegment(point, [ideal[i] as DrawingPoint, b])));
}

const coordinate = fc.double({ min: 0, max: 420, noNaN: true });
const point = fc.tuple(coordinate, coordinate);
const id = fc.string({ minLength: 1, maxLength: 30 });

describe("a line drawn by hand", () => {
  it("ends within 0.25 mm of the true ends and never strays farther, on sheets up to A3", () => {
    expect(HAND_REACH_MM).toBe(0.25);
    fc.assert(
      fc.property(point, point, id, (a, b, name) => {
        fc.pre(gap(a, b) > 0.01);
        const [run] = readPath(handPath([a, b], name, { unitsPerMm: 1 }));
        expect(gap(run?.[0] as DrawingPoint, a)).toBeLessThanOrEqual(HAND_REACH_MM + ROUNDING_MM);
        expect(gap(run?.at(-1) as DrawingPoint, b)).toBeLessThanOrEqual(HAND_REACH_MM + ROUNDING_MM);
        for (const p of run ?? []) expect(offPolyline(p, [a, b])).toBeLessThanOrEqual(HAND_REACH_MM + ROUNDING_MM);
      }),
      { seed: 3, numRuns: 500 },
    );
  });

  it("holds to that where its bow is greatest, over many ids", () => {
    const ideal: DrawingPoint[] = [
      [0, 0],
      [200, 0],
    ];
    const strays = Array.from({ length: 2000 }, (_, k) => {
      const run = readPath(handPath(ideal, `line ${k}`, { unitsPerMm: 1 })).flat();
      return Math.max(...run.map(([, y]) => Math.abs(y)));
    });
    expect(Math.max(...strays)).toBeLessThanOrEqual(HAND_REACH_MM);
  });

  it.each([
    { name: "a small circle", points: circlePoints([20, 20], 1.5), closed: true },
    { name: "a large circle", points: circlePoints([200, 200], 90), closed: true },
    { name: "a door's swing", points: arcPoints([50, 50], [19, 19], 0, Math.PI / 2), closed: false },
    { name: "a low arch", points: arcPoints([50, 50], [40, 8], Math.PI, 0), closed: false },
  ])("keeps $name within 0.25 mm of itself", ({ name, points, closed }) => {
    const ideal = closed ? [...points, points[0] as DrawingPoint] : points;
    for (let k = 0; k < 40; k++) {
      const runs = readPath(handPath(points, `${name} ${k}`, { unitsPerMm: 1, closed }));
      for (const p of runs.flat()) expect(offPolyline(p, ideal)).toBeLessThanOrEqual(HAND_REACH_MM + CURVE_CHORD_MM);
      for (const end of [runs[0]?.[0], runs.at(-1)?.at(-1)])
        expect(Math.min(...ideal.map((p) => gap(p, end as DrawingPoint)))).toBeLessThanOrEqual(HAND_REACH_MM);
    }
  });

  it("is the same for the same id, and another for another", () => {
    const line: DrawingPoint[] = [
      [3, 4],
      [80, 20],
      [60, 70],
    ];
    fc.assert(
      fc.property(id, id, (one, other) => {
        const draw = (name: string) => handPath(line, name, { unitsPerMm: 1, closed: true });
        expect(draw(one)).toBe(draw(one));
        if (one !== other) expect(draw(one)).not.toBe(draw(other));
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("is the same line at every zoom", () => {
    const line: DrawingPoint[] = [
      [3, 4],
      [80, 20],
    ];
    const paper = readPath(handPath(line, "wall", { unitsPerMm: 1 })).flat();
    const screen = readPath(
      handPath(
        line.map(([x, y]) => [x * 8, y * 8]),
        "wall",
        { unitsPerMm: 8 },
      ),
    ).flat();
    expect(screen).toHaveLength(paper.length);
    for (const [i, p] of paper.entries())
      expect(gap([(screen[i]?.[0] ?? 0) / 8, (screen[i]?.[1] ?? 0) / 8], p)).toBeLessThan(ROUNDING_MM);
  });

  it("is not ruled: most lines move between their ends by enough to see", () => {
    const strays = Array.from({ length: 60 }, (_, k) => {
      const path = handPath(
        [
          [0, 0],
          [120, 0],
        ],
        `wall ${k}`,
        { unitsPerMm: 1 },
      );
      return Math.max(
        ...readPath(path)
          .flat()
          .map(([, y]) => Math.abs(y)),
      );
    });
    expect(strays.filter((stray) => stray > 0.03).length).toBeGreaterThan(30);
  });

  it.each([
    { name: "none", points: [] },
    { name: "one", points: [[1, 1]] },
  ] as { name: string; points: DrawingPoint[] }[])("draws nothing of $name", ({ points }) => {
    expect(handPath(points, "x", { unitsPerMm: 1, closed: true })).toBe("");
    expect(ruledPath(points)).toBe("");
  });

  it("draws a line of no length without a NaN", () => {
    expect(
      handPath(
        [
          [1, 1],
          [1, 1],
        ],
        "x",
        { unitsPerMm: 1 },
      ),
    ).not.toContain("NaN");
  });
});

describe("a ruled line", () => {
  it("goes through its points and nowhere else", () => {
    expect(
      ruledPath([
        [0, 0],
        [1.5, 2],
      ]),
    ).toBe("M0 0L1.5 2");
    expect(
      ruledPath(
        [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        true,
      ),
    ).toBe("M0 0L1 0L1 1Z");
  });
});

it("gives the same line elsewhere when all its points are moved alike", () => {
  const numbers = (d: string) => d.match(/-?[\d.]+/g)?.map(Number) ?? [];
  // Quarters, which a computer adds up exactly: a run that is just about a curve stays one.
  const mm = fc.integer({ min: -800, max: 800 }).map((quarters) => quarters / 4);
  const points = fc.array(fc.tuple(mm, mm), { minLength: 2, maxLength: 12 });
  fc.assert(
    fc.property(points, mm, mm, fc.boolean(), (line, right, down, closed) => {
      const there = line.map(([x, y]): DrawingPoint => [x + right, y + down]);
      const [a, b] = [line, there].map((run) => numbers(handPath(run, "own.W1", { unitsPerMm: 1, closed })));
      const moved = a?.map((value, i) => value + (i % 2 === 0 ? right : down)) ?? [];
      expect(b?.length).toBe(moved.length);
      for (const [i, value] of moved.entries()) expect(Math.abs(value - (b?.[i] ?? 0))).toBeLessThan(ROUNDING_MM);
    }),
    seeded,
  );
});
