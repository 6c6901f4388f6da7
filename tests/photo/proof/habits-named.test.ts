import { beforeAll, describe, expect, it, vi } from "vitest";
import { loadSheetTools } from "@/lib/cli/photo/load-sheet-tools";
import { gradeMarks } from "@/lib/grading/grade-marks";
import type { SheetTools } from "@/lib/photo/straighten/read-sheet";
import type { Paper } from "@/lib/sheet/paper-size";
import { shippedExercise } from "@/tests/drawing/practice-sheet/exercises";
import { conditionsBySeed } from "../photographer/conditions";
import { goesOnFromOwn, marksByHabit } from "../photographer/marks-by-habit";
import { marksRead } from "./marks-read";
import { tryShot } from "./try-shot";

/** From the photograph's file to the habit's name, milliseconds; a busy computer takes its time. */
vi.setConfig({ testTimeout: 60_000 });

let tools: SheetTools;
beforeAll(async () => {
  tools = await loadSheetTools();
});

describe("a drawing made by a known habit, on a printed sheet in a photograph", () => {
  it.each<[exercise: string, habit: string, paper: Paper, faint: boolean, flat: boolean]>([
    ["raking-wall", "square-wall", "a4", false, true],
    ["the-tide-office", "plan-depth", "letter", true, true],
    ["drying-loft", "level-top", "letter", false, false],
    ["pair-of-windows", "even-split", "letter", false, true],
    ["nine-lamps", "flat-floor", "letter", true, false],
    ["table-square-on", "from-back-wall", "letter", false, true],
    ["room-from-its-picture", "too-shallow", "letter", false, true],
  ])("of %s by %s, on %s, comes back with the habit named", async (id, habit, paper, faint, flat) => {
    const exercise = shippedExercise(id);
    const seed = 7 + id.length;
    const marks = marksByHabit(exercise, habit, seed);
    const conditions = conditionsBySeed(seed, { megapixels: 6, faint, flat });
    const kind = flat ? (faint ? "flat, faint pencil" : "flat, clear pencil") : "curled";
    const { sheet, reading, truth } = await tryShot(tools, {
      seed,
      kind,
      habit,
      shot: { exercise, paper, marks, seed, ...conditions },
    });
    expect(sheet).toMatchObject({ kind: "straight", code: { exercise: id } });
    const grade = gradeMarks(
      goesOnFromOwn(exercise),
      marksRead(truth.sheet, reading ?? { lines: [], corners: [], points: [] }),
    );
    expect(grade.habits.map((claim) => claim.id)).toContain(habit);
  });

  it.each(["raking-wall", "the-tide-office"])("of %s by none is said to show none", async (id) => {
    const exercise = shippedExercise(id);
    const marks = marksByHabit(exercise, null, 3);
    const conditions = conditionsBySeed(3, { megapixels: 6, faint: false, flat: true });
    const { reading, truth } = await tryShot(tools, {
      seed: 3,
      kind: "flat, clear pencil",
      habit: null,
      shot: { exercise, paper: "letter", marks, seed: 3, ...conditions },
    });
    const grade = gradeMarks(
      goesOnFromOwn(exercise),
      marksRead(truth.sheet, reading ?? { lines: [], corners: [], points: [] }),
    );
    expect(grade.marks.length).toBeGreaterThanOrEqual(0.9 * exercise.task.marks.length);
    expect(grade.habits).toEqual([]);
  });
});
