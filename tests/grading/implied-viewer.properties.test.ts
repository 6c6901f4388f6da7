import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { fitViewer, type Sighting } from "@/lib/grading/implied-viewer";
import { project } from "@/lib/perspective/project";
import type { StagePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";
import { anyViewer, real } from "../perspective/arbitraries";
import { seeded } from "../seeded";
import { anyExercise, markAll } from "./any-exercise";

const SCALE_RATIO = 48;

/** How exactly an eye is found from marks without error, as a share of its distance. */
const FOUND = 1e-9;

function sight(eye: Viewer, stage: StagePoint): Sighting {
  const seen = project(eye, stage);
  if (!seen.seen) throw new Error("The point is not seen.");
  return { stage, picture: seen.at };
}

/** Four feet well apart in depth and across, so that the eye can be told at all, and any others. */
const spread = fc
  .array(fc.tuple(real(-6, 6), real(0.5, 9), real(0, 4)), { maxLength: 16 })
  .map((others): readonly StagePoint[] => [[-4, 2, 0], [4, 2, 0], [-4, 8, 0], [4, 8, 0], ...others]);

const eye: fc.Arbitrary<Viewer> = fc.record({
  distance: real(4, 20),
  eyeHeight: real(1, 4),
  offset: real(-3, 3),
});

describe("the implied viewer", () => {
  it("is the eye that exact marks were drawn for, however the exercise places its own", () => {
    fc.assert(
      fc.property(eye, real(1 / 3, 3), anyViewer, spread, (drawnFor, factor, other, points) => {
        const own: Viewer = { ...other, distance: drawnFor.distance * factor };
        const found = fitViewer(
          points.map((point) => sight(drawnFor, point)),
          own,
          SCALE_RATIO,
        );
        if (!found) throw new Error("No eye is found.");
        const allowed = FOUND * drawnFor.distance;
        expect(Math.abs(found.distance - drawnFor.distance)).toBeLessThanOrEqual(allowed);
        expect(Math.abs(found.eyeHeight - drawnFor.eyeHeight)).toBeLessThanOrEqual(allowed);
        expect(Math.abs(found.offset - drawnFor.offset)).toBeLessThanOrEqual(allowed);
        expect(found.residualMm).toBeLessThan(1e-9);
      }),
      seeded,
    );
  });

  it("of a set's true marks is the exercise's", () => {
    fc.assert(
      fc.property(anyExercise("true"), (exercise) => {
        const { impliedViewer } = gradeMarks(exercise, markAll(exercise));
        const { viewer } = exercise;
        expect(impliedViewer?.distance).toBeCloseTo(viewer.distance, 8);
        expect(impliedViewer?.eyeHeight).toBeCloseTo(viewer.eyeHeight, 8);
        expect(impliedViewer?.offset).toBeCloseTo(viewer.offset, 8);
      }),
      seeded,
    );
  });

  it("cannot be told from marks on the plaster line alone, right or wrong, nor from fewer than two", () => {
    const onTheLine = fc.array(fc.tuple(real(-6, 6), real(0, 5), real(-0.2, 0.2), real(-0.2, 0.2)), { maxLength: 12 });
    fc.assert(
      fc.property(eye, onTheLine, spread, (own, places, [first]) => {
        const marks = places.map(([x, z, right, up]): Sighting => ({ stage: [x, 0, z], picture: [x + right, z + up] }));
        expect(fitViewer(marks, own, SCALE_RATIO)).toBeNull();
        expect(fitViewer([sight(own, first as StagePoint)], own, SCALE_RATIO)).toBeNull();
        expect(fitViewer([], own, SCALE_RATIO)).toBeNull();
      }),
      seeded,
    );
  });

  it("leaves no more unexplained than the true eye does, for a hand that slips", () => {
    const slip = fc.tuple(real(-0.1, 0.1), real(-0.1, 0.1));
    const slips = fc.array(slip, { minLength: 20, maxLength: 20 });
    let told = 0;
    fc.assert(
      fc.property(eye, spread, slips, (own, points, moves) => {
        const marks = points.map((point, i): Sighting => {
          const { picture } = sight(own, point);
          const [right, up] = moves[i] as [number, number];
          return { stage: point, picture: [picture[0] + right, picture[1] + up] };
        });
        const found = fitViewer(marks, own, SCALE_RATIO);
        if (!found) return;
        told++;
        const squares = moves.slice(0, points.length).reduce((sum, [right, up]) => sum + right ** 2 + up ** 2, 0);
        const ownResidualMm = (Math.sqrt(squares / points.length) * 1000) / SCALE_RATIO;
        expect(found.residualMm).toBeLessThanOrEqual(ownResidualMm + 1e-9);
      }),
      seeded,
    );
    expect(told).toBeGreaterThan(seeded.numRuns / 2);
  });
});
