import { describe, it } from "vitest";
import { meet } from "@/lib/geometry/meet";
import type { Vector2 } from "@/lib/geometry/vector";
import { backProjectToFloor, project } from "@/lib/perspective/project";
import { centreVanishingPoint, measuringPoint, vanishingPoint } from "@/lib/perspective/vanishing-point";
import type { StagePoint } from "@/lib/stage/frame";
import { distanceForBackWallRise, type Viewer } from "@/lib/stage/viewer";
import { expectedOf, publishedCase, sourceOf, viewerOf } from "./published-cases";
import { expectWithin } from "./within";

function seen(viewer: Viewer, point: StagePoint) {
  const found = project(viewer, point);
  if (!found.seen) throw new Error("The point is not seen.");
  return found;
}

function meeting(one: readonly [Vector2, Vector2], other: readonly [Vector2, Vector2]): Vector2 {
  const found = meet(one, other);
  if (!found) throw new Error("The lines do not meet.");
  return found;
}

const backWall = publishedCase("northern-01-back-wall");
describe(`${backWall.id}: ${sourceOf(backWall)}`, () => {
  it("a back wall 36 ft upstage drawn 4 ft up, under an eye at 8 ft, puts the eye 36 ft off", () => {
    const distance = distanceForBackWallRise({ depth: 36, rake: 0 }, 8, 4);
    expectWithin(distance ?? Number.NaN, viewerOf(backWall).distance, backWall.tolerance);
  });
});

const mitre = publishedCase("northern-02-mitre-6L");
describe(`${mitre.id}: ${sourceOf(mitre)}`, () => {
  const viewer = viewerOf(mitre);
  // The mitre line as the handout draws it: from the right end of the plaster line to the foot of the back wall at the left.
  const crossing = meeting(
    [
      [18, 0],
      [-9, 4],
    ],
    [[6, 0], centreVanishingPoint(viewer)],
  );

  it("the 6L line crosses the mitre line at Z = 2", () => {
    const { value, tolerance } = expectedOf(mitre, "mitre line Z where the 6L line crosses it");
    expectWithin(crossing[1], value, tolerance);
  });

  it("and that crossing shows a place 12 ft upstage", () => {
    const place = backProjectToFloor(viewer, { rake: 0 }, crossing);
    const { value, tolerance } = expectedOf(mitre, "depth at 6L (ft)");
    expectWithin(place.found ? place.at[1] : Number.NaN, value, tolerance);
  });
});

const middle = publishedCase("northern-04-diagonals-halve-depth");
describe(`${middle.id}: ${sourceOf(middle)}`, () => {
  it("the diagonals of the drawn floor cross at half its depth", () => {
    const crossing = meeting(
      [
        [-18, 0],
        [9, 4],
      ],
      [
        [18, 0],
        [-9, 4],
      ],
    );
    const { value, tolerance } = expectedOf(middle, "Z of crossing of diagonals of drawn trapezium");
    expectWithin(crossing[1], value, tolerance);
    const place = backProjectToFloor(viewerOf(middle), { rake: 0 }, crossing);
    expectWithin(place.found ? place.at[1] : Number.NaN, 18, tolerance);
  });
});

const room = publishedCase("ruskin-03-room-18-6");
describe(`${room.id}: ${sourceOf(room)}`, () => {
  it.each([0, 3, 10, 60])("a third of an upright is drawn as a third of it, %d ft upstage", (y) => {
    const [foot, third, top] = [0, 6, 18].map((z) => seen(viewerOf(room), [6, y, z]).at[1]) as [number, number, number];
    const { value, tolerance } = expectedOf(room, "(third-foot)/(top-foot)");
    expectWithin((third - foot) / (top - foot), value, tolerance);
  });
});

const inverse = publishedCase("leonardo-02-106-ratio");
describe(`${inverse.id}: ${sourceOf(inverse)}`, () => {
  it.each([
    { name: "size at 1 / size at 2", near: 1, far: 2 },
    { name: "size at 100 / size at 101", near: 100, far: 101 },
  ])("$name, whatever the distance of the plane", ({ name, near, far }) => {
    const { value, tolerance } = expectedOf(inverse, name);
    for (const distance of [0.25, 1, 7, 36]) {
      const size = (fromEye: number) =>
        seen({ distance, eyeHeight: 0, offset: 0 }, [0, fromEye - distance, 1]).at[1] as number;
      expectWithin(size(near) / size(far), value, tolerance * 10);
    }
  });
});

const quarter = publishedCase("storey-08-fig85-half-quarter");
describe(`${quarter.id}: ${sourceOf(quarter)}`, () => {
  it.each([
    { name: "whole base to the distance point", share: 1 },
    { name: "half base to half distance", share: 0.5 },
    { name: "quarter base to quarter distance", share: 0.25 },
  ])("$name meets the ray at the engraver's o", ({ share }) => {
    const viewer = viewerOf(quarter);
    const [X, Z] = quarter.points?.o?.picture ?? [Number.NaN, Number.NaN];
    const cvp = centreVanishingPoint(viewer);
    const crossing = meeting(
      [
        [0.612 - share, 0],
        [cvp[0] + share * viewer.distance, cvp[1]],
      ],
      [[0.612, 0], cvp],
    );
    expectWithin(crossing[0], X, quarter.tolerance);
    expectWithin(crossing[1], Z, quarter.tolerance);
    const o = seen(viewer, [0.612, 1, 0]).at;
    expectWithin(crossing[0], o[0], 1e-12);
    expectWithin(crossing[1], o[1], 1e-12);
  });
});

const staff = publishedCase("storey-12-fig94-flag-110");
describe(`${staff.id}: ${sourceOf(staff)}`, () => {
  it("a staff of 110 ft at 440 ft is drawn as the engraver drew it", () => {
    const [foot, top] = [0, 110].map((z) => seen(viewerOf(staff), [0, 440, z]).at[1]) as [number, number];
    const { value, tolerance } = expectedOf(staff, "drawn height of the 110ft staff at 440ft, in ft of the base scale");
    expectWithin(top - foot, value, tolerance);
  });
});

const fifths = publishedCase("storey-14-fig124-equal-fifths");
describe(`${fifths.id}: ${sourceOf(fifths)}`, () => {
  it("two fifths laid on the plaster line and joined to the measuring point cut the side at its second fifth", () => {
    const viewer = viewerOf(fifths);
    const [across, upstage] = [9.38, 6.859];
    const vanishing = vanishingPoint(viewer, [across, upstage, 0]);
    if (!vanishing) throw new Error("The side has no vanishing point.");
    const start = 43.63 - across;
    const laidOff = start + 2 * Math.hypot(across, upstage);
    const crossing = meeting([[laidOff, 0], measuringPoint(viewer, vanishing)], [[start, 0], vanishing]);
    const { value, tolerance } = expectedOf(fifths, "p2: base division 2/5 of AB joined to M1 meets A-V1 at X");
    expectWithin(crossing[0], value, tolerance);
  });
});

const circle = publishedCase("storey-17-fig168-circle-ellipse");
describe(`${circle.id}: ${sourceOf(circle)}`, () => {
  const viewer = viewerOf(circle);
  const [across, radius] = [-4, 355];
  // No function of the engine draws a circle; its points are projected one by one and their extents taken.
  const outline = Array.from({ length: 3600 }, (_, i) => {
    const turn = (i * Math.PI) / 1800;
    return seen(viewer, [across + radius * Math.cos(turn), radius + radius * Math.sin(turn), 0]).at;
  });
  const [Xs, Zs] = [outline.map(([X]) => X), outline.map(([, Z]) => Z)];

  it.each([
    { name: "Z of circle centre", found: () => seen(viewer, [across, radius, 0]).at[1] },
    { name: "Z of ellipse centre line", found: () => (Math.min(...Zs) + Math.max(...Zs)) / 2 },
    { name: "half-width of ellipse (vertical tangents)", found: () => (Math.max(...Xs) - Math.min(...Xs)) / 2 },
  ])("$name is as engraved", ({ name, found }) => {
    const { value, tolerance } = expectedOf(circle, name);
    expectWithin(found(), value, tolerance);
  });
});
