import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { project } from "@/lib/perspective/project";
import { backWallCorners, type Stage } from "@/lib/stage/stage";
import { distanceForBackWallRise, eyePoint } from "@/lib/stage/viewer";
import { seeded } from "../seeded";

describe("eyePoint", () => {
  it("stands at (offset, -distance, eye height)", () => {
    expect(eyePoint({ distance: 11, eyeHeight: 2.4, offset: -0.5 })).toEqual([-0.5, -11, 2.4]);
  });
});

describe("distanceForBackWallRise", () => {
  // D = depth (h - r) / (r - rake depth), worked by hand
  it.each([
    [{ depth: 8, rake: 0 }, 2.4, 0.8, 16],
    [{ depth: 8, rake: 0 }, 2.4, 1.2, 8],
    [{ depth: 8, rake: 0.05 }, 2.4, 0.8, 32],
    [{ depth: 10, rake: 0.04 }, 2, 1, 50 / 3],
  ])("on %o, from an eye %s m high that shows it %s m up, is %s m", (stage, eyeHeight, rise, distance) => {
    expect(distanceForBackWallRise(stage, eyeHeight, rise)).toBeCloseTo(distance, 9);
  });

  it.each([
    ["at the plaster line's foot", { depth: 8, rake: 0 }, 2.4, 0],
    ["below it", { depth: 8, rake: 0 }, 2.4, -0.1],
    ["at the horizon", { depth: 8, rake: 0 }, 2.4, 2.4],
    ["above the horizon", { depth: 8, rake: 0 }, 2.4, 3],
    ["at the raked floor's own height", { depth: 8, rake: 0.05 }, 2.4, 0.4],
    ["below the raked floor", { depth: 8, rake: 0.05 }, 2.4, 0.3],
    ["nowhere", { depth: 8, rake: 0 }, 2.4, Number.NaN],
  ])("there is none for a back wall's foot shown %s", (_, stage, eyeHeight, rise) => {
    expect(distanceForBackWallRise(stage, eyeHeight, rise)).toBeNull();
  });

  it("is the distance from which the foot of the back wall is seen there", () => {
    const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({ depth: fc.integer({ min: 2, max: 20 }), rake: fc.constantFrom(0, 0.02, 0.05, 1 / 12) }),
        fc.double({ min: 2, max: 5, noNaN: true }),
        share,
        ({ depth, rake }, eyeHeight, t) => {
          const rise = rake * depth + t * (eyeHeight - rake * depth);
          const distance = distanceForBackWallRise({ depth, rake }, eyeHeight, rise) ?? Number.NaN;
          const stage: Stage = { opening: { width: 10, height: 6 }, depth, apron: 0, rake };
          const seen = project({ distance, eyeHeight, offset: 0.3 }, backWallCorners(stage)[0]);
          expect(seen.seen ? seen.at[1] : Number.NaN).toBeCloseTo(rise, 9);
        },
      ),
      seeded,
    );
  });
});
