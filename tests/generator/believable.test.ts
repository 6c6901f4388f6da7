import { beforeAll, describe, expect, it } from "vitest";
import { segmentsCross } from "@/lib/geometry/segments-cross";
import { wallLine } from "@/lib/plan/wall-line";
import { boxesOf, footOf, isInside, type Made, makeUnit, PATIENCE_MS, UNITS } from "./made";

type Place = readonly [x: number, y: number];

const TINY = 1e-9;

/** A length must lie between two, both in the author's feet. */
function expectFeet(metres: number, one: Made, least: number, most: number, what: string): void {
  const feet = metres / footOf(one);
  expect(feet, `${one.name} ${what}`).toBeGreaterThanOrEqual(least - TINY);
  expect(feet, `${one.name} ${what}`).toBeLessThanOrEqual(most + TINY);
}

function linesOf({ exercise: { plan } }: Made) {
  return plan.walls.map((wall) => {
    const line = wallLine(plan, wall);
    if (!line) throw new Error(`${wall.id} has no line.`);
    return { wall, line };
  });
}

/** Places along a line, its ends left out. */
function along([ax, ay]: Place, [bx, by]: Place, count: number): readonly Place[] {
  return Array.from({ length: count - 1 }, (_, i): Place => {
    const t = (i + 1) / count;
    return [ax + (bx - ax) * t, ay + (by - ay) * t];
  });
}

/** The leaves of every door as they swing: at each of some angles, the line from hinge to edge. */
function swings(one: Made): readonly { wall: string; leaf: readonly [Place, Place] }[] {
  return linesOf(one).flatMap(({ wall, line }) =>
    wall.openings
      .filter(({ kind }) => kind === "door")
      .flatMap(({ at, width, leaves, hinge, swing }) => {
        const [out, face] = swing === "offstage" ? [1, wall.thickness] : [-1, 0];
        const startUpstage = line.along[1] < 0;
        const single = hinge ?? (startUpstage ? "start" : "end");
        return (leaves === 2 ? ["start", "end"] : [single]).flatMap((jamb) =>
          [10, 30, 50, 70, 90].map((degrees) => {
            const turn = (degrees * Math.PI) / 180;
            const long = width / leaves;
            const u = (jamb === "start" ? at : at + width) as number;
            const reach = u + (jamb === "start" ? 1 : -1) * long * Math.cos(turn);
            const place = (a: number, v: number): Place => [
              line.from[0] + line.along[0] * a + line.offstage[0] * v,
              line.from[1] + line.along[1] * a + line.offstage[1] * v,
            ];
            return { wall: wall.id, leaf: [place(u, face), place(reach, face + out * long * Math.sin(turn))] as const };
          }),
        );
      }),
  );
}

describe.each(UNITS)("%s", (unit) => {
  let made: readonly Made[] = [];
  beforeAll(() => {
    made = makeUnit(unit);
  }, PATIENCE_MS);

  it("writes places on half feet or on 100 mm", () => {
    for (const { exercise, name } of made) {
      const grid = exercise.units === "m" ? 0.1 : 0.1524;
      const { corners, platforms, furniture, stairs } = exercise.plan;
      const places = [
        ...corners.values(),
        ...platforms.flatMap(({ outline }) => outline),
        ...furniture.map(({ at }) => at),
        ...stairs.flatMap(({ nosing }) => nosing),
      ];
      for (const value of places.flat()) {
        const steps = value / grid;
        expect(Math.abs(steps - Math.round(steps)), `${name}: ${value}`).toBeLessThan(1e-6);
      }
    }
  });

  it("keeps the eye between 0.9 and 2 widths away, with the opening within a cone of 60 degrees", () => {
    // The 60 degree cone: TD&T Fall 1984 p. 11; 0.9 and 2 widths: about Storey 1910 ch. III, 0.866 and 2. Horizons as in our own course.
    for (const one of made) {
      const { stage, viewer } = one.exercise;
      const widths = viewer.distance / stage.opening.width;
      expect(widths, one.name).toBeGreaterThanOrEqual(0.9);
      expect(widths, one.name).toBeLessThanOrEqual(2);
      for (const x of [-stage.opening.width / 2, stage.opening.width / 2])
        for (const z of [0, stage.opening.height]) {
          const off = Math.hypot(x - viewer.offset, z - viewer.eyeHeight);
          expect((Math.atan2(off, viewer.distance) * 180) / Math.PI, one.name).toBeLessThanOrEqual(30);
        }
      expectFeet(viewer.eyeHeight, one, 5.5 - 1 / 6, 10, "horizon");
      // Rakes from 1:18 to 1:48: Wikipedia, Rake (theatre).
      if (stage.rake !== 0) {
        expect(stage.rake, one.name).toBeLessThanOrEqual(1 / 18);
        expect(stage.rake, one.name).toBeGreaterThanOrEqual(1 / 48);
      }
    }
  });

  it("builds of stock sizes", () => {
    // Flats 8 to 16 ft and 3 x 7 doors: northern.edu/wild/th241/sc92.htm; risers 4 to 7 in, treads 11 in or more: IBC 1011.5.2 as quoted. Sills and platforms: common practice, no source.
    for (const one of made) {
      const { walls, platforms, stairs } = one.exercise.plan;
      for (const wall of walls) {
        expectFeet(wall.height, one, 8, 16, wall.id);
        for (const { kind, width, head, sill } of wall.openings) {
          if (kind === "door") expectFeet(width, one, 3, 5, "door");
          if (kind === "door") expectFeet(head, one, 7, 7.5, "door");
          if (kind === "window") expectFeet(sill, one, 2.5, 3, "sill");
          expectFeet(wall.height - head, one, 0.5, 13, "over the head");
        }
      }
      for (const { height, id } of platforms) expectFeet(height, one, 0.5, 2, id);
      for (const { riser, tread, id, steps } of stairs) {
        expect(riser, one.name).toBeGreaterThanOrEqual(4 * 0.0254);
        expect(riser, one.name).toBeLessThanOrEqual(7 * 0.0254 + TINY);
        expect(tread, one.name).toBeGreaterThanOrEqual(11 * 0.0254);
        const heights = platforms.map(({ height }) => Math.abs(height - (steps + 1) * riser));
        expect(Math.min(...heights), `${one.name} ${id} ends a riser below its platform`).toBeLessThan(1e-6);
      }
    }
  });

  it("leaves the playing space downstage centre free", () => {
    for (const one of made) {
      const foot = footOf(one);
      const inside = ([x, y]: Place) => Math.abs(x) < 4 * foot - TINY && y > TINY && y < 6 * foot - TINY;
      const places = linesOf(one).flatMap(({ line }) => along(line.from, line.to, 60));
      expect(places.some(inside), `${one.name} walls`).toBe(false);
      const spots = [-3.9, -2, 0, 2, 3.9].flatMap((x) => [0.1, 2, 4, 5.9].map((y): Place => [x * foot, y * foot]));
      for (const { outline, id } of boxesOf(one))
        expect(outline.some(inside) || spots.some((spot) => isInside(outline, spot)), `${one.name} ${id}`).toBe(false);
    }
  });

  it("hangs doors that can open, and keeps the floor before every way through free", () => {
    for (const one of made) {
      const boxes = boxesOf(one);
      const lines = linesOf(one);
      for (const { wall, leaf } of swings(one)) {
        const crossed = lines.filter(
          (other) => other.wall.id !== wall && segmentsCross([...leaf], [other.line.from, other.line.to]),
        );
        expect(
          crossed.map((other) => other.wall.id),
          `${one.name} ${wall}`,
        ).toEqual([]);
        expect(
          along(...leaf, 20).some((spot) => boxes.some(({ outline }) => isInside(outline, spot))),
          one.name,
        ).toBe(false);
      }
      const ways = lines.flatMap(({ wall, line }) =>
        wall.openings
          .filter(({ sill }) => sill === 0)
          .map(({ at, width }): Place => {
            const [u, v] = [at + width / 2, -2 * footOf(one)];
            return [
              line.from[0] + line.along[0] * u + line.offstage[0] * v,
              line.from[1] + line.along[1] * u + line.offstage[1] * v,
            ];
          }),
      );
      for (const spot of ways)
        expect(
          boxes.some(({ outline }) => isInside(outline, spot)),
          one.name,
        ).toBe(false);
    }
  });

  it("lists walls from stage right round to stage left, each open to the house, none crossing", () => {
    for (const one of made) {
      const { viewer } = one.exercise;
      const lines = linesOf(one);
      lines.slice(1).forEach(({ wall }, i) => {
        expect(wall.from, one.name).toBe(lines[i]?.wall.to);
      });
      const seenAt = ([x, y]: Place) => viewer.offset + ((x - viewer.offset) * viewer.distance) / (viewer.distance + y);
      for (const { line, wall } of lines) {
        expect(seenAt(line.to), `${one.name} ${wall.id}`).toBeGreaterThan(seenAt(line.from));
        const toEye =
          (viewer.offset - line.from[0]) * line.offstage[0] + (-viewer.distance - line.from[1]) * line.offstage[1];
        expect(toEye, `${one.name} ${wall.id} faces the house`).toBeLessThan(0);
      }
    }
  });

  it("stands furniture, platforms and flights clear of one another, before the walls and within the opening", () => {
    for (const one of made) {
      const { viewer, stage } = one.exercise;
      const boxes = boxesOf(one);
      const lines = linesOf(one);
      const middle = (outline: readonly Place[]): Place => [
        outline.reduce((sum, [x]) => sum + x, 0) / outline.length,
        outline.reduce((sum, [, y]) => sum + y, 0) / outline.length,
      ];
      for (const { id, outline } of boxes) {
        const centre = middle(outline);
        // A little in from each corner, where what only touches does not count.
        const spots = [
          centre,
          ...outline.map(([x, y]): Place => [x + (centre[0] - x) * 0.01, y + (centre[1] - y) * 0.01]),
        ];
        const others = boxes.filter((other) => other.outline !== outline);
        expect(
          others.filter((other) => spots.some((spot) => isInside(other.outline, spot))).map((other) => other.id),
          `${one.name} ${id}`,
        ).toEqual([]);
        for (const spot of spots) {
          expect(Math.abs(spot[0]), `${one.name} ${id}`).toBeLessThan(stage.opening.width / 2);
          const behind = lines.filter(({ line }) =>
            segmentsCross([[viewer.offset, -viewer.distance], spot], [line.from, line.to]),
          );
          expect(
            behind.map(({ wall }) => wall.id),
            `${one.name} ${id}`,
          ).toEqual([]);
        }
      }
    }
  });
});
