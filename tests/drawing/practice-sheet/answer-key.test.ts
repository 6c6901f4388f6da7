import { describe, expect, it } from "vitest";
import type { PaperPage } from "@/lib/drawing/paper/paper-page";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { practiceSheetPages } from "@/lib/drawing/practice-sheet/practice-sheet-pages";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { SHIPPED } from "@/tests/exercises/shipped";
import { shippedExercise } from "./exercises";

const letterings = (page: PaperPage) =>
  page.layers.flatMap(({ list }) => list.flatMap((item) => (item.kind === "lettering" ? [item.text] : [])));

/** The middles of the red crosses on a page, millimetres of paper right of and above a place of it. */
function crosses(page: PaperPage, [x, y]: readonly [number, number]): Map<string, readonly [number, number]> {
  const found = new Map<string, readonly [number, number]>();
  for (const { list, scaleRatio, at } of page.layers)
    for (const item of list) {
      const name = /^key\.(.+)\.[01]$/.exec(item.id)?.[1];
      if (item.kind !== "stroke" || item.pencil !== "red" || !name) continue;
      const [a, b] = item.points as unknown as readonly [readonly [number, number], readonly [number, number]];
      const mm = 1000 / scaleRatio;
      const right = at[0] + ((a[0] + b[0]) / 2) * mm - x;
      const up = y - (at[1] - ((a[1] + b[1]) / 2) * mm);
      found.set(name, [right, up]);
    }
  return found;
}

type Place = readonly [number, number];

/** How far a place lies from the first stretch of a line, or from the middle of a ring, metres. */
function fromLine([x, y]: Place, points: readonly Place[]): number {
  const [[ax, ay], [bx, by]] = [points[0] as Place, points[1] as Place];
  if (points.length > 2) {
    const middle = (k: 0 | 1) => points.reduce((sum, point) => sum + point[k], 0) / points.length;
    return Math.hypot(middle(0) - x, middle(1) - y);
  }
  const [ux, uy] = [bx - ax, by - ay];
  const t = Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy)));
  return Math.hypot(ax + t * ux - x, ay + t * uy - y);
}

describe("the answer key", () => {
  it("has the degrees that are asked for", () => {
    const exercise = shippedExercise("the-tide-office");
    const count = (key: false | "points" | "all") => practiceSheetPages(exercise, { paper: "letter", key }).length;
    expect([count(false), count("points"), count("all")]).toEqual([1, 2, 4]);
  });

  it("shows every asked point where similar triangles put it", () => {
    // s = D / (D + y): the foot of B at (-9 ft, 14 ft) seen from 36 ft, 9 ft up, is 9 s to the left and 9 (1 - s) up.
    const exercise = shippedExercise("the-tide-office");
    const sheet = layOutPracticeSheet(exercise, { paper: "letter" });
    const [, page] = practiceSheetPages(exercise, { paper: "letter", key: "points" });
    if (!sheet || !page) throw new Error("The sheet does not fit.");
    const found = crosses(page, sheet.layout.picture.at);
    expect(found.size).toBe(16);
    const s = 36 / 50;
    const eighth = 25.4 / 8;
    expect(found.get("B.foot")?.[0]).toBeCloseTo(-9 * s * eighth, 6);
    expect(found.get("B.foot")?.[1]).toBeCloseTo(9 * (1 - s) * eighth, 6);
    expect(letterings(page)).toContain("The foot of B: 20.6 left, 8.0 up. (1.1)");
  });

  it("has tolerances that follow the printed scale", () => {
    const exercise = shippedExercise("the-tide-office");
    const near = (paper: "letter" | "a3") => {
      const [, page] = practiceSheetPages(exercise, { paper, key: "points" });
      const line = page && letterings(page).find((text) => text.startsWith("The top of B"));
      return Number(/\((\d+\.\d)\)/.exec(line ?? "")?.[1]);
    };
    expect(near("a3")).toBeGreaterThan(near("letter"));
  });

  it("shows what is read back on the plan", () => {
    const exercise = shippedExercise("room-from-its-picture");
    const sheet = layOutPracticeSheet(exercise, { paper: "letter" });
    const [, page] = practiceSheetPages(exercise, { paper: "letter", key: "points" });
    if (!sheet || !page) throw new Error("The sheet does not fit.");
    const found = crosses(page, sheet.layout.plan.at);
    // C stands 8 ft stage right and 15 ft upstage.
    expect(found.get("C.foot")?.[0]).toBeCloseTo((-8 * 25.4) / 8, 6);
    expect(found.get("C.foot")?.[1]).toBeCloseTo((15 * 25.4) / 8, 6);
  });

  it("tells no answer on the page that is drawn on", () => {
    for (const { exercise } of SHIPPED) {
      const [page] = practiceSheetPages(exercise, { paper: "a4" });
      const items = page?.layers.flatMap(({ list }) => list) ?? [];
      expect(items.filter(({ pencil }) => pencil === "red")).toEqual([]);
      if (exercise.task.kind === "picture-to-plan") {
        const asked = new Set(exercise.task.marks.map((name) => name.split(".")[0]));
        expect(page?.layers[4]?.at).toEqual(layOutPracticeSheet(exercise, { paper: "a4" })?.layout.plan.at);
        const plan = page?.layers[4]?.list ?? [];
        expect(plan.filter(({ id }) => asked.has(id.split(".")[2] ?? "") && id.startsWith("plan."))).toEqual([]);
      }
    }
  });

  it.each(["raking-wall", "the-tide-office", "four-risers", "room-from-its-picture", "raked-stage"])(
    "of %s has a construction line in blue through every point",
    (id) => {
      const exercise = shippedExercise(id);
      const [, page] = practiceSheetPages(exercise, { paper: "a4", key: "constructions" });
      const blue = page?.layers.flatMap(({ list }) => list).filter(({ pencil }) => pencil === "blue") ?? [];
      const points = exercisePoints(exercise);
      for (const name of exercise.task.marks) {
        const at = points.get(name)?.picture;
        if (!at) throw new Error(`${name} is not seen.`);
        const away = blue.map((item) => (item.kind === "stroke" ? fromLine(at, item.points) : Infinity));
        expect(Math.min(...away)).toBeLessThan(1e-6);
      }
    },
  );

  it("is finished with the picture that the set makes, and no words that are left over", () => {
    const [, page] = practiceSheetPages(shippedExercise("the-tide-office"), { paper: "letter", key: "finished" });
    const ids = page?.layers.flatMap(({ list }) => list.map(({ id }) => id)) ?? [];
    expect(ids.some((id) => id.startsWith("finished."))).toBe(true);
    expect(ids.filter((id) => id.startsWith("sheet.task"))).toEqual([]);
  });
});
