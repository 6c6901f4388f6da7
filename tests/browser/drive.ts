import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { readExercise } from "@/lib/exercise/read-exercise";

export type Place = readonly [number, number];

/** An exercise of the course by its id, read by the engine itself. */
export function courseExercise(id: string): Exercise {
  const folder = join(process.cwd(), "exercises");
  for (const file of readdirSync(folder, { recursive: true }) as string[]) {
    if (!file.endsWith(".json")) continue;
    const reading = readExercise(readFileSync(join(folder, file), "utf8"));
    if (reading.ok && reading.exercise.id === id) return reading.exercise;
  }
  throw new Error(`The course has no exercise ${id}.`);
}

/** Where each asked point truly lies in the picture, by the engine. */
export function truePlaces(exercise: Exercise): Place[] {
  const points = exercisePoints(exercise);
  return exercise.task.marks.map((name) => {
    const at = points.get(name)?.picture;
    if (!at) throw new Error(`${name} is not seen.`);
    return [at[0], at[1]];
  });
}

/** Where each asked point stands on the plan, by the engine. */
export function planPlaces(exercise: Exercise): Place[] {
  const points = exercisePoints(exercise);
  return exercise.task.marks.map((name) => {
    const [x, y] = points.get(name)?.at ?? [];
    if (x === undefined || y === undefined) throw new Error(`${name} names no point.`);
    return [x, y];
  });
}

/** Metres of a drawing to pixels of the page, by the matrix the drawing is shown with. */
export async function toPage(
  page: Page,
  [X, Z]: Place,
  drawing: "picture" | "plan" | "brought" = "picture",
): Promise<{ x: number; y: number }> {
  const shown = await page.evaluate((id) => {
    const group = document.querySelector(id);
    const box = group?.closest("svg")?.getBoundingClientRect();
    const matrix = group
      ?.getAttribute("transform")
      ?.match(/-?[\d.]+(?:e-?\d+)?/g)
      ?.map(Number);
    const ratio = Number(group?.getAttribute("data-ratio"));
    return { ratio, left: box?.left ?? 0, top: box?.top ?? 0, matrix: matrix ?? [] };
  }, `#${drawing}-drawing`);
  const [k = 1, , , , ox = 0, oy = 0] = shown.matrix;
  const mm = 1000 / shown.ratio;
  return { x: shown.left + ox + X * mm * k, y: shown.top + oy - Z * mm * k };
}

/** Opens an exercise with nothing kept, and waits until its drawing is laid out. */
export async function openExercise(page: Page, id: string): Promise<void> {
  await page.goto(`/practise/${id}`);
  await page.locator("#picture-drawing[transform]").waitFor();
  await page.locator(".sheet[data-opened=true]").waitFor();
}

/** The heading that names the point on hand. */
export function stepHeading(page: Page) {
  return page.locator(".notes-title");
}
