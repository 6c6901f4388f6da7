import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Memory, rememberIn } from "@/app/draft/layers/remember";
import { pictureLayers } from "@/app/draft/picture/picture-layers";
import { planLayers } from "@/app/draft/plan/plan-layers";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { draftFromExercise } from "@/lib/draft/new-draft";
import type { DisplayItem } from "@/lib/drawing/display-list";
import { drawEdges, OWN_LINES } from "@/lib/drawing/draw-edges";
import { drawPlan } from "@/lib/drawing/draw-plan";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { readExercise } from "@/lib/exercise/read-exercise";
import { listEdges } from "@/lib/plan/list-edges";
import type { PicturePoint } from "@/lib/stage/frame";

function courseExercise(path: string) {
  const reading = readExercise(readFileSync(`exercises/${path}.json`, "utf8"));
  if (!reading.ok) throw new Error(path);
  return reading.exercise;
}

const SETS = [
  "sets/04-the-tide-office",
  "sets/06-the-upper-room",
  "levels/05-the-gallery",
  "stage/04-legs-and-borders",
];

const strokes = (items: readonly DisplayItem[]) =>
  new Map(items.filter(({ kind }) => kind === "stroke").map((item) => [item.id, item]));

describe("the drawings in layers", () => {
  it.each(SETS)("%s: the plan has the very lines of the plan that exercises are printed with", (path) => {
    const exercise = courseExercise(path);
    const layered = strokes(planLayers(exercise, rememberIn(new Map())).flatMap(({ list }) => list));
    expect(layered).toEqual(strokes(drawPlan(exercise)));
  });

  it.each(SETS)("%s: the picture has every line that the whole set has", (path) => {
    const exercise = courseExercise(path);
    const points = exercisePoints(exercise);
    const places = new Map<string, PicturePoint>();
    for (const [name, { picture }] of points) if (picture) places.set(name, picture);
    const whole = drawEdges(listEdges(exercise.plan, points), places, OWN_LINES, { plan: exercise.plan, points });
    const layered = pictureLayers(exercise, rememberIn(new Map())).flatMap(({ list }) => list);
    // Where walls of different heights meet, a corner's top has a name for each of them; by itself each wall has one.
    const drawn = new Set(layered.map((item) => (item.kind === "stroke" ? JSON.stringify(item.points) : "")));
    const missing = whole.filter(({ points: line }) => !drawn.has(JSON.stringify(line)));
    expect(missing.map(({ id }) => id)).toEqual([]);
  });

  it("draws anew only what hangs on a corner that moved", () => {
    const draft = draftFromExercise(courseExercise("sets/04-the-tide-office"));
    const memory: Memory = new Map();
    const before = planLayers(draft.exercise, rememberIn(memory));
    const at = draft.exercise.plan.corners.get("B") ?? [0, 0];
    const edited = applyEdit(draft, { edit: "move-corner", id: "B", to: [at[0] - 0.1, at[1]] });
    if (!edited.ok) throw new Error(edited.say);
    const after = planLayers(edited.draft.exercise, rememberIn(new Map(), memory));
    const stood = new Set(before.map(({ list }) => list));
    const anew = after.filter(({ list }) => !stood.has(list)).map(({ key }) => key);
    const touched = draft.exercise.plan.walls.filter(({ from, to }) => from === "B" || to === "B");
    expect(anew).toEqual(expect.arrayContaining(touched.map(({ id }) => `wall.${id}`)));
    const walls = anew.filter((key) => key.startsWith("wall."));
    // The walls at B, and their own neighbours, whose mitres lean on them.
    expect(walls.length).toBeLessThanOrEqual(touched.length + 2);
    expect(anew).not.toContain("stage");
  });
});
