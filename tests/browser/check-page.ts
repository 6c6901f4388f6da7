import AxeBuilder from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";
import type { Exercise } from "@/lib/exercise/exercise";
import { marksByHabit } from "../photo/photographer/marks-by-habit";
import { type Photograph, takePhotograph } from "../photo/photographer/take-photograph";
import { courseExercise } from "./drive";

export const PHONE = { width: 390, height: 844 };
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const SHOTS = process.env.PLASTERLINE_SHOTS;
const HABIT = "plan-depth";
const SEED = 7;

export const exercise = courseExercise("the-tide-office");
const shots = new Map<string, Promise<Photograph>>();

/** One photograph for all tests that want it: developing takes a while. */
export function photograph(
  its: Exercise,
  name: string,
  conditions: Partial<Parameters<typeof takePhotograph>[0]> = {},
) {
  const key = `${its.id} ${name}`;
  const shot =
    shots.get(key) ??
    takePhotograph({
      exercise: its,
      paper: "letter",
      marks: marksByHabit(its, HABIT, SEED),
      seed: SEED,
      ...conditions,
    });
  shots.set(key, shot);
  return shot;
}

export async function openCheck(page: Page, address = "/check") {
  await page.goto(address);
  await page
    .getByText("Or drop one anywhere")
    .or(page.getByText("Take a photograph"))
    .or(page.getByText("Open the camera"))
    .first()
    .waitFor();
}

export async function giveFile(page: Page, buffer: Buffer, name = "sheet.jpg", mimeType = "image/jpeg") {
  await page.getByLabel("Choose a photograph").setInputFiles({ name, mimeType, buffer });
}

export async function expectSound(page: Page, name: string) {
  if (SHOTS) await page.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: true });
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(
    violations.map(({ id, nodes }) => `${name}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`),
  ).toEqual([]);
  const tooWide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(tooWide).toBeLessThanOrEqual(0);
}

/** Settles what is still open: a doubtful point is right, one that was not found is not drawn. Then confirms. */
export async function confirmAll(page: Page) {
  const main = page.locator(".check-side-foot .press[data-weight=main]");
  for (let i = 0; i < exercise.task.marks.length; i++) {
    if ((await main.textContent())?.startsWith("That is it")) break;
    await main.click();
    const right = page.getByRole("button", { name: "It is right" });
    await ((await right.count()) > 0 ? right : page.getByRole("button", { name: "Not drawn" })).click();
  }
  await main.click();
}

/** Where a handle stands on the page. */
export async function handleAt(page: Page, name: string): Promise<{ x: number; y: number }> {
  const box = await page.locator(`[data-handle="${name}"] .handle-ring`).boundingBox();
  if (!box) throw new Error(`No handle ${name} is shown.`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

export async function drag(page: Page, name: string, to: { x: number; y: number }) {
  const from = await handleAt(page, name);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2);
  await page.mouse.move(to.x, to.y);
  await page.mouse.up();
}
