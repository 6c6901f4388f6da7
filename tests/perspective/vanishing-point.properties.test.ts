import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { meet } from "@/lib/geometry/meet";
import { distance, type Vector2 } from "@/lib/geometry/vector";
import { project } from "@/lib/perspective/project";
import {
  centreVanishingPoint,
  distancePoints,
  floorVanishingPoint,
  measuringPoint,
  vanishingPoint,
} from "@/lib/perspective/vanishing-point";
import type { PicturePoint, PlanPoint, StageDirection, StagePoint } from "@/lib/stage/frame";
import { onFloor } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";
import { seeded } from "../seeded";
import { anyPlace, anyPoint, anyRake, anyViewer, real, withViewer } from "./arbitraries";

/** Rounding left in a construction, as a share of the lengths that go into it: some hundreds of roundings of a double. */
const SAME = 1e-13;

/** Plan directions well away from the plaster line's own, radians from it, either way upstage. */
const anyAngle = real(0.1, Math.PI - 0.1);

function seen(viewer: Viewer, point: StagePoint): PicturePoint {
  const found = project(viewer, point);
  if (!found.seen) throw new Error("The point is not seen.");
  return found.at;
}

function from([x, y, z]: StagePoint, [dx, dy, dz]: StageDirection, t: number): StagePoint {
  return [x + dx * t, y + dy * t, z + dz * t];
}

function vanishing(viewer: Viewer, direction: StageDirection): PicturePoint {
  const found = vanishingPoint(viewer, direction);
  if (!found) throw new Error("The direction has no vanishing point.");
  return found;
}

function meeting(one: readonly [Vector2, Vector2], other: readonly [Vector2, Vector2]): Vector2 {
  const found = meet(one, other);
  if (!found) throw new Error("The lines do not meet.");
  return found;
}

describe("parallel lines", () => {
  const pair = (viewer: Viewer) => fc.tuple(anyPoint(viewer), anyPoint(viewer), real(0.5, 10));

  it("that are level meet on the horizon, in the vanishing point of their direction", () => {
    fc.assert(
      fc.property(withViewer(pair), anyAngle, ([viewer, [a, b, length]], angle) => {
        const direction: StageDirection = [Math.cos(angle), Math.sin(angle), 0];
        const drawn = [a, b].map((p) => [seen(viewer, p), seen(viewer, from(p, direction, length))] as const);
        const [one, other] = drawn as [readonly [PicturePoint, PicturePoint], readonly [PicturePoint, PicturePoint]];
        const point = vanishing(viewer, direction);
        expect(point[1]).toBe(viewer.eyeHeight);
        // Two lines drawn nearly over each other, or nearly as points, say little of where they meet.
        const turn = Math.abs(
          (one[1][0] - one[0][0]) * (other[1][1] - other[0][1]) - (one[1][1] - one[0][1]) * (other[1][0] - other[0][0]),
        );
        const [long, broad] = [distance(...one), distance(...other)];
        fc.pre(long > 1e-2 && broad > 1e-2 && turn > 1e-2 * long * broad);
        const size = 1 + distance(one[0], point) + distance(other[0], point) + Math.hypot(...point);
        expect(distance(meeting(one, other), point)).toBeLessThanOrEqual(SAME * size * size);
      }),
      seeded,
    );
  });

  it("of any direction: each drawn line passes through the vanishing point", () => {
    fc.assert(
      fc.property(withViewer(pair), anyAngle, real(-1.2, 1.2), ([viewer, [a, , length]], angle, climb) => {
        const direction: StageDirection = [Math.cos(angle), Math.sin(angle), Math.tan(climb)];
        const [near, far] = [seen(viewer, a), seen(viewer, from(a, direction, length))];
        const point = vanishing(viewer, direction);
        const area = (far[0] - near[0]) * (point[1] - near[1]) - (far[1] - near[1]) * (point[0] - near[0]);
        const size = 1 + Math.hypot(...near) + Math.hypot(...far) + Math.hypot(...point);
        expect(Math.abs(area)).toBeLessThanOrEqual(SAME * size * size);
      }),
      seeded,
    );
  });

  it("to the plaster line have no vanishing point", () => {
    fc.assert(
      fc.property(anyViewer, real(-5, 5), real(-5, 5), (viewer, dx, dz) => {
        expect(vanishingPoint(viewer, [dx, 0, dz])).toBeNull();
      }),
      seeded,
    );
  });

  it("of a raked floor, square to the plaster line, run to the floor's own vanishing point", () => {
    const places = (viewer: Viewer) => fc.tuple(real(-20, 20), real(0, 20), real(1, 20), fc.constant(viewer));
    fc.assert(
      fc.property(withViewer(places), anyRake, ([viewer, [x, y, further]], rake) => {
        const [near, far] = [
          seen(viewer, onFloor({ rake }, [x, y])),
          seen(viewer, onFloor({ rake }, [x, y + further])),
        ];
        const point = floorVanishingPoint(viewer, { rake });
        expect(point).toEqual(vanishing(viewer, [0, 1, rake]));
        const area = (far[0] - near[0]) * (point[1] - near[1]) - (far[1] - near[1]) * (point[0] - near[0]);
        const size = 1 + Math.hypot(...near) + Math.hypot(...far) + Math.hypot(...point);
        expect(Math.abs(area)).toBeLessThanOrEqual(SAME * size * size);
      }),
      seeded,
    );
  });
});

describe("crossing diagonals", () => {
  const rectangle = (viewer: Viewer) => fc.tuple(anyPlace(viewer), real(0.5, 12), real(0.5, 12), real(0, 2 * Math.PI));

  it("give the perspective middle of a rectangle on the floor, however it is turned", () => {
    fc.assert(
      fc.property(withViewer(rectangle), ([viewer, [[x, y], width, depth, turn]]) => {
        const [across, up]: readonly PlanPoint[] = [
          [width * Math.cos(turn), width * Math.sin(turn)],
          [-depth * Math.sin(turn), depth * Math.cos(turn)],
        ] as const;
        const corner = (u: number, v: number): StagePoint => [
          x + u * (across as PlanPoint)[0] + v * (up as PlanPoint)[0],
          y + u * (across as PlanPoint)[1] + v * (up as PlanPoint)[1],
          0,
        ];
        const corners = [corner(0, 0), corner(1, 1), corner(1, 0), corner(0, 1)];
        fc.pre(corners.every((p) => p[1] > -0.9 * viewer.distance));
        const [a, b, c, d] = corners.map((p) => seen(viewer, p)) as [Vector2, Vector2, Vector2, Vector2];
        const middle = seen(viewer, corner(0.5, 0.5));
        // Seen nearly edge on, the diagonals lie nearly over each other.
        const sine =
          Math.abs((b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0])) / distance(a, b) / distance(c, d);
        fc.pre(sine > 1e-5);
        const size = 1 + [a, b, c, d].reduce((sum, p) => sum + Math.hypot(...p), 0);
        expect(distance(meeting([a, b], [c, d]), middle)).toBeLessThanOrEqual((1e-13 * size) / sine);
      }),
      seeded,
    );
  });
});

describe("measuring points", () => {
  /** A wall from the plaster line: where it starts, its plan angle, and how far along it a place is sought. */
  const wall = fc.record({ start: real(-12, 12), angle: anyAngle, length: real(0.2, 30) });

  it("a true length laid on the plaster line and joined to the measuring point cuts the wall there", () => {
    fc.assert(
      fc.property(anyViewer, wall, (viewer, { start, angle, length }) => {
        const direction: StageDirection = [Math.cos(angle), Math.sin(angle), 0];
        const point = vanishing(viewer, direction);
        const measuring = measuringPoint(viewer, point);
        expect(measuring[1]).toBe(viewer.eyeHeight);
        const away = Math.sign(point[0] - measuring[0]);
        const crossing = meeting([[start + away * length, 0], measuring], [[start, 0], point]);
        const place = seen(viewer, from([start, 0, 0], direction, length));
        const size = Math.abs(start) + length + Math.hypot(...point) + Math.hypot(...measuring);
        expect(distance(crossing, place)).toBeLessThanOrEqual((SAME * size * size) / viewer.eyeHeight);
      }),
      seeded,
    );
  });

  it("lie as far from the vanishing point as the eye does, on the side of the CVP", () => {
    fc.assert(
      fc.property(anyViewer, anyAngle, (viewer, angle) => {
        const point = vanishing(viewer, [Math.cos(angle), Math.sin(angle), 0]);
        const measuring = measuringPoint(viewer, point);
        const [cvp] = centreVanishingPoint(viewer);
        const fromEye = Math.hypot(point[0] - cvp, viewer.distance);
        expect(Math.abs(Math.abs(point[0] - measuring[0]) - fromEye)).toBeLessThanOrEqual(
          SAME * (fromEye + Math.abs(cvp)),
        );
        if (point[0] !== cvp) expect(Math.sign(measuring[0] - point[0])).toBe(Math.sign(cvp - point[0]));
      }),
      seeded,
    );
  });

  it("of rays are the distance points: the left one by name, the right one by the same construction", () => {
    fc.assert(
      fc.property(anyViewer, real(-12, 12), real(0.2, 30), (viewer, x, depth) => {
        const cvp = centreVanishingPoint(viewer);
        const [left, right] = distancePoints(viewer);
        expect(measuringPoint(viewer, cvp)).toEqual(left);
        const place = seen(viewer, [x, depth, 0]);
        const size = Math.abs(x) + depth + Math.abs(viewer.offset) + viewer.distance;
        for (const [laidOff, point] of [
          [x + depth, left],
          [x - depth, right],
        ] as const) {
          const crossing = meeting([[laidOff, 0], point], [[x, 0], cvp]);
          expect(distance(crossing, place)).toBeLessThanOrEqual((SAME * size * size) / viewer.eyeHeight);
        }
      }),
      seeded,
    );
  });

  it("distance points are where level 45 degree lines vanish", () => {
    fc.assert(
      fc.property(anyViewer, (viewer) => {
        expect(distancePoints(viewer)).toEqual([vanishing(viewer, [-1, 1, 0]), vanishing(viewer, [1, 1, 0])]);
      }),
      seeded,
    );
  });
});
