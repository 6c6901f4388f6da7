import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distance } from "@/lib/geometry/vector";
import { backProjectToFloor, heightShown, project } from "@/lib/perspective/project";
import type { PicturePoint, StagePoint } from "@/lib/stage/frame";
import { onFloor } from "@/lib/stage/stage";
import { distanceForBackWallRise, type Viewer } from "@/lib/stage/viewer";
import { seeded } from "../seeded";
import { anyPlace, anyPoint, anyRake, anyViewer, real, withViewer } from "./arbitraries";

/** Rounding left in a place found, as a share of the lengths that go into it: some hundreds of roundings of a double. */
const SAME = 1e-13;

/** The same in a ratio of gaps, the least of which may be a ten-thousandth of the lengths. */
const SAME_RATIO = 1e-11;

function seen(viewer: Viewer, point: StagePoint): PicturePoint {
  const found = project(viewer, point);
  if (!found.seen) throw new Error("The point is not seen.");
  return found.at;
}

/** The point a share of the way along a line over the stage. */
function along([x, y, z]: StagePoint, [u, v, w]: StagePoint, t: number): StagePoint {
  return [x + (u - x) * t, y + (v - y) * t, z + (w - z) * t];
}

/** How far the middle of three picture points lies from the line through the outer two. */
function bend([ax, az]: PicturePoint, [bx, bz]: PicturePoint, [cx, cz]: PicturePoint): number {
  const length = Math.hypot(cx - ax, cz - az);
  const area = (bx - ax) * (cz - az) - (bz - az) * (cx - ax);
  return length === 0 ? 0 : Math.abs(area) / length;
}

describe("back-projection gives back what was projected", () => {
  function expectRoundTrip(viewer: Viewer, rake: number, base: number, [x, y, z]: StagePoint) {
    const found = backProjectToFloor(viewer, { rake }, seen(viewer, [x, y, z]), base);
    if (!found.found) throw new Error("No place is found.");
    const reach = viewer.distance + Math.abs(y) + Math.abs(x);
    // The nearer the eye is to the level of the floor, or of its slope drawn on, the less of the depth the picture holds.
    const above = viewer.eyeHeight - base;
    const gap = Math.min(Math.abs(above), Math.abs(above + rake * viewer.distance));
    const conditioned = (SAME * reach * (reach + viewer.eyeHeight)) / (viewer.distance * gap);
    expect(Math.abs(found.at[0] - x)).toBeLessThanOrEqual(conditioned);
    expect(Math.abs(found.at[1] - y)).toBeLessThanOrEqual(conditioned);
    expect(Math.abs(found.at[2] - z)).toBeLessThanOrEqual(conditioned);
  }

  it("on a level floor, before the plaster line too", () => {
    fc.assert(
      fc.property(withViewer(anyPlace), ([viewer, [x, y]]) => expectRoundTrip(viewer, 0, 0, [x, y, 0])),
      seeded,
    );
  });

  it("on a raked floor and the level apron before it", () => {
    fc.assert(
      fc.property(withViewer(anyPlace), anyRake, ([viewer, place], rake) =>
        expectRoundTrip(viewer, rake, 0, onFloor({ rake }, place)),
      ),
      seeded,
    );
  });

  it("on a level under the eye or over it, above a level floor", () => {
    fc.assert(
      fc.property(withViewer(anyPlace), real(-3, 12), ([viewer, [x, y]], base) => {
        fc.pre(Math.abs(viewer.eyeHeight - base) > 0.05);
        expectRoundTrip(viewer, 0, base, [x, y, base]);
      }),
      seeded,
    );
  });

  it("on a base under the eye, above a raked floor", () => {
    fc.assert(
      fc.property(withViewer(anyPlace), anyRake, real(0, 1), ([viewer, place], rake, share) => {
        const base = share * viewer.eyeHeight * 0.9;
        const [x, y, z] = onFloor({ rake }, place);
        expectRoundTrip(viewer, rake, base, [x, y, z + base]);
      }),
      seeded,
    );
  });

  it("on a base over the eye, upstage on a raked floor", () => {
    fc.assert(
      fc.property(withViewer(anyPlace), anyRake, real(0.1, 6), ([viewer, [x, depth]], rake, over) => {
        const y = Math.abs(depth); // before the plaster line such a base can hide behind its own rake: two places, one picture point
        const base = viewer.eyeHeight + over;
        fc.pre(Math.abs(viewer.eyeHeight + rake * viewer.distance - base) > 0.05);
        const z = rake * y;
        expectRoundTrip(viewer, rake, base, [x, y, z + base]);
      }),
      seeded,
    );
  });

  it("on or above the horizon of a level floor shows no place", () => {
    fc.assert(
      fc.property(anyViewer, real(-20, 20), real(0, 20), (viewer, X, above) => {
        const found = backProjectToFloor(viewer, { rake: 0 }, [X, viewer.eyeHeight + above]);
        expect(found).toEqual({ found: false });
      }),
      seeded,
    );
  });

  it("the height read at a point's own depth is the point's", () => {
    fc.assert(
      fc.property(withViewer(anyPoint), ([viewer, point]) => {
        const found = project(viewer, point);
        if (!found.seen) throw new Error("The point is not seen.");
        const height = heightShown(viewer, found.at[1], found.s);
        expect(Math.abs(height - point[2])).toBeLessThanOrEqual((SAME * (20 + Math.abs(point[2]))) / found.s);
      }),
      seeded,
    );
  });
});

describe("straight lines", () => {
  it("stay straight", () => {
    const line = (viewer: Viewer) => fc.tuple(anyPoint(viewer), anyPoint(viewer), real(0, 1));
    fc.assert(
      fc.property(withViewer(line), ([viewer, [from, to, t]]) => {
        const [a, b, c] = [seen(viewer, from), seen(viewer, along(from, to, t)), seen(viewer, to)];
        expect(bend(a, b, c)).toBeLessThanOrEqual(SAME * (1 + Math.hypot(...a) + Math.hypot(...c)));
      }),
      seeded,
    );
  });

  it("keep the cross-ratio of four of their points", () => {
    const four = fc.tuple(real(0, 0.2), real(0.3, 0.5), real(0.6, 0.75), real(0.85, 1));
    const line = (viewer: Viewer) => fc.tuple(anyPoint(viewer), anyPoint(viewer), four);
    const crossRatio = (gap: (i: number, j: number) => number) => (gap(0, 2) * gap(1, 3)) / (gap(1, 2) * gap(0, 3));
    fc.assert(
      fc.property(withViewer(line), ([viewer, [from, to, shares]]) => {
        const drawn = shares.map((t) => seen(viewer, along(from, to, t)));
        const drawnGap = (i: number, j: number) => distance(drawn[i] as PicturePoint, drawn[j] as PicturePoint);
        const size = 1 + Math.max(...drawn.map((p) => Math.hypot(...p)));
        // A line seen end on is drawn as a point, which has no cross-ratio.
        fc.pre([0, 1, 2].every((i) => drawnGap(i, i + 1) > 1e-4 * size));
        const stageGap = (i: number, j: number) => Math.abs((shares[j] as number) - (shares[i] as number));
        const [onStage, onPaper] = [crossRatio(stageGap), crossRatio(drawnGap)];
        expect(Math.abs(onPaper / onStage - 1)).toBeLessThanOrEqual(SAME_RATIO);
      }),
      seeded,
    );
  });
});

describe("true size and the horizon", () => {
  it("what stands on the plaster line is true to the last bit", () => {
    fc.assert(
      fc.property(anyViewer, real(-30, 30), real(-5, 20), (viewer, x, z) => {
        expect(project(viewer, [x, 0, z])).toEqual({ seen: true, at: [x, z], s: 1 });
      }),
      seeded,
    );
  });

  it("the horizon cuts every upright at eye height, to the last bit", () => {
    fc.assert(
      fc.property(withViewer(anyPlace), ([viewer, [x, y]]) => {
        expect(seen(viewer, [x, y, viewer.eyeHeight])[1]).toBe(viewer.eyeHeight);
      }),
      seeded,
    );
  });

  it("an upright is drawn upright, and its drawn height is s times its own", () => {
    fc.assert(
      fc.property(withViewer(anyPlace), real(-2, 2), real(0.1, 12), ([viewer, [x, y]], foot, height) => {
        const [low, high] = [project(viewer, [x, y, foot]), project(viewer, [x, y, foot + height])];
        if (!low.seen || !high.seen) throw new Error("The upright is not seen.");
        expect(high.at[0]).toBe(low.at[0]);
        const drawn = high.at[1] - low.at[1];
        expect(Math.abs(drawn - height * low.s)).toBeLessThanOrEqual(
          SAME * (1 + viewer.eyeHeight) * Math.max(1, low.s),
        );
      }),
      seeded,
    );
  });
});

describe("the eye's distance", () => {
  it("is found again from the drawn rise of the back wall's foot", () => {
    const stage = fc.record({ depth: real(2, 25), rake: anyRake });
    fc.assert(
      fc.property(anyViewer, stage, (viewer, { depth, rake }) => {
        fc.pre(viewer.eyeHeight - rake * depth > 0.05);
        const [, rise] = seen(viewer, [viewer.offset, depth, rake * depth]);
        const found = distanceForBackWallRise({ depth, rake }, viewer.eyeHeight, rise);
        expect(Math.abs((found ?? Number.NaN) / viewer.distance - 1)).toBeLessThanOrEqual(SAME);
      }),
      seeded,
    );
  });

  it("is not found for a rise that no eye sees", () => {
    const stage = fc.record({ depth: real(2, 25), rake: anyRake });
    fc.assert(
      fc.property(anyViewer, stage, real(0, 5), (viewer, { depth, rake }, more) => {
        expect(distanceForBackWallRise({ depth, rake }, viewer.eyeHeight, viewer.eyeHeight + more)).toBeNull();
        expect(distanceForBackWallRise({ depth, rake }, viewer.eyeHeight, rake * depth - more)).toBeNull();
      }),
      seeded,
    );
  });
});
