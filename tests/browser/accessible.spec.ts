import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { printLength } from "@/lib/measure/print-length";
import { courseExercise, openExercise, toPage, truePlaces } from "./drive";

const exercise = courseExercise("points-on-the-floor");
const places = truePlaces(exercise);
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

async function expectNothingFound(page: Page, where: string) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  const found = violations.map(({ id, nodes }) => `${where}: ${id} at ${nodes.map((node) => node.target).join(", ")}`);
  expect(found).toEqual([]);
}

for (const colorScheme of ["light", "dark"] as const) {
  for (const viewport of [
    { width: 1366, height: 768 },
    { width: 390, height: 844 },
  ]) {
    test(`axe finds nothing at any step, ${colorScheme}, ${viewport.width} wide`, async ({ browser }) => {
      test.slow();
      const context = await browser.newContext({ colorScheme, viewport });
      const page = await context.newPage();
      await page.goto("/");
      await page.getByText("not yet drawn").first().waitFor();
      await expectNothingFound(page, "home");
      await openExercise(page, exercise.id);
      await expectNothingFound(page, "empty sheet");
      await page.getByRole("button", { name: "Straightedge" }).click();
      await page.getByRole("button", { name: "Draw this line" }).click();
      await expectNothingFound(page, "straightedge");
      await page.getByRole("button", { name: "Back to the mark" }).click();
      for (const [i, [X, Z]] of places.entries()) {
        const { x, y } = await toPage(page, [X + 0.4, Z + 0.1]);
        await page.mouse.click(x, y);
        await expectNothingFound(page, `step ${i + 1}, placed`);
        await page.getByRole("button", { name: "Set it down" }).click();
        await expectNothingFound(page, `step ${i + 1}, corrected`);
        await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
      }
      await expectNothingFound(page, "result");
      await page.goto("/practise/no-such-thing");
      await expectNothingFound(page, "unknown exercise");
      await context.close();
    });
  }
}

test("everything that can be pressed is at least 24 pixels either way", async ({ page }) => {
  await openExercise(page, exercise.id);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll("button, select, a, summary")].flatMap((element) => {
      const { width, height } = element.getBoundingClientRect();
      return width > 0 && (width < 24 || height < 24) ? [`${element.textContent}: ${width} by ${height}`] : [];
    }),
  );
  expect(small).toEqual([]);
});

test("the live regions tell the step, the mark's place, and the result", async ({ page }) => {
  await openExercise(page, exercise.id);
  const step = page.locator("[data-aloud=step]");
  await expect(step).toContainText(`Step 1 of ${places.length}`);
  await page.getByRole("application", { name: /^Picture/ }).focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Shift+ArrowRight");
  // 5 mm of paper, at the exercise's own scale.
  const off = printLength((5 * exercise.scaleRatio) / 1000, exercise.units);
  await expect(page.locator("[data-aloud=place]")).toContainText(`${off} right of the centre line`);
  await page.keyboard.press("Enter");
  await expect(step).toContainText("of 100.");
});
