import { describe, expect, it } from "vitest";
import { runCommand } from "@/lib/cli/run-command";
import { commandFiles, FOOT_M, printed, refusal } from "./call-in-process";

const files = commandFiles();

describe("truth", () => {
  it("prints the stage's points, metres, in full precision", async () => {
    const truth = await printed(0, "truth", files.exercise());
    expect(Object.keys(truth)).toEqual(["scale", "viewer", "horizon", "distancePoints", "points", "walls"]);
    expect(truth).toMatchObject({
      scale: 48,
      viewer: { distance: 36 * FOOT_M, eyeHeight: 8 * FOOT_M, offset: 0 },
      horizon: 8 * FOOT_M,
      distancePoints: [
        [-36 * FOOT_M, 8 * FOOT_M],
        [36 * FOOT_M, 8 * FOOT_M],
      ],
    });
    expect(Object.keys(truth.points)).toHaveLength(38);
    const { plan, picture, s } = truth.points["A.foot"];
    expect(plan).toEqual([-12 * FOOT_M, 3 * FOOT_M, 0]);
    // 36/39 of 12 ft: a repeating fraction, so rounding would show
    expect(picture[0]).toBeCloseTo((-12 * FOOT_M * 36) / 39, 14);
    expect(picture[1]).toBeCloseTo(8 * FOOT_M * (1 - 36 / 39), 14);
    expect(s).toBeCloseTo(36 / 39, 15);
  });

  it("prints where each wall goes", async () => {
    const { walls } = await printed(0, "truth", files.exercise());
    // W1 and W3 run along the plaster line and go nowhere
    const nowhere = { vanishingPoint: null, footVanishingPoint: null, measuringPoint: null };
    expect(walls.W1).toEqual(nowhere);
    expect(walls.W3).toEqual(nowhere);
    // W2 runs (5, 11): X = 36 x 5/11; measuring point as far from it as the eye, to the left, past the CVP
    const X = (36 * 5) / 11;
    expect(walls.W2.vanishingPoint[0]).toBeCloseTo(X * FOOT_M, 12);
    expect(walls.W2.vanishingPoint[1]).toBeCloseTo(8 * FOOT_M, 12);
    expect(walls.W2.footVanishingPoint).toEqual(walls.W2.vanishingPoint);
    expect(walls.W2.measuringPoint[0]).toBeCloseTo((X - Math.hypot(X, 36)) * FOOT_M, 12);
    // W4 runs (3.5, -9): to the left of the CVP, so its measuring point lies to the right
    const left = (36 * 3.5) / -9;
    expect(walls.W4.vanishingPoint[0]).toBeCloseTo(left * FOOT_M, 12);
    expect(walls.W4.measuringPoint[0]).toBeCloseTo((left + Math.hypot(left, 36)) * FOOT_M, 12);
  });

  it("lifts the vanishing point of a wall's foot on a rake by rake times distance", async () => {
    const { walls } = await printed(0, "truth", files.exercise(["/stage/rake", "1:20"], ["/viewer/offset", 2]));
    expect(walls.W2.vanishingPoint[1]).toBeCloseTo(8 * FOOT_M, 12);
    expect(walls.W2.footVanishingPoint[0]).toBeCloseTo(walls.W2.vanishingPoint[0], 12);
    expect(walls.W2.footVanishingPoint[1]).toBeCloseTo((8 + 36 / 20) * FOOT_M, 12);
  });

  it("gives a wall square to the plaster line the distance point at the viewer's left", async () => {
    const { walls, distancePoints } = await printed(0, "truth", files.exercise(["/plan/corners/E", [9, 5]]));
    expect(walls.W4.vanishingPoint[0]).toBeCloseTo(0, 12);
    expect(walls.W4.measuringPoint[0]).toBeCloseTo(distancePoints[0][0], 12);
  });

  it("needs the right form, not sense: a point behind the eye has no picture", async () => {
    const path = files.exercise(
      ["/plan/corners/Q", [1, -40]],
      ["/plan/walls/0/to", "nowhere"],
      ["/task/marks", ["no.such"]],
    );
    const { points, walls } = await printed(0, "truth", path);
    expect(points["Q.foot"]).toEqual({ plan: [FOOT_M, -40 * FOOT_M, 0], picture: null, s: null });
    expect(walls.W1.vanishingPoint).toBeNull();
  });

  it("prints places or none for figures too large to reckon with", async () => {
    const path = files.exercise(["/plan/corners/A", [1e308, 1e308]], ["/viewer/offset", -1e308]);
    const { points } = await printed(0, "truth", path);
    for (const { picture } of Object.values<{ picture: unknown[] | null }>(points))
      expect(picture).not.toEqual([null, null]);
  });

  it("refuses the wrong form", async () => {
    const path = files.exercise(["/stage/depth", "deep"]);
    expect(await refusal("truth", path)).toMatchObject({
      file: path,
      where: "/stage/depth",
      message: expect.stringContaining('"deep"'),
    });
  });

  it("says in words where the points are", async () => {
    const { exitCode, out } = await runCommand(["truth", files.exercise(), "--text"]);
    expect(exitCode).toBe(0);
    // B.foot: 5.04 ft across, 2.24 ft up
    expect(out).toContain(`B.foot: -5'-0 1/2" across, 2'-2 7/8" up`);
  });
});
