import { describe, expect, it } from "vitest";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { shippedExercise } from "@/tests/drawing/practice-sheet/exercises";
import { drawnLines } from "./drawn-lines";
import { goesOnFromOwn, marksByHabit } from "./marks-by-habit";

describe("a student's marks on paper", () => {
  it.each([
    ["raking-wall", "square-wall"],
    ["the-tide-office", "plan-depth"],
    ["drying-loft", "level-top"],
    ["nine-lamps", "flat-floor"],
    ["room-from-its-picture", "too-shallow"],
  ])("of %s show the habit %s when nothing is lost on the way", (id, habit) => {
    const exercise = shippedExercise(id);
    const marks = marksByHabit(exercise, habit, 5);
    expect(marks.map(({ point }) => point)).toEqual(exercise.task.marks);
    const { habits } = gradeMarks(goesOnFromOwn(exercise), { format: "plasterline.marks/1", exercise: id, marks });
    expect(habits.map((claim) => claim.id)).toContain(habit);
  });

  it("show none where they are true", () => {
    const exercise = shippedExercise("raking-wall");
    const marks = marksByHabit(exercise, null, 5);
    expect(
      gradeMarks(goesOnFromOwn(exercise), { format: "plasterline.marks/1", exercise: exercise.id, marks }).habits,
    ).toEqual([]);
  });

  it.each([
    // Walls, joined at their corners.
    ["raking-wall", 0],
    // Points on the floor that no line joins.
    ["points-on-the-floor", 6],
    // Read back: every point a cross on the plan.
    ["room-from-its-picture", 6],
  ])("of %s are drawn as lines, and as a cross where no line ends", (id, crosses) => {
    const sheet = layOutPracticeSheet(shippedExercise(id), { paper: "letter" });
    if (!sheet) throw new Error("The sheet does not fit.");
    const marks = marksByHabit(sheet.exercise, null, 5);
    const drawn = drawnLines(sheet, marks);
    expect(drawn.crosses).toHaveLength(crosses);
    expect(drawn.places.size).toBe(marks.length);
    for (const place of drawn.places.values()) {
      const ends = drawn.lines.flatMap(({ from, to }) => [from, to]);
      const reached = [...ends, ...drawn.crosses].filter(([x, y]) => Math.hypot(x - place[0], y - place[1]) < 0.5);
      expect(reached.length).toBeGreaterThan(0);
    }
  });
});
