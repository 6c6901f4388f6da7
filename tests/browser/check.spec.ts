import { expect, test } from "@playwright/test";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import {
  confirmAll,
  drag,
  exercise,
  expectSound,
  giveFile,
  handleAt,
  openCheck,
  PHONE,
  photograph,
} from "./check-page";

test("a photograph is read, confirmed and marked, its habit is named, and a reload loses nothing", async ({ page }) => {
  test.setTimeout(180_000);
  const elsewhere: string[] = [];
  page.on("request", (request) => {
    if (/^https?:/.test(request.url()) && !request.url().startsWith("http://127.0.0.1")) elsewhere.push(request.url());
  });
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  const workers: Promise<Record<string, string>>[] = [];
  page.on("response", (response) => {
    if (response.url().includes("turbopack-worker")) workers.push(response.allHeaders());
  });
  await openCheck(page);
  await expectSound(page, "check-choose");
  await giveFile(page, (await photograph(exercise, "good")).jpeg);
  await expect(page.getByRole("heading", { name: "Is this what you drew?" })).toBeVisible({ timeout: 90_000 });
  await expect(page.locator(".check-title")).toHaveText(exercise.title);
  await expectSound(page, "check-confirm");
  // The worker keeps to rules of its own; the page itself still may not put functions together from texts.
  const [rules] = await Promise.all(workers);
  expect(rules?.["content-security-policy"]).toContain("default-src 'none'");
  const own = (await page.request.get("/check")).headers()["content-security-policy"];
  expect(own).toContain("'strict-dynamic'");
  expect(own).not.toMatch(/unsafe-eval/);

  await confirmAll(page);
  await expect(page.getByRole("region", { name: "Result" })).toContainText("A habit shows: depth in plan proportion");
  await expect(page.locator("[data-truth]").first()).toBeVisible();
  await expectSound(page, "check-result");

  // Before and after.
  const slider = page.getByRole("slider").first();
  await slider.fill("0");
  await expect(slider).toHaveAttribute("aria-valuetext", "only your drawing is seen");
  const score = await page.locator(".check-number").textContent();
  await page.reload();
  await expect(page.locator(".check-number")).toHaveText(score ?? "none");

  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Get a report, PDF" }).click();
  expect((await download).suggestedFilename()).toBe(`${exercise.id}-report.pdf`);
  expect(elsewhere).toEqual([]);
  expect(complaints).toEqual([]);
});

test("by keys alone, on a phone, a point is moved and another said not to be drawn", async ({ browser }) => {
  test.setTimeout(180_000);
  const page = await (await browser.newContext({ viewport: PHONE, hasTouch: true, isMobile: true })).newPage();
  await openCheck(page);
  await expectSound(page, "check-choose-phone");
  await giveFile(page, (await photograph(exercise, "good")).jpeg);
  await expect(page.getByRole("heading", { name: "Is this what you drew?" })).toBeVisible({ timeout: 90_000 });
  await expectSound(page, "check-confirm-phone");
  const [first = "", second = ""] = exercise.task.marks;
  const row = (i: number) => page.locator(".point-row").nth(i);
  await row(0).getByRole("button").first().focus();
  await page.keyboard.press("Enter");
  const before = await handleAt(page, first);
  await page.getByRole("application").focus();
  await page.keyboard.press("Shift+ArrowRight");
  await page.keyboard.press("Shift+ArrowRight");
  const after = await handleAt(page, first);
  expect(after.x).toBeGreaterThan(before.x + 8);
  expect(Math.abs(after.y - before.y)).toBeLessThan(1);
  await expect(row(0)).toContainText("moved by you");
  await page.keyboard.press("Backspace");
  await page.keyboard.press("Backspace");
  expect((await handleAt(page, first)).x).toBeCloseTo(before.x, 0);

  await row(1).getByRole("button").first().focus();
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Not drawn" }).focus();
  await page.keyboard.press("Enter");
  await expect(row(1)).toContainText("not drawn");
  await expect(page.locator(`[data-handle="${second}"]`)).toHaveCount(0);
  await confirmAll(page);
  await expect(page.getByRole("region", { name: "Result" })).toContainText(/not drawn and counts? as 0/);
  await expectSound(page, "check-result-phone");
  await page.context().close();
});

test("by mouse a handle is chosen with a press and stays, and is dragged to another place", async ({ page }) => {
  test.setTimeout(180_000);
  await openCheck(page);
  await giveFile(page, (await photograph(exercise, "good")).jpeg);
  await expect(page.getByRole("heading", { name: "Is this what you drew?" })).toBeVisible({ timeout: 90_000 });
  const name = "B.top";
  const at = await handleAt(page, name);
  await page.mouse.click(at.x, at.y);
  await page.mouse.move(at.x + 60, at.y + 40);
  expect((await handleAt(page, name)).x).toBeCloseTo(at.x, 0);
  await expect(page.locator('.point-row[data-chosen="true"]')).toContainText("top of B");
  await drag(page, name, { x: at.x + 40, y: at.y - 30 });
  const moved = await handleAt(page, name);
  expect(moved.x).toBeCloseTo(at.x + 40, 0);
  expect(moved.y).toBeCloseTo(at.y - 30, 0);
  await expect(page.locator('.point-row[data-chosen="true"]')).toContainText("moved by you");
});

test("what is no photograph of a sheet is refused in plain words with what to do", async ({ page }) => {
  test.setTimeout(120_000);
  await openCheck(page);
  await giveFile(page, Buffer.from("<svg xmlns='http://www.w3.org/2000/svg'/>"), "drawing.png", "image/png");
  await expect(page.locator(".check-say")).toContainText("SVG");
  await expectSound(page, "check-refused");
  await page.getByRole("button", { name: "Back" }).click();
  const { jpeg } = await photograph(exercise, "good");
  await giveFile(page, jpeg.subarray(0, 400));
  await expect(page.locator(".check-say")).toContainText("damaged");
  await page.getByRole("button", { name: "Back" }).click();
  const dark = await photograph(exercise, "dark", { exposure: 0.06 });
  await giveFile(page, dark.jpeg);
  await expect(page.locator(".check-say")).toBeVisible({ timeout: 60_000 });
  await expect(page.getByRole("button", { name: "Set its corners by hand" })).toBeVisible();
  // The address was never led on to an exercise: nothing was taken for read.
  expect(new URL(page.url()).search).toBe("");
});

test("a drawing on other paper is straightened by its four corners and marked", async ({ page }) => {
  test.setTimeout(180_000);
  const shot = await photograph(exercise, "good");
  await openCheck(page);
  await page
    .getByLabel("A drawing on other paper")
    .setInputFiles({ name: "drawing.jpg", mimeType: "image/jpeg", buffer: shot.jpeg });
  await page.getByLabel("Exercise").selectOption(exercise.id);
  await expect(page.locator(".check-title")).toHaveText(exercise.title);
  await expectSound(page, "check-corners");
  const sheet = layOutPracticeSheet(exercise, { paper: "letter" });
  if (!sheet) throw new Error("The sheet has no layout.");
  const image = await page.locator(".photo-image").boundingBox();
  if (!image) throw new Error("The photograph is not shown.");
  const { width, height } = exercise.stage.opening;
  const mm = sheet.scale.ratio / 1000;
  const [x0, y0] = sheet.layout.picture.at;
  const corners = [
    ["upper left", -width / 2, height],
    ["upper right", width / 2, height],
    ["lower right", width / 2, 0],
    ["lower left", -width / 2, 0],
  ] as const;
  for (const [name, across, up] of corners) {
    const [right, down] = shot.truth.photoFromSheet([x0 + across / mm, y0 - up / mm]);
    await drag(page, name, {
      x: image.x + (right / shot.width) * image.width,
      y: image.y + (down / shot.height) * image.height,
    });
  }
  await page.getByRole("button", { name: "Straighten it" }).click();
  await expect(page.getByRole("heading", { name: "Is this what you drew?" })).toBeVisible({ timeout: 60_000 });
  await confirmAll(page);
  await expect(page.getByRole("region", { name: "Result" })).toContainText("A habit shows: depth in plan proportion");
});
