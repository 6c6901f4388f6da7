import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { toPaperMm } from "@/lib/measure/scale";
import { project } from "@/lib/perspective/project";
import { courseExercise, openExercise, type Place, toPage } from "./drive";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const FRAME = courseExercise("reading-the-frame");
const HALVES = courseExercise("halves-and-quarters");

/** How deep the student of these tests draws every depth. */
const SHALLOW = 0.6;

/** Each asked point on its own ray, at so much of its true depth. */
function placesAtDepth(exercise: Exercise, share: number): Place[] {
  const points = exercisePoints(exercise);
  return exercise.task.marks.map((name) => {
    const [x, y, z] = points.get(name)?.at ?? [0, 0, 0];
    const seen = project(exercise.viewer, [x, y * share, z]);
    if (!seen.seen) throw new Error(`${name} is not seen.`);
    return [seen.at[0], seen.at[1]];
  });
}

/** The middle of the marks' errors in depth, millimetres of paper. */
function middleOffMm(exercise: Exercise, places: readonly Place[]): number {
  const points = exercisePoints(exercise);
  const off = exercise.task.marks.map((name, i) =>
    toPaperMm(Math.abs((places[i]?.[1] ?? 0) - (points.get(name)?.picture?.[1] ?? 0)), exercise.scaleRatio),
  );
  const sorted = [...off].sort((a, b) => a - b);
  return ((sorted[sorted.length >> 1] ?? 0) + (sorted[(sorted.length - 1) >> 1] ?? 0)) / 2;
}

async function finish(page: Page, exercise: Exercise, share: number) {
  await openExercise(page, exercise.id);
  for (const place of placesAtDepth(exercise, share)) {
    const { x, y } = await toPage(page, place);
    await page.mouse.click(x, y);
    await page.getByRole("button", { name: "Set it down" }).click();
    await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
  }
  await page.getByRole("heading", { name: /^Score/ }).waitFor();
}

async function expectNothingFound(page: Page, where: string) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(violations.map(({ id, nodes }) => `${where}: ${id} at ${nodes.map((node) => node.target)}`)).toEqual([]);
}

const standing = (page: Page, kind: "Shaky" | "Mastered") =>
  page.getByRole("heading", { level: 3, name: kind }).locator("..");

test("two exercises drawn too shallow: the first page and the record say so, and a saved copy keeps it", async ({
  page,
}) => {
  test.slow();
  await page.goto("/");
  await expect(page.getByRole("link", { name: `Start: ${FRAME.title}` })).toBeVisible();
  await expect(page.getByRole("heading", { name: "Where you stand" })).toHaveCount(0);
  await finish(page, FRAME, SHALLOW);
  await finish(page, HALVES, SHALLOW);

  await page.goto("/");
  // Every mark lies on its own ray, and none at its own depth.
  await expect(standing(page, "Mastered").getByRole("listitem").filter({ hasText: "Rays to the CVP" })).toHaveText(
    /Mastered today; it comes back in/,
  );
  await expect(standing(page, "Shaky").getByRole("listitem").filter({ hasText: "Halves by diagonals" })).toHaveText(
    /Shaky: your last five marks were too far downstage\./,
  );
  await expect(page.locator(".next-why")).toContainText(/is shaky|are shaky/);

  await page.getByRole("link", { name: "Your whole record" }).click();
  await expect(page.getByText(/^Your depths are too shallow: drawn at (59|60|61) % of the true ones/)).toBeVisible();
  await expect(page.getByText(/^Off across: 0\.[0-3] mm on paper/)).toBeVisible();
  await expect(page.getByRole("listitem").filter({ hasText: "Depths too shallow" })).toContainText("still there");
  await page.getByText("These errors as a table").focus();
  await page.keyboard.press("Enter");
  const row = page.getByRole("row").filter({ hasText: FRAME.title });
  const depth = Number(await row.getByRole("cell").nth(2).textContent());
  expect(Math.abs(depth - middleOffMm(FRAME, placesAtDepth(FRAME, SHALLOW)))).toBeLessThan(0.3);

  await page.goto("/");
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a copy" }).click();
  const file = await (await saving).path();
  await page.getByRole("button", { name: "Rub it all out" }).click();
  await page.getByRole("button", { name: "Yes, rub out everything" }).click();
  await expect(page.getByRole("heading", { name: "Where you stand" })).toHaveCount(0);
  await page.goto("/record");
  await expect(page.getByText(/^Nothing is drawn yet\./)).toBeVisible();
  await page.goto("/");
  await page.getByLabel("The copy to bring back").setInputFiles(file);
  await expect(standing(page, "Mastered")).toContainText("Rays to the CVP");
  await page.goto("/record");
  await expect(page.getByText(/^Your depths are too shallow: drawn at (59|60|61) %/)).toBeVisible();
});

test("the press on the first page starts a fresh sheet, though the finished one of last time is kept", async ({
  page,
}) => {
  await finish(page, FRAME, 1);
  await finish(page, HALVES, SHALLOW);
  await page.goto("/");
  const press = page.locator(".next-step .press");
  // The server's page knows no record: until the browser's is read it offers the first sheet to everybody.
  await expect(press).toHaveText(/^Draw: /);
  const title = (await press.textContent())?.replace("Draw: ", "") ?? "";
  await press.click();
  await expect(page.locator(".sheet[data-opened=true]")).toBeVisible();
  await expect(page.locator(".notes-step")).toHaveText(/^Step 1 of/);
  await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`axe finds nothing on the first page or in the record, empty and full, ${colorScheme}`, async ({ browser }) => {
    test.slow();
    const context = await browser.newContext({ colorScheme, viewport: { width: 1366, height: 768 } });
    const page = await context.newPage();
    await page.goto("/record");
    await page.getByText(/^Nothing is drawn yet\./).waitFor();
    await expectNothingFound(page, "empty record");
    await finish(page, FRAME, SHALLOW);
    await page.goto("/");
    await page.getByRole("heading", { name: "Where you stand" }).waitFor();
    await expectNothingFound(page, "first page");
    await page.goto("/record");
    for (const words of ["skills", "errors", "habits"]) await page.getByText(`These ${words} as a table`).click();
    await page.getByText("This curve as a table").click();
    await expect(page.getByRole("table")).toHaveCount(4);
    await expectNothingFound(page, "record, wide");
    await page.setViewportSize({ width: 390, height: 844 });
    await expectNothingFound(page, "record, narrow");
    const past = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(past).toBeLessThanOrEqual(0);
    await context.close();
  });
}
