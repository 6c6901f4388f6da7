import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { courseExercise, openExercise, type Place, planPlaces, toPage, truePlaces } from "./drive";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
/** The end of a result comes when what draws it has been fetched. */
const FETCHED_MS = 15_000;

/** Sets every mark down a little to the right of where it belongs. */
async function finish(page: Page, places: readonly Place[], drawing: "picture" | "plan") {
  for (const [X, Z] of places) {
    const { x, y } = await toPage(page, [X + 0.1, Z], drawing);
    await page.mouse.click(x, y);
    await page.getByRole("button", { name: "Set it down" }).click();
    await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
  }
}

/** The line across the stack, and the stack, pixels from the left of the page. */
async function lineAndStack(page: Page) {
  const line = await page.locator(".compare-line").boundingBox();
  const stack = await page.locator(".compare-stack").boundingBox();
  if (!line || !stack) throw new Error("There is nothing to compare on the page.");
  return { line: line.x, stack };
}

for (const viewport of [
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
]) {
  const phone = viewport.width < 700;

  test(`the finished picture is laid over by keys and by the pointer, ${viewport.width} wide`, async ({ browser }) => {
    const context = await browser.newContext({ viewport });
    const page = await context.newPage();
    const exercise = courseExercise("square-and-parallel");
    await openExercise(page, exercise.id);
    await finish(page, truePlaces(exercise), "picture");
    const end = page.getByRole("region", { name: "The set, finished" });
    await expect(end.getByRole("img", { name: "The finished picture." })).toBeVisible({ timeout: FETCHED_MS });

    const own = end.getByRole("img", { name: "Your drawing." });
    if (phone) await expect(own).toBeHidden();
    else {
      const [left, right] = [await own.boundingBox(), await end.locator(".compare-finished svg").boundingBox()];
      expect(left?.height).toBeCloseTo(right?.height ?? 0, 0);
      expect(left?.width).toBeCloseTo(right?.width ?? 0, 0);
      expect(left?.y).toBeCloseTo(right?.y ?? 0, 0);
    }

    const slider = end.getByRole("slider", { name: "Lay yours over the finished picture" });
    await slider.focus();
    await page.keyboard.press("Home");
    await expect(slider).toHaveValue("0");
    for (let i = 0; i < 3; i++) await page.keyboard.press("ArrowRight");
    await expect(slider).toHaveValue("3");
    await page.keyboard.press("End");
    await expect(slider).toHaveAttribute("aria-valuetext", "only yours is seen");

    await end.locator(".compare-stack").scrollIntoViewIfNeeded();
    const { stack } = await lineAndStack(page);
    const at = (share: number) => [stack.x + stack.width * share, stack.y + stack.height / 2] as const;
    await page.mouse.move(...at(0.8));
    await page.mouse.down();
    await page.mouse.move(...at(0.4), { steps: 5 });
    await page.mouse.up();
    await expect(slider).toHaveValue("40");
    const dragged = await lineAndStack(page);
    expect(Math.abs(dragged.line - (stack.x + 0.4 * stack.width))).toBeLessThan(2);

    // The thumb stands under the line, so that either can be taken for the other.
    const track = await slider.boundingBox();
    if (!track) throw new Error("The slider is not shown.");
    await page.mouse.click(stack.x + stack.width * 0.7, track.y + track.height / 2);
    const clicked = await lineAndStack(page);
    expect(Math.abs(clicked.line - (stack.x + 0.7 * stack.width))).toBeLessThan(stack.width * 0.02);

    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(viewport.width);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
      const found = violations.map(({ id, nodes }) => `${id} at ${nodes.map((node) => node.target).join(", ")}`);
      expect(found, colorScheme).toEqual([]);
    }
    await context.close();
  });
}

test("a finger draws the line across, and up and down it scrolls the page", async ({ browser }) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
  const page = await context.newPage();
  const exercise = courseExercise("square-and-parallel");
  await openExercise(page, exercise.id);
  await finish(page, truePlaces(exercise), "picture");
  await page.locator(".compare-stack").scrollIntoViewIfNeeded({ timeout: FETCHED_MS });
  const { stack } = await lineAndStack(page);
  const slider = page.getByRole("slider");
  const middle = stack.y + stack.height / 2;
  await page.touchscreen.tap(stack.x + stack.width * 0.25, middle);
  await expect(slider).toHaveValue("25");

  const devices = await context.newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", points: readonly Place[]) =>
    devices.send("Input.dispatchTouchEvent", { type, touchPoints: points.map(([x, y]) => ({ x, y })) });
  const across = (share: number): Place => [stack.x + stack.width * share, middle];
  await touch("touchStart", [across(0.3)]);
  for (const share of [0.4, 0.5, 0.6, 0.75]) await touch("touchMove", [across(share)]);
  await touch("touchEnd", []);
  await expect(slider).toHaveValue("75");

  const before = await page.evaluate(() => window.scrollY);
  await touch("touchStart", [across(0.5)]);
  for (const down of [40, 80, 120, 160]) await touch("touchMove", [[across(0.5)[0], middle + down]]);
  await touch("touchEnd", []);
  await expect.poll(() => page.evaluate(() => window.scrollY)).toBeLessThan(before);
  await context.close();
});

test("a plan read back ends with the plan as it was beside the plan as read", async ({ page }) => {
  const exercise = courseExercise("platforms-read-back");
  await openExercise(page, exercise.id);
  await finish(page, planPlaces(exercise), "plan");
  const end = page.getByRole("region", { name: "The plan as it was" });
  await expect(end.getByRole("img", { name: "The finished plan." })).toBeVisible({ timeout: FETCHED_MS });
  await expect(end.getByRole("img", { name: "The plan as you read it." })).toBeVisible();
});

test("what draws the finished picture is fetched only when a result is shown", async ({ page }) => {
  const scripts: string[] = [];
  page.on("response", (response) => response.url().endsWith(".js") && scripts.push(response.url()));
  const exercise = courseExercise("square-and-parallel");
  await openExercise(page, exercise.id);
  await page.waitForLoadState("networkidle");
  const before = scripts.length;
  await finish(page, truePlaces(exercise), "picture");
  await page.getByRole("slider").waitFor();
  expect(scripts.length).toBeGreaterThan(before);
});

test("a lost connection is said in plain words, and drawing is tried again", async ({ page }) => {
  const exercise = courseExercise("square-and-parallel");
  await openExercise(page, exercise.id);
  await page.waitForLoadState("networkidle");
  await page.route("**/*.js", (route) => route.abort());
  await finish(page, truePlaces(exercise), "picture");
  await expect(page.getByText(/^The finished picture could not be drawn/)).toBeVisible();
  await page.unroute("**/*.js");
  await page.getByRole("button", { name: "Try again" }).click();
  await expect(page.getByRole("slider")).toBeVisible({ timeout: FETCHED_MS });
});
