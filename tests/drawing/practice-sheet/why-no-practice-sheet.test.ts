import { describe, expect, it } from "vitest";
import { whyNoPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import { orderMarks } from "@/lib/exercise/order-marks";
import { namePoints } from "@/lib/plan/name-points";
import { courseExercise } from "../../browser/drive";

const ROOM = courseExercise("customs-hall");

/** The same room with a hall of columns, and every point asked that the picture shows. */
function hallOfColumns(): Exercise {
  const { stage, viewer, task } = ROOM;
  const columns = Array.from({ length: 40 }, (_, i) => ({
    id: `K${i + 1}`,
    at: [-2 + (i % 8) * 0.5, 1 + Math.floor(i / 8) * 0.5] as const,
    diameter: 0.1,
    height: 2,
    base: 0,
  }));
  const plan = { ...ROOM.plan, columns };
  const marks = orderMarks(namePoints(plan, stage), { stage, viewer, given: [], kind: task.kind });
  return { ...ROOM, plan, task: { ...task, marks, given: [] } };
}

describe("why there is no practice sheet", () => {
  it("has nothing to say where there is one", () => {
    expect(whyNoPracticeSheet(ROOM, "letter")).toBeNull();
  });

  it("tells of a stage too large for the paper at any scale", () => {
    const vast = { ...ROOM, stage: { ...ROOM.stage, opening: { ...ROOM.stage.opening, width: 400 } } };
    expect(whyNoPracticeSheet(vast, "letter")).toBe("This stage is too large for this paper at any scale.");
  });

  it("tells of more points than there is room for beside the drawings, and how many they are", () => {
    const many = hallOfColumns();
    expect(whyNoPracticeSheet(many, "letter")).toBe(
      `The ${many.task.marks.length} points that are asked have no room beside the drawings on this paper. Take a larger one, or ask for fewer.`,
    );
  });
});
