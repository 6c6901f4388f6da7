import { describe, expect, it } from "vitest";
import { besideLevel } from "@/lib/draft/exercise-desk/beside-level";
import { weighExercise } from "@/lib/draft/exercise-desk/weigh-exercise";
import { newDraft } from "@/lib/draft/new-draft";
import { readExerciseJson } from "@/lib/exercise/read-exercise";
import { generateExercise } from "@/lib/generator/generate-exercise";
import { LEVELS } from "@/lib/generator/levels";
import { edited } from "../edits/five-walls";

describe("how hard an exercise is", () => {
  it("has no figures where nothing is asked", () => {
    expect(weighExercise(newDraft("m").exercise)).toEqual({ marks: 0, finest: null, farthest: null });
  });

  it("is told by its finest mark and its farthest", () => {
    // Metres: eye 11 from the plaster line and 2.4 high, paper 1:50. Points 1 m and 6 m upstage on the centre line.
    const draft = edited(
      newDraft("m"),
      { edit: "add-point", at: [0, 6] },
      { edit: "add-point", at: [0, 1] },
      { edit: "set-task", task: { strictness: "drafted" } },
    );
    const { marks, finest, farthest } = weighExercise(draft.exercise);
    expect(marks).toBe(2);
    // B rises 2.4 / 12 = 0.2 m over the middle tick of the rule, 4 mm of paper: 2 sqrt(0.5^2 + (0.01 x 4)^2) mm, at most 1.
    expect(finest?.toleranceMm).toBe(1);
    // A: 1 mm of paper is 0.05 m; across 0.05 x 17 / 11, in depth 0.05 x 17^2 / (2.4 x 11).
    expect(farthest?.point).toBe("A.foot");
    expect(farthest?.worth.across).toBeCloseTo((0.05 * 17) / 11, 12);
    expect(farthest?.worth.depth).toBeCloseTo((0.05 * 17 ** 2) / (2.4 * 11), 12);
  });

  it("means the floor under a mark that is above it", () => {
    const walls = { edit: "add-walls", closed: false, height: 3, thickness: 0 } as const;
    const tops = edited(
      newDraft("m"),
      {
        ...walls,
        corners: [
          [-1, 2],
          [1, 5],
        ],
      },
      { edit: "set-task", task: { marks: ["B.top"] } },
    );
    const feet = edited(tops, { edit: "set-task", task: { marks: ["B.foot"] } });
    expect(weighExercise(tops.exercise).farthest?.worth).toEqual(weighExercise(feet.exercise).farthest?.worth);
  });
});

describe("an exercise beside its level", () => {
  it.each(LEVELS)("asks what the app's own of that level ask: %i", (level) => {
    for (const unit of ["floor", "walls", "sets"] as const) {
      const reading = readExerciseJson(generateExercise({ unit, level, seed: 5 }));
      expect(reading.ok && besideLevel(reading.exercise), unit).toEqual([]);
    }
  });

  it("says in what it asks something else", () => {
    const draft = edited(newDraft("m"), { edit: "add-point", at: [0, 1] });
    const { exercise } = edited(
      draft,
      { edit: "set-words", words: { unit: "walls", level: 2 } },
      { edit: "set-viewer", viewer: { distance: 11, eyeHeight: 2, offset: 0.5 } },
      { edit: "set-task", task: { hints: "none", goOnFrom: "own", strictness: "drafted", dimensions: "rule" } },
    );
    expect(besideLevel(exercise)).toEqual([
      "They ask 5 to 7 marks; this one asks 1.",
      "They are graded as a thumbnail; this one as a drafted drawing.",
      "Their dimensions are printed; here they are read with the rule.",
      "They give hints; this one gives none.",
      "They go on from true points; this one from the student's own.",
      "Their eye stands 2438 mm to 2896 mm high; here it stands at 2000 mm.",
      "Their eye is on the centre line; here it is off it.",
    ]);
  });
});
