import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { downstageHalfShare, paperWorth } from "@/lib/perspective/foreshortening";
import { project } from "@/lib/perspective/project";
import { floorHeight } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";
import { seeded } from "../seeded";
import { anyRake, anyViewer, real, withViewer } from "./arbitraries";

const viewer: Viewer = { distance: 12, eyeHeight: 3, offset: 0 };

describe("downstageHalfShare", () => {
  it("is two thirds where the back wall is as far from the plaster line as the eye", () => {
    // The published handout's floor (northern.edu/wild/ScDes/PerspGrd.htm): 36 ft deep, eye 36 ft off; half at 2 2/3 of 4 ft.
    const share = downstageHalfShare({ distance: 36, eyeHeight: 8, offset: 0 }, { depth: 36, rake: 0 });
    expect(share).toBeCloseTo(2 / 3, 12);
  });

  it("is more than half, for any eye and any rake, and does not ask how high the eye is on a level floor", () => {
    fc.assert(
      fc.property(anyViewer, real(1, 30), anyRake, (eye, depth, rake) => {
        expect(downstageHalfShare(eye, { depth, rake })).toBeGreaterThan(0.5);
        const [one, other] = [eye, { ...eye, eyeHeight: 1 }].map((e) => downstageHalfShare(e, { depth, rake: 0 }));
        expect(one).toBeCloseTo(other as number, 9);
      }),
      seeded,
    );
  });

  it("is nothing where the floor has no drawn height", () => {
    expect(downstageHalfShare({ ...viewer, eyeHeight: 0 }, { depth: 8, rake: 0 })).toBeNull();
    expect(downstageHalfShare(viewer, { depth: 0, rake: 0 })).toBeNull();
  });
});

describe("paperWorth", () => {
  it("of a millimetre on the plaster line is the scale's, across", () => {
    expect(paperWorth(viewer, { rake: 0 }, [2, 0, 0], 48)?.across).toBeCloseTo(0.048, 12);
  });

  it("in depth agrees with moving the place and projecting it again", () => {
    const step = 1e-4;
    const scene = withViewer((eye) => fc.tuple(real(-0.7 * eye.distance, 30), real(-10, 10)));
    fc.assert(
      fc.property(scene, anyRake, ([eye, [y, x]], rake) => {
        fc.pre(Math.abs(y) > 2 * step);
        const rise = (at: number) => {
          const seen = project(eye, [x, at, floorHeight({ rake }, at)]);
          return seen.seen ? seen.at[1] : Number.NaN;
        };
        const rate = (rise(y + step) - rise(y - step)) / (2 * step);
        const worth = paperWorth(eye, { rake }, [x, y, floorHeight({ rake }, y)], 50);
        expect(Math.abs((worth?.depth ?? Number.NaN) / (0.05 / rate) - 1)).toBeLessThan(1e-5);
      }),
      seeded,
    );
  });

  it("grows upstage, across and in depth", () => {
    fc.assert(
      fc.property(anyViewer, real(0, 20), real(0.5, 20), (eye, y, further) => {
        const [near, far] = [y, y + further].map((at) => paperWorth(eye, { rake: 0 }, [0, at, 0], 48));
        expect(far?.across).toBeGreaterThan(near?.across ?? Number.NaN);
        expect(far?.depth).toBeGreaterThan(near?.depth ?? Number.NaN);
      }),
      seeded,
    );
  });

  it("has no depth at eye level, and is nothing behind the eye", () => {
    expect(paperWorth(viewer, { rake: 0 }, [0, 5, 3], 48)?.depth).toBeNull();
    expect(paperWorth(viewer, { rake: 0 }, [0, -12, 0], 48)).toBeNull();
  });
});
