import { expect, test } from "@playwright/test";
import { courseExercise, openExercise, stepHeading, toPage, truePlaces } from "./drive";

const exercise = courseExercise("points-on-the-floor");
const places = truePlaces(exercise);

test("a reload loses neither marks, nor the mark on hand, nor a correction on view, nor blue lines", async ({
  page,
}) => {
  await openExercise(page, exercise.id);
  const first = await toPage(page, places[0] ?? [0, 0]);
  await page.mouse.click(first.x, first.y);
  await page.reload();
  await expect(page.locator("[data-pending]")).toBeAttached();
  await page.getByRole("button", { name: "Set it down" }).click();
  await page.reload();
  await expect(page.locator("[data-correction]")).toBeAttached();
  await page.getByRole("button", { name: /^Next:/ }).click();
  await page.getByRole("button", { name: "Straightedge" }).click();
  await page.getByRole("button", { name: "Draw this line" }).click();
  await page.reload();
  await expect(page.locator("[data-blue]")).toHaveCount(1);
  await expect(page.getByText(`Step 2 of ${places.length}`, { exact: true })).toBeVisible();
});

test("a killed tab loses nothing", async ({ context, page }) => {
  await openExercise(page, exercise.id);
  const first = await toPage(page, places[0] ?? [0, 0]);
  await page.mouse.click(first.x, first.y);
  await page.getByRole("button", { name: "Set it down" }).click();
  await page.getByRole("button", { name: /^Next:/ }).click();
  const second = await toPage(page, places[1] ?? [0, 0]);
  await page.mouse.click(second.x, second.y);
  // The renderer dies without a word to the page.
  const crashed = page.waitForEvent("crash");
  const devtools = await context.newCDPSession(page);
  devtools.send("Page.crash").catch(() => undefined);
  await crashed;
  await page.close();

  const again = await context.newPage();
  await openExercise(again, exercise.id);
  await expect(again.getByText(`Step 2 of ${places.length}`, { exact: true })).toBeVisible();
  await expect(again.locator("[data-pending]")).toBeAttached();
  await expect(stepHeading(again)).not.toContainText(":");
});

test("a copy of the work comes back after it was rubbed out", async ({ page }) => {
  await openExercise(page, exercise.id);
  const first = await toPage(page, places[0] ?? [0, 0]);
  await page.mouse.click(first.x, first.y);
  await page.getByRole("button", { name: "Set it down" }).click();
  await page.goto("/");
  await expect(page.getByText("begun: 1 set down")).toBeVisible();
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a copy" }).click();
  const file = await (await saving).path();

  await page.getByRole("button", { name: "Rub it all out" }).click();
  await page.getByRole("button", { name: "Yes, rub out everything" }).click();
  await expect(page.getByText("begun: 1 set down")).toHaveCount(0);
  await page.getByLabel("The copy to bring back").setInputFiles(file);
  await expect(page.getByText("begun: 1 set down")).toBeVisible();

  await page.getByLabel("The copy to bring back").setInputFiles({
    name: "shopping.json",
    mimeType: "application/json",
    buffer: Buffer.from('{"milk": 2}'),
  });
  await expect(page.getByText("This file is not a copy of your work")).toBeVisible();
});

test("where storage is blocked the exercise can be done all the same, and the page says so", async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("blocked", "SecurityError");
      },
    });
  });
  await openExercise(page, exercise.id);
  await expect(page.getByText("This browser does not let the page keep your work")).toBeVisible();
  const first = await toPage(page, places[0] ?? [0, 0]);
  await page.mouse.click(first.x, first.y);
  await page.getByRole("button", { name: "Set it down" }).click();
  await expect(page.locator(".notes-where")).toContainText("Right:");
});
