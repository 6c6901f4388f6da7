import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { GradedMark } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { project } from "@/lib/perspective/project";
import type { PicturePoint, StagePoint } from "@/lib/stage/frame";
import { floorHeight } from "@/lib/stage/stage";
import { real } from "../perspective/arbitraries";
import { seeded } from "../seeded";
import { type AskedPoint, anyExercise, askedPoints, markAll, moved } from "./any-exercise";

/** A level nearer the eye's own than this shows no depth worth reading, metres. */
const EDGE_ON_M = 0.1;

const eitherWay = fc.constantFrom("true" as const, "own" as const).chain(anyExercise);
const anyTurn = real(0, 2 * Math.PI);

/** What the slips of a random hand are taken from: as many as any exercise here asks marks. */
const slips = fc.array(fc.tuple(real(0, 15), anyTurn), { minLength: 60, maxLength: 60 });

describe("true marks", () => {
  it("score exactly 100, each and together, whatever the drawing goes on from", () => {
    fc.assert(
      fc.property(eitherWay, (exercise) => {
        const grade = gradeMarks(exercise, markAll(exercise));
        expect(grade.marks.length).toBeGreaterThan(20);
        expect(grade.missing).toEqual([]);
        expect(grade.score).toBe(100);
        expect(new Set(grade.marks.map(({ score }) => score))).toEqual(new Set([100]));
      }),
      seeded,
    );
  });

  it("mean the true place or height on the stage", () => {
    fc.assert(
      fc.property(anyExercise("true"), (exercise) => {
        const errors = gradeMarks(exercise, markAll(exercise)).marks.flatMap(({ plan }) => Object.values(plan ?? {}));
        expect(errors.length).toBeGreaterThan(20);
        for (const error of errors) expect(Math.abs(error)).toBeLessThan(1e-9);
      }),
      seeded,
    );
  });

  it("left out count 0 each, and are named in the task's order", () => {
    fc.assert(
      fc.property(anyExercise("true"), fc.nat(), (exercise, pick) => {
        const asked = exercise.task.marks;
        const keep = 1 + (pick % (asked.length - 1));
        const all = markAll(exercise);
        const grade = gradeMarks(exercise, { ...all, marks: all.marks.slice(0, keep) });
        expect(grade.score).toBeCloseTo((100 * keep) / asked.length, 9);
        expect(grade.missing).toEqual(asked.slice(keep));
      }),
      seeded,
    );
  });
});

describe("the score of a mark", () => {
  it("never rises as the mark moves off, is 100 within a tolerance and 0 from five", () => {
    fc.assert(
      fc.property(anyExercise("true"), fc.nat(), anyTurn, (exercise, pick, turn) => {
        const point = askedPoints(exercise)[pick % exercise.task.marks.length] as AskedPoint;
        const graded = (at: PicturePoint): GradedMark =>
          gradeMarks(exercise, {
            format: "plasterline.marks/1",
            exercise: exercise.id,
            marks: [{ point: point.name, at }],
          }).marks[0] as GradedMark;
        const { toleranceMm } = graded(point.picture);
        const scoreAt = (share: number) => graded(moved(point.picture, share * toleranceMm, turn, exercise)).score;
        const scores = [0, 0.5, 0.999, 1.5, 2, 3, 4, 4.9, 5.001, 8].map(scoreAt);
        expect(scores.slice(0, 3)).toEqual([100, 100, 100]);
        for (let i = 3; i < 8; i++) expect(scores[i]).toBeLessThan(scores[i - 1] as number);
        expect(scores[5]).toBeCloseTo(50, 6);
        expect(scores.slice(8)).toEqual([0, 0]);
      }),
      seeded,
    );
  });

  it("keeps to a tolerance that does not ask where the marks lie", () => {
    fc.assert(
      fc.property(eitherWay, slips, (exercise, slip) => {
        const tolerancesOf = (place?: Parameters<typeof markAll>[1]) =>
          gradeMarks(exercise, markAll(exercise, place)).marks.map(({ toleranceMm }) => toleranceMm);
        const slipped = tolerancesOf(({ picture }, i) =>
          moved(picture, ...(slip[i % slip.length] ?? [0, 0]), exercise),
        );
        expect(slipped).toEqual(tolerancesOf());
        for (const tolerance of slipped) expect(tolerance).toBeGreaterThanOrEqual(1);
      }),
      seeded,
    );
  });
});

describe("a drawing that stands on the wrong feet, and is right over them", () => {
  const scene = anyExercise("own").chain((exercise) =>
    fc.record({
      exercise: fc.constant(exercise),
      shifts: fc.array(fc.tuple(real(-2, 2), real(-2, 4)), {
        minLength: exercise.task.marks.length,
        maxLength: exercise.task.marks.length,
      }),
    }),
  );

  it("loses nothing at its tops when it goes on from the student's own marks, and does when from the true ones", () => {
    let worseByTruth = 0;
    fc.assert(
      fc.property(scene, ({ exercise, shifts }) => {
        const asked = askedPoints(exercise);
        const indexOf = new Map(asked.map(({ name }, i) => [name, i]));
        /** The place of the plan a point is drawn over: its foot's, moved. */
        const stoodAt = (point: AskedPoint): readonly [number, number] => {
          const foot = point.over === null ? undefined : indexOf.get(point.over);
          const [across, upstage] = shifts[foot ?? (indexOf.get(point.name) as number)] as [number, number];
          const moves = point.over === null || foot !== undefined;
          return moves ? [point.at[0] + across, point.at[1] + upstage] : [point.at[0], point.at[1]];
        };
        const drawn = (point: AskedPoint): PicturePoint => {
          const [x, y] = stoodAt(point);
          const z = point.onFloor ? floorHeight(exercise.stage, y) + point.base : point.at[2];
          const seen = project(exercise.viewer, [x, y, z] satisfies StagePoint);
          if (!seen.seen) throw new Error("The place is not seen.");
          return seen.at;
        };
        const marks = markAll(exercise, drawn);
        const levelOf = new Map(asked.map((point) => [point.name, point]));
        const tops = asked.filter(({ over }) => {
          const foot = over === null ? undefined : levelOf.get(over);
          return foot && Math.abs(foot.at[2] - exercise.viewer.eyeHeight) > EDGE_ON_M;
        });
        expect(tops.length).toBeGreaterThan(5);
        const scoresOf = (goOnFrom: "own" | "true") => {
          const grade = gradeMarks({ ...exercise, task: { ...exercise.task, goOnFrom } }, marks);
          const scores = new Map(grade.marks.map(({ point, score }) => [point, score]));
          return tops.map(({ name }) => scores.get(name) as number);
        };
        expect(new Set(scoresOf("own"))).toEqual(new Set([100]));
        if (Math.min(...scoresOf("true")) < 100) worseByTruth++;
      }),
      seeded,
    );
    expect(worseByTruth).toBeGreaterThan(seeded.numRuns / 2);
  });
});
