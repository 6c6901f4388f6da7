import { expect, type Page, test } from "@playwright/test";
import { courseExercise, openExercise, toPage, truePlaces } from "./drive";
import { pendingPlace, steer, tabTo } from "./steer";

async function expectPerfect(page: Page, count: number) {
  await expect(page.getByRole("heading", { name: "Score 100 of 100" })).toBeVisible();
  await expect(page.getByText(`${count} of ${count} marks lie within what a hand is allowed.`)).toBeVisible();
  await expect(page.getByRole("table").getByRole("row")).toHaveCount(count + 1);
}

test("a perfect run by mouse scores 100, from the home page on", async ({ page }) => {
  const exercise = courseExercise("reading-the-frame");
  const places = truePlaces(exercise);
  await page.goto("/");
  await page.getByRole("link", { name: exercise.title, exact: true }).click();
  await page.locator(".sheet[data-opened=true]").waitFor();
  for (const place of places) {
    const { x, y } = await toPage(page, place);
    await page.mouse.click(x, y);
    await page.getByRole("button", { name: "Set it down" }).click();
    await expect(page.locator(".notes-where")).toContainText("Right:");
    await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
  }
  await expectPerfect(page, places.length);
  await page.getByRole("link", { name: "Plasterline" }).click();
  await expect(page.getByText("best 100, last 100")).toBeVisible();
});

test("a perfect run by keys alone scores 100", async ({ page }) => {
  const exercise = courseExercise("square-and-parallel");
  const places = truePlaces(exercise);
  await openExercise(page, exercise.id);
  const picture = page.getByRole("application", { name: /^Picture/ });
  for (const place of places) {
    await tabTo(page, () => picture.evaluate((element) => element === document.activeElement));
    await page.keyboard.press("ArrowUp");
    const start = await pendingPlace(page, exercise.id);
    await steer(page, start, place, exercise.scaleRatio);
    await page.keyboard.press("Enter");
    await expect(page.locator(".notes-where")).toContainText("Right:");
    // The way on has the focus already.
    await page.keyboard.press("Enter");
  }
  await expectPerfect(page, places.length);
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("a perfect run by touch scores 100", async ({ page }) => {
    const exercise = courseExercise("alcove");
    const places = truePlaces(exercise);
    await openExercise(page, exercise.id);
    for (const place of places) {
      const { x, y } = await toPage(page, place);
      await page.touchscreen.tap(x, y);
      await page.getByRole("button", { name: "Set it down" }).tap();
      await expect(page.locator(".notes-where")).toContainText("Right:");
      await page.getByRole("button", { name: /^(Next:|See the whole)/ }).tap();
    }
    await expectPerfect(page, places.length);
  });
});
