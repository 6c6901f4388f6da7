import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readExerciseJson } from "@/lib/exercise/read-exercise";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { project } from "@/lib/perspective/project";
import type { Viewer } from "@/lib/stage/viewer";
import { seeded } from "../seeded";
import { expectedOf, publishedCase, sourceOf, viewerOf } from "./published-cases";
import { expectWithin } from "./within";

const rule = publishedCase("alberti-01-two-thirds-NEGATIVE");
const TWO_THIRDS = 2 / 3;

/** The drawn heights of the first floor intervals of equal depth, nearest first. */
function drawnGaps(viewer: Viewer, spacing: number, count: number): readonly number[] {
  const rises = Array.from({ length: count + 1 }, (_, i) => {
    const seen = project(viewer, [0, i * spacing, 0]);
    return seen.seen ? seen.at[1] : Number.NaN;
  });
  return rises.slice(1).map((rise, i) => rise - (rises[i] as number));
}

function ratios(gaps: readonly number[]): readonly number[] {
  return gaps.slice(1).map((gap, i) => gap / (gaps[i] as number));
}

describe(`a wrong rule: ${rule.id}: ${sourceOf(rule)}`, () => {
  const spacing = 6;
  const found = ratios(drawnGaps(viewerOf(rule), spacing, 4));

  it.each(["ratio gap2/gap1 (a=6, D=36)", "ratio gap3/gap2", "ratio gap4/gap3"].map((name, i) => ({ name, i })))(
    "$name is the true one",
    ({ name, i }) => {
      const { value, tolerance } = expectedOf(rule, name);
      expectWithin(found[i] as number, value, tolerance);
    },
  );

  it("no ratio is two thirds here, and no two are the same for any eye", () => {
    for (const ratio of found) expect(Math.abs(ratio - TWO_THIRDS)).toBeGreaterThan(0.05);
    const eye = fc.record({
      distance: fc.double({ min: 2, max: 60, noNaN: true }),
      eyeHeight: fc.double({ min: 0.5, max: 6, noNaN: true }),
      offset: fc.constant(0),
    });
    fc.assert(
      fc.property(eye, fc.double({ min: 0.3, max: 3, noNaN: true }), (viewer, depth) => {
        const each = ratios(drawnGaps(viewer, depth, 6));
        for (const [i, ratio] of each.entries()) if (i > 0) expect(ratio).toBeGreaterThan(each[i - 1] as number);
      }),
      seeded,
    );
  });

  it("is marked down when a student draws by it", () => {
    const corners = { P: [0, 6], Q: [0, 12], R: [0, 18], S: [0, 24] };
    const reading = readExerciseJson({
      format: "plasterline.exercise/1",
      id: "equal-intervals",
      title: "Four equal intervals",
      unit: "floor",
      level: 1,
      units: "ft-in",
      scale: "1/2in=1ft",
      stage: { opening: { width: 36, height: 16 }, depth: 36 },
      viewer: { distance: 36, eyeHeight: 8 },
      plan: { corners },
      task: { kind: "plan-to-picture", marks: Object.keys(corners).map((name) => `${name}.foot`) },
    });
    if (!reading.ok) throw new Error("The exercise cannot be read.");
    const [first] = drawnGaps(reading.exercise.viewer, reading.exercise.plan.corners.get("P")?.[1] ?? Number.NaN, 1);
    const byRule = Object.keys(corners).map((name, i) => ({
      point: `${name}.foot`,
      at: [0, ((first as number) * (1 - TWO_THIRDS ** (i + 1))) / (1 - TWO_THIRDS)] as const,
    }));
    const grade = gradeMarks(reading.exercise, {
      format: "plasterline.marks/1",
      exercise: "equal-intervals",
      marks: byRule,
    });
    const scores = grade.marks.map(({ score }) => score);
    expect(scores[0]).toBe(100);
    expect(scores[2]).toBeLessThan(80);
    expect(scores[3]).toBeLessThan(scores[2] as number);
  });
});
