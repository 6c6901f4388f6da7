import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { exerciseForOwnEye } from "@/lib/grading/own-eye/exercise-for-own-eye";
import { project } from "@/lib/perspective/project";
import { backWallCorners } from "@/lib/stage/stage";
import { readTideOffice } from "../../fixtures/tide-office";
import { real } from "../../perspective/arbitraries";
import { seeded } from "../../seeded";
import { anyExercise, markAll } from "../any-exercise";
import { FOOT_M } from "../mark-tide-office";

/** The tide office is 26 ft deep. */
const feet = (horizon: number, foot: number) => ({ horizonZ: horizon * FOOT_M, backWallFootZ: foot * FOOT_M });

/** The foot of the back wall as an exercise's eye sees it, metres above the plaster line. */
function backWallFoot({ viewer, stage }: Exercise): number {
  const seen = project(viewer, backWallCorners(stage)[0]);
  if (!seen.seen) throw new Error("The back wall is not seen.");
  return seen.at[1];
}

describe("an exercise for the eye that a student drew", () => {
  // By hand, from similar triangles: D = 26 (h - r) / r on a level floor.
  it.each([
    { horizon: 6, foot: 2, distance: 52 },
    { horizon: 8, foot: 4, distance: 26 },
    { horizon: 10, foot: 2.5, distance: 78 },
  ])(
    "stands $distance ft away for a horizon at $horizon ft and a back wall from $foot ft",
    ({ horizon, foot, distance }) => {
      const own = exerciseForOwnEye(readTideOffice(["/viewer/offset", 2]), feet(horizon, foot));
      if (own.kind !== "ready") throw new Error(own.why);
      expect(own.exercise.viewer.distance).toBeCloseTo(distance * FOOT_M, 9);
      expect(own.exercise.viewer.eyeHeight).toBeCloseTo(horizon * FOOT_M, 9);
      expect(own.exercise.viewer.offset).toBeCloseTo(2 * FOOT_M, 9);
    },
  );

  it("counts the rise of a raked floor out: 26 ft at 1:26 rise 1 ft, so 26 (8 - 3) / (3 - 1) = 65 ft", () => {
    const own = exerciseForOwnEye(readTideOffice(["/stage/rake", "1:26"]), feet(8, 3));
    if (own.kind !== "ready") throw new Error(own.why);
    expect(own.exercise.viewer.distance).toBeCloseTo(65 * FOOT_M, 9);
  });

  it("says how far a pencil's width moves that eye, as trying it out does", () => {
    const level = readTideOffice();
    const own = exerciseForOwnEye(level, feet(8, 4));
    if (own.kind !== "ready") throw new Error(own.why);
    // Half a millimetre of paper at 1:48 is 24 mm; a thousandth of it each way gives the slopes.
    const step = 0.024 / 1000;
    const by = (dh: number, dr: number) => {
      const moved = exerciseForOwnEye(level, { horizonZ: 8 * FOOT_M + dh, backWallFootZ: 4 * FOOT_M + dr });
      if (moved.kind !== "ready") throw new Error(moved.why);
      return (moved.exercise.viewer.distance - 26 * FOOT_M) * 1000;
    };
    expect(own.distanceGive).toBeCloseTo(Math.hypot(by(step, 0), by(0, step)), 3);
  });

  it.each([
    ["a horizon on the plaster line", feet(0, -1), "horizon under the floor"],
    ["a horizon under it", feet(-2, -3), "horizon under the floor"],
    ["a foot on the horizon", feet(8, 8), "foot above the horizon"],
    ["a foot above it", feet(8, 9), "foot above the horizon"],
    ["a foot on the plaster line", feet(8, 0), "foot under the floor"],
    ["a foot a pencil's width over the plaster line", feet(8, 0.05), "too near to tell"],
    ["a foot a pencil's width under the horizon", feet(8, 7.95), "too near to tell"],
    ["no number", { horizonZ: Number.NaN, backWallFootZ: 1 }, "no number"],
    ["an infinite number", { horizonZ: Number.POSITIVE_INFINITY, backWallFootZ: 1 }, "no number"],
  ])("refuses %s", (_, drawn, why) => {
    const own = exerciseForOwnEye(readTideOffice(), drawn);
    expect(own).toMatchObject({ kind: "refused", why });
    if (own.kind === "refused") expect(own.say).toMatch(/^[A-Z].+\.$/);
  });

  it("refuses an eye that has part of the set behind it", () => {
    // D = 26 (8 - 7) / 7 = 3.7 ft, and a corner stands 4 ft before the plaster line.
    const before = readTideOffice(["/plan/corners/A", [-12, -4]], ["/stage/apron", 6]);
    expect(exerciseForOwnEye(before, feet(8, 7))).toMatchObject({ kind: "refused", why: "set not seen" });
  });

  it("refuses a task that reads a given picture back", () => {
    const reading = readTideOffice(["/task/kind", "picture-to-plan"], ["/task/marks", ["A.foot", "B.foot"]]);
    expect(exerciseForOwnEye(reading, feet(8, 4))).toMatchObject({ kind: "refused", why: "picture is given" });
  });

  it("is the exercise itself for its own horizon and back wall", () => {
    fc.assert(
      fc.property(anyExercise("true"), (exercise) => {
        const drawn = { horizonZ: exercise.viewer.eyeHeight, backWallFootZ: backWallFoot(exercise) };
        const own = exerciseForOwnEye(exercise, drawn);
        if (own.kind !== "ready") throw new Error(own.why);
        expect(own.exercise.viewer.distance).toBeCloseTo(exercise.viewer.distance, 6);
      }),
      seeded,
    );
  });

  it("gives full marks to a true drawing for another eye, which the exercise's own eye does not", () => {
    const eye = fc.tuple(real(0.5, 0.85), real(1.15, 1.4));
    fc.assert(
      fc.property(anyExercise("true"), eye, (exercise, [nearer, higher]) => {
        const drawnFor: Exercise = {
          ...exercise,
          viewer: {
            ...exercise.viewer,
            distance: exercise.viewer.distance * nearer,
            eyeHeight: exercise.viewer.eyeHeight * higher,
          },
        };
        const own = exerciseForOwnEye(exercise, {
          horizonZ: drawnFor.viewer.eyeHeight,
          backWallFootZ: backWallFoot(drawnFor),
        });
        if (own.kind !== "ready") throw new Error(own.why);
        const points = exercisePoints(drawnFor);
        const marks = markAll(exercise, ({ name }) => {
          const at = points.get(name)?.picture;
          if (!at) throw new Error(`${name} is not seen.`);
          return at;
        });
        expect(gradeMarks(own.exercise, marks).score).toBe(100);
        expect(gradeMarks(exercise, marks).score).toBeLessThan(100);
      }),
      { ...seeded, numRuns: Math.ceil(seeded.numRuns / 4) }, // grading is slow beside the rest
    );
  });
});
