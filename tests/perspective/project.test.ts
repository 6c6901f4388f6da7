import { describe, expect, it } from "vitest";
import { backProjectToFloor, heightShown, project } from "@/lib/perspective/project";
import type { PicturePoint, StagePoint } from "@/lib/stage/frame";

const viewer = { distance: 12, eyeHeight: 3, offset: 1 };

describe("project", () => {
  it.each<{ what: string; point: StagePoint; at: PicturePoint; s: number }>([
    { what: "on the plaster line", point: [5, 0, 2], at: [5, 2], s: 1 },
    { what: "as far upstage as the eye is off", point: [5, 12, 0], at: [3, 1.5], s: 0.5 },
    { what: "before the plaster line", point: [5, -6, 0], at: [9, -3], s: 2 },
    { what: "straight before the eye", point: [1, 36, 3], at: [1, 3], s: 0.25 },
    { what: "below the stage floor", point: [1, 12, -1], at: [1, 1], s: 0.5 },
  ])("$what", ({ point, at, s }) => {
    const seen = project(viewer, point);
    if (!seen.seen) throw new Error("The point is not seen.");
    expect(seen.s).toBeCloseTo(s, 12);
    expect(seen.at[0]).toBeCloseTo(at[0], 12);
    expect(seen.at[1]).toBeCloseTo(at[1], 12);
  });

  it.each<{ what: string; distance: number; point: StagePoint }>([
    { what: "level with the eye", distance: 12, point: [0, -12, 0] },
    { what: "the eye itself", distance: 12, point: [1, -12, 3] },
    { what: "behind the eye", distance: 12, point: [0, -20, 0] },
    { what: "with the eye on the picture plane", distance: 0, point: [0, 5, 0] },
    { what: "with the eye behind the picture plane", distance: -1, point: [0, 5, 0] },
  ])("nothing is seen $what", ({ distance, point }) => {
    expect(project({ ...viewer, distance }, point)).toEqual({ seen: false });
  });
});

describe("close to the plaster line", () => {
  it("no digits are lost: a hair upstage moves a point by its own share of the way to the CVP", () => {
    const upstage = 1e-9;
    const seen = project({ distance: 12, eyeHeight: 3, offset: 5 }, [0, upstage, 0]);
    if (!seen.seen) throw new Error("The point is not seen.");
    expect(seen.at[0] / ((5 * upstage) / 12)).toBeCloseTo(1, 9);
    expect(seen.at[1] / ((3 * upstage) / 12)).toBeCloseTo(1, 9);
  });
});

describe("backProjectToFloor", () => {
  it.each<{ what: string; rake: number; base: number; at: PicturePoint; place: StagePoint }>([
    { what: "the plaster line", rake: 0, base: 0, at: [4, 0], place: [4, 0, 0] },
    { what: "halfway to the horizon", rake: 0, base: 0, at: [3, 1.5], place: [5, 12, 0] },
    { what: "the apron", rake: 0, base: 0, at: [9, -3], place: [5, -6, 0] },
    { what: "the apron of a raked stage, which is level", rake: 0.05, base: 0, at: [9, -3], place: [5, -6, 0] },
    { what: "a raked floor, as far up as the eye is off", rake: 0.05, base: 0, at: [3, 1.8], place: [5, 12, 0.6] },
    { what: "a platform", rake: 0, base: 1, at: [3, 2], place: [5, 12, 1] },
    { what: "a ceiling's level, over the eye", rake: 0, base: 5, at: [3, 4], place: [5, 12, 5] },
  ])("$what", ({ rake, base, at, place }) => {
    const found = backProjectToFloor(viewer, { rake }, at, base);
    if (!found.found) throw new Error("no place is found");
    for (const i of [0, 1, 2] as const) expect(found.at[i]).toBeCloseTo(place[i], 12);
  });

  it.each<{ what: string; rake: number; base: number; at: PicturePoint }>([
    { what: "on the horizon", rake: 0, base: 0, at: [3, 3] },
    { what: "above the horizon", rake: 0, base: 0, at: [3, 4] },
    { what: "on the horizon of a raked floor, above the eye's", rake: 0.05, base: 0, at: [3, 3.6] },
    { what: "under the horizon, for a level over the eye", rake: 0, base: 5, at: [3, 2] },
    { what: "on a level seen edge on", rake: 0, base: 3, at: [3, 3] },
  ])("no place is shown $what", ({ rake, base, at }) => {
    expect(backProjectToFloor(viewer, { rake }, at, base)).toEqual({ found: false });
  });

  it("a picture point above a raked stage's level horizon, and under its own, shows a place on the rake", () => {
    const found = backProjectToFloor(viewer, { rake: 0.05 }, [1, 3.3]);
    expect(found.found && found.at[1]).toBeCloseTo(132, 9);
  });
});

describe("heightShown", () => {
  it.each([
    { Z: 3, s: 0.5, height: 3 },
    { Z: 1.5, s: 0.5, height: 0 },
    { Z: 5, s: 0.5, height: 7 },
    { Z: 5, s: 1, height: 5 },
  ])("$Z at s = $s is $height", ({ Z, s, height }) => {
    expect(heightShown(viewer, Z, s)).toBeCloseTo(height, 12);
  });
});
