import { join } from "node:path";
import type { Page } from "@playwright/test";
import { exercisePoints } from "../exercise/exercise-points";
import { loadExercises } from "../exercise/load-exercises";
import type { DrawnClass } from "./photograph-class";

const EXERCISE = "alcove";
/** How far a student's marks are off, metres of the picture: near enough to look like one's, far enough to be corrected. */
const OFF_M = 0.14;

/** Long enough for a demonstration's controls to go. */
const CONTROLS_GO_MS = 4000;
/** Long enough for one window to hear from another. */
const ANSWER_MS = 800;

/** A screen of the app, and how a page comes to show it; some are of a class that has drawn already. */
export type Screen = { readonly name: string; readonly show: (page: Page, drawn: DrawnClass) => Promise<void> };

export const SCREENS: readonly Screen[] = [
  { name: "home", show: (page) => open(page, "/") },
  { name: "practise-1-empty", show: (page) => openSheet(page) },
  { name: "practise-2-placed", show: (page) => placeMarks(page, 3, "placed") },
  { name: "practise-3-corrected", show: (page) => placeMarks(page, 4, "corrected") },
  { name: "practise-4-straightedge", show: layLines },
  { name: "practise-5-closer", show: comeCloser },
  { name: "practise-6-given", show: (page) => openSheet(page, "pair-of-windows") },
  { name: "practise-7-metric", show: (page) => openSheet(page, "arch-through-the-back") },
  { name: "practise-8-hint", show: takeHints },
  { name: "practise-9-how", show: showHow },
  { name: "practise-a-set", show: (page) => openSheet(page, "customs-hall") },
  { name: "reading-1-empty", show: (page) => openSheet(page, "room-from-its-picture") },
  { name: "reading-2-corrected", show: readBack },
  { name: "result", show: finish },
  { name: "result-finished", show: finishAndCompare },
  { name: "record", show: drawOftenThenRecord },
  { name: "demonstrate-1-line", show: (page) => stepOn(page, "the-tide-office", 30) },
  { name: "demonstrate-2-finished", show: (page) => stepOn(page, "customs-hall", "last") },
  { name: "demonstrate-3-notes", show: readNotes },
  { name: "sheet", show: (page) => open(page, `/sheet/${EXERCISE}`) },
  { name: "unknown-exercise", show: (page) => open(page, "/practise/no-such-sheet") },
];

async function open(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.waitForLoadState("networkidle");
}

async function openSheet(page: Page, id: string = EXERCISE): Promise<void> {
  await open(page, `/practise/${id}`);
  await page.locator(".sheet[data-opened=true]").waitFor();
}

async function placeMarks(page: Page, count: number, last: "placed" | "corrected" | "set down"): Promise<void> {
  await openSheet(page);
  await markSheet(page, await studentPlaces(1), count, last);
}

async function markSheet(
  page: Page,
  places: readonly (readonly [number, number])[],
  count: number,
  last: "placed" | "corrected" | "set down",
): Promise<void> {
  for (let i = 0; i < count; i++) {
    const at = await onPage(page, places[i % places.length] ?? [0, 0]);
    await page.mouse.click(at.x, at.y);
    if (i === count - 1 && last === "placed") return;
    await page.getByRole("button", { name: "Set it down" }).click();
    if (i === count - 1 && last === "corrected") return;
    await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
  }
}

/** The true places, each put off in its own direction, by so many times a little. */
async function studentPlaces(times: number): Promise<readonly (readonly [number, number])[]> {
  const course = await loadExercises(join(process.cwd(), "exercises"));
  const exercise = course.flatMap((entry) => (entry.ok ? [entry.exercise] : [])).find(({ id }) => id === EXERCISE);
  if (!exercise) throw new Error(`The course has no exercise ${EXERCISE}.`);
  const points = exercisePoints(exercise);
  return exercise.task.marks.map((name, i) => {
    const [X = 0, Z = 0] = points.get(name)?.picture ?? [];
    return [X + times * OFF_M * Math.sin(i * 2.3), Z + times * OFF_M * 0.6 * Math.cos(i * 1.7 + times)];
  });
}

/** Picture metres to pixels of the page, by the matrix the drawing is shown with. */
async function onPage(page: Page, [X, Z]: readonly [number, number]): Promise<{ x: number; y: number }> {
  const shown = await page.evaluate(() => {
    const group = document.querySelector("#picture-drawing");
    const box = group?.closest("svg")?.getBoundingClientRect();
    const matrix = group
      ?.getAttribute("transform")
      ?.match(/-?[\d.]+(?:e-?\d+)?/g)
      ?.map(Number);
    return { left: box?.left ?? 0, top: box?.top ?? 0, ratio: Number(group?.getAttribute("data-ratio")), matrix };
  });
  const [k = 1, , , , ox = 0, oy = 0] = shown.matrix ?? [];
  const mm = 1000 / shown.ratio;
  return { x: shown.left + ox + X * mm * k, y: shown.top + oy - Z * mm * k };
}

async function layLines(page: Page): Promise<void> {
  await placeMarks(page, 3, "set down");
  await page.getByRole("button", { name: "Straightedge" }).click();
  for (const through of [`the rule's 5'-0" stage right`, "the opening's foot, stage left"]) {
    await page.getByLabel("From").selectOption({ label: "the CVP" });
    await page.getByLabel("Through").selectOption({ label: through });
    await page.getByRole("button", { name: "Draw this line" }).click();
  }
}

async function takeHints(page: Page): Promise<void> {
  await openSheet(page);
  await page.getByRole("button", { name: /^Hint: the method/ }).click();
}

async function showHow(page: Page): Promise<void> {
  await placeMarks(page, 4, "corrected");
  await page.getByRole("button", { name: "Show how" }).click();
  await page.locator(".construction-notes").waitFor();
  await page.keyboard.press("End");
}

async function readBack(page: Page): Promise<void> {
  await openSheet(page, "room-from-its-picture");
  const pane = await page.locator(".plan-place .pane").boundingBox();
  if (!pane) throw new Error("The plan has no place on the page.");
  await page.mouse.click(pane.x + pane.width * 0.3, pane.y + pane.height * 0.6);
  await page.getByRole("button", { name: "Set it down" }).click();
}

async function comeCloser(page: Page): Promise<void> {
  await placeMarks(page, 3, "placed");
  await page.getByRole("button", { name: "Magnifier" }).click();
  for (let i = 0; i < 2; i++) await page.getByRole("button", { name: "Closer" }).click();
}

async function finish(page: Page): Promise<void> {
  await placeMarks(page, 12, "set down");
  await page.getByRole("heading", { name: /^Score/ }).waitFor();
}

async function finishAndCompare(page: Page): Promise<void> {
  await finish(page);
  await page.locator("section.finished").scrollIntoViewIfNeeded();
  await page.getByRole("slider").waitFor();
}

/** So many steps of a demonstration on, and its controls gone. */
async function stepOn(page: Page, id: string, steps: number | "last"): Promise<void> {
  await open(page, `/demonstrate/${id}`);
  if (steps === "last") await page.keyboard.press("End");
  else for (let i = 0; i < steps; i++) await page.keyboard.press("PageDown");
  await page.waitForTimeout(CONTROLS_GO_MS);
}

/** The teacher's window beside a demonstration that is under way in the same browser. */
async function readNotes(page: Page): Promise<void> {
  await stepOn(await page.context().newPage(), EXERCISE, 12);
  await open(page, `/demonstrate/${EXERCISE}/notes`);
  await page.waitForTimeout(ANSWER_MS);
}

/** Several goes at one sheet, each a little better, and then the record of them. */
async function drawOftenThenRecord(page: Page): Promise<void> {
  await openSheet(page);
  for (const times of [3, 2.4, 2.6, 1.5, 1]) {
    await markSheet(page, await studentPlaces(times), 12, "set down");
    await page.getByRole("button", { name: "Draw it again" }).click();
  }
  await open(page, "/record");
}
