import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { drawnScale } from "@/lib/classroom/homework/drawn-scale";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { MarkSet } from "@/lib/exercise/marks";
import { readExercise } from "@/lib/exercise/read-exercise";
import { sheetScales } from "@/lib/sheet/choose-scale";
import { PAPERS } from "@/lib/sheet/paper-size";

const reading = readExercise(readFileSync("exercises/floor/03-points-on-the-floor.json", "utf8"));
if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
const { exercise } = reading;
const printed = PAPERS.flatMap((paper) => layOutPracticeSheet(exercise, { paper })?.scale.written ?? []);
const marks = (device: "mouse" | "paper"): MarkSet["marks"] => [{ point: "A.foot", at: [0, 0], with: device }];

describe("the scale that marks are graded at", () => {
  it("is any that a paper has the exercise's sheet at, and no other, of marks from paper", () => {
    expect(printed.length).toBe(PAPERS.length);
    for (const { written } of sheetScales(exercise.units)) {
      const believed = printed.includes(written) ? written : exercise.scale;
      expect([written, drawnScale(exercise, { scale: written, marks: marks("paper") })]).toEqual([written, believed]);
    }
  });

  it.each([
    ["of marks from a screen", { scale: printed[0] ?? "", marks: marks("mouse") }],
    ["of marks from both", { scale: printed[0] ?? "", marks: [...marks("paper"), ...marks("mouse")] }],
    ["where none is said", { marks: marks("paper") }],
    ["where it is said in other words", { scale: "1:1000", marks: marks("paper") }],
  ])("is the exercise's own %s", (_, set) => {
    expect(drawnScale(exercise, set)).toBe(exercise.scale);
  });
});
