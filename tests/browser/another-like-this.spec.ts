import { expect, type Page, test } from "@playwright/test";
import { readExerciseJson } from "@/lib/exercise/read-exercise";
import { generateExercise } from "@/lib/generator/generate-exercise";
import { courseExercise, openExercise, type Place, planPlaces, toPage, truePlaces } from "./drive";

const VARIANT = /\/practise\/([a-z]+)-([1-5])-(\d{1,6})$/;

async function setDown(page: Page, places: readonly Place[], drawing: "picture" | "plan") {
  for (const place of places) {
    const { x, y } = await toPage(page, place, drawing);
    await page.mouse.click(x, y);
    await page.getByRole("button", { name: "Set it down" }).click();
    await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
  }
}

/** The exercise of an address like /practise/walls-2-48213, by the engine. */
function exerciseAt(address: string) {
  const [, unit = "", level, seed] = VARIANT.exec(address) ?? [];
  const reading = readExerciseJson(
    generateExercise({ unit: unit as "walls", level: Number(level), seed: Number(seed) }),
  );
  if (!reading.ok) throw new Error(`${address} is not a generated exercise.`);
  return reading.exercise;
}

test("from a result to another like it, to a perfect 100, and to yet another or back to the course", async ({
  page,
}) => {
  const first = courseExercise("square-and-parallel");
  await openExercise(page, first.id);
  await setDown(page, truePlaces(first), "picture");
  await page.getByRole("button", { name: "Another like this" }).click();
  await page.waitForURL(VARIANT);
  const address = page.url();
  const another = exerciseAt(address);
  expect([another.unit, another.level]).toEqual([first.unit, first.level]);
  await page.locator(".sheet[data-opened=true]").waitFor();
  await expect(page.getByRole("heading", { level: 1, name: another.title })).toBeVisible();
  await expect(page.locator(".title-block")).toContainText(`Variant${another.id.split("-").at(-1)}`);
  await setDown(page, truePlaces(another), "picture");
  await expect(page.getByRole("heading", { name: "Score 100 of 100" })).toBeVisible();
  await page.getByRole("button", { name: "Another like this" }).click();
  await page.waitForURL((url) => VARIANT.test(url.href) && url.href !== address);
  await page.goBack();
  await expect(page.getByRole("heading", { name: "Score 100 of 100" })).toBeVisible();
  await page.getByRole("link", { name: "Back to the course" }).click();
  await expect(page).toHaveURL(/\/$/);
});

test("an address shared is the same sheet, and the work on it is kept", async ({ page, browser }) => {
  const shared = "/practise/reading-2-48213";
  const exercise = exerciseAt(shared);
  const [place = [0, 0] as const] = planPlaces(exercise);
  await openExercise(page, exercise.id);
  await setDown(page, [place], "plan");
  await page.reload();
  await page.locator(".sheet[data-opened=true]").waitFor();
  await expect(page.getByText(`Step 2 of ${exercise.task.marks.length}`, { exact: true })).toBeVisible();
  const other = await browser.newContext();
  const theirs = await other.newPage();
  await theirs.goto(new URL(shared, page.url()).href);
  await expect(theirs.getByRole("heading", { level: 1, name: exercise.title })).toBeVisible();
  await other.close();
});

test("an address that only looks like a variant's is an unknown sheet", async ({ page }) => {
  for (const id of [
    "walls-6-1",
    "ceilings-2-1",
    "walls-2-007",
    "walls-2-1.5",
    "walls-2-9999999999999999",
    "walls-2-",
  ]) {
    const answer = await page.goto(`/practise/${id}`);
    expect(answer?.status(), id).toBe(404);
    await expect(page.getByRole("heading", { name: "There is no such sheet" })).toBeVisible();
  }
});
