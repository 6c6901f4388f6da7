import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import { LINE_END_MM } from "@/lib/grading/lines/line-precision";
import { exerciseForOwnEye } from "@/lib/grading/own-eye/exercise-for-own-eye";
import { project } from "@/lib/perspective/project";
import type { PicturePoint } from "@/lib/stage/frame";
import { backWallCorners } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";
import { SHIPPED } from "@/tests/exercises/shipped";
import { handSlips } from "../../hand-slips";
import { real } from "../../perspective/arbitraries";
import { seeded } from "../../seeded";
import { anyExercise } from "../any-exercise";
import { drawEdges, judged } from "./drawn-lines";

/** Another eye near an exercise's own: nearer or farther, lower or higher, to one side. */
const otherEye = fc.tuple(real(0.6, 1.6), real(0.7, 1.4), real(-1, 1));

function moveEye({ viewer }: Exercise, [near, high, aside]: readonly [number, number, number]): Viewer {
  return {
    distance: viewer.distance * near,
    eyeHeight: viewer.eyeHeight * high,
    offset: viewer.offset + aside,
  };
}

describe("the lines of any set", () => {
  it("are not remarked on when they are true, on a level or raked stage, from any eye", () => {
    fc.assert(
      fc.property(anyExercise("true"), (exercise) => {
        const { lines, meetings, remarks } = judged(exercise, drawEdges(exercise));
        expect(remarks).toEqual([]);
        expect(lines.every(({ off, offMm }) => !off && offMm < 1e-6)).toBe(true);
        expect(meetings.every(({ verdict }) => verdict === "true" || verdict === "cannot tell")).toBe(true);
        expect(lines.filter(({ rule }) => rule === "upright").length).toBeGreaterThan(4);
      }),
      seeded,
    );
  });

  it.each(SHIPPED.map(({ exercise }) => exercise).filter(({ task }) => task.kind === "plan-to-picture"))(
    "of $id are true in its own picture",
    (exercise) => {
      const { lines, meetings, remarks, skipped } = judged(exercise, drawEdges(exercise));
      expect(remarks).toEqual([]);
      expect(lines.length + skipped.length).toBe(drawEdges(exercise).length);
      expect(meetings.filter(({ verdict }) => verdict !== "true" && verdict !== "cannot tell")).toEqual([]);
    },
  );

  it("are true for the student's own eye, once the exercise is graded for it", () => {
    fc.assert(
      fc.property(anyExercise("true"), otherEye, (exercise, [near, high]) => {
        const viewer = moveEye(exercise, [near, high, 0]);
        const foot = project(viewer, backWallCorners(exercise.stage)[0]);
        if (!foot.seen) throw new Error("The back wall is not seen.");
        const own = exerciseForOwnEye(exercise, { horizonZ: viewer.eyeHeight, backWallFootZ: foot.at[1] });
        if (own.kind !== "ready") throw new Error(own.why);
        expect(judged(own.exercise, drawEdges(exercise, viewer)).remarks).toEqual([]);
      }),
      seeded,
    );
  });

  it("imply the eye they were drawn for, wherever the exercise has its own", () => {
    fc.assert(
      fc.property(anyExercise("true"), otherEye, (exercise, other) => {
        const viewer = moveEye(exercise, other);
        const { eye } = judged(exercise, drawEdges(exercise, viewer));
        expect(eye.kind).toBe("told");
        for (const figure of ["distance", "eyeHeight", "offset"] as const) {
          const told = eye[figure];
          if (told) expect(Math.abs(told.metres - viewer[figure])).toBeLessThan(1e-6 * viewer.distance);
        }
        expect(eye.eyeHeight).not.toBeNull();
      }),
      seeded,
    );
  });

  it("keep their uprights and level lines from any eye, and no words are empty or broken", () => {
    fc.assert(
      fc.property(anyExercise("true"), otherEye, (exercise, other) => {
        const { lines, meetings, remarks, eye } = judged(exercise, drawEdges(exercise, moveEye(exercise, other)));
        expect(lines.some(({ rule, off }) => rule !== "receding" && off)).toBe(false);
        for (const say of [...remarks, ...meetings.map((meeting) => meeting.say), eye.say]) {
          expect(say).toMatch(/^[A-Z].*\.$/);
          expect(say).not.toMatch(/NaN|undefined|Infinity|null/);
        }
      }),
      seeded,
    );
  });

  it("are seldom remarked on when a steady hand drew them, and its eye is told with honest give", () => {
    let remarked = 0;
    let all = 0;
    const squares: number[] = [];
    fc.assert(
      fc.property(anyExercise("true"), fc.nat(), (exercise, seed) => {
        const slips = handSlips(seed, (LINE_END_MM * exercise.scaleRatio) / 1000);
        const slip = ([X, Z]: PicturePoint): PicturePoint => {
          const [right, up] = slips();
          return [X + right, Z + up];
        };
        const { lines, eye } = judged(exercise, drawEdges(exercise, exercise.viewer, slip));
        remarked += lines.filter(({ off }) => off).length;
        all += lines.length;
        if (eye.eyeHeight) squares.push(((eye.eyeHeight.metres - exercise.viewer.eyeHeight) / eye.eyeHeight.give) ** 2);
      }),
      seeded,
    );
    // Two sigma leave one in twenty, and the turn that a hand is allowed besides is not used here.
    expect(remarked / all).toBeLessThan(0.05);
    const mean = squares.reduce((sum, square) => sum + square, 0) / squares.length;
    expect(squares.length).toBeGreaterThan(100);
    expect(mean).toBeGreaterThan(0.2);
    expect(mean).toBeLessThan(1.2);
  });
});
