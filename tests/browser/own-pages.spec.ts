import { readFileSync } from "node:fs";
import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { writeExercise } from "@/lib/exercise/write-exercise";
import { courseExercise } from "./drive";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const ID = "own-alcove";

/** Sets an exercise aside, as the drafting desk does. */
async function setAside(page: Page) {
  const exercise = { ...courseExercise("alcove"), id: "the-pantry", title: "The pantry" };
  await page.goto("/");
  await page.evaluate((aside) => localStorage.setItem("plasterline.own", JSON.stringify([aside])), {
    id: ID,
    text: JSON.stringify(writeExercise(exercise)),
  });
}

async function expectNothingFound(page: Page) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(violations.map(({ id, nodes }) => `${id} at ${nodes.map(({ target }) => target).join(", ")}`)).toEqual([]);
}

/** The beginning of what a press saves, and what it is called. */
async function saved(page: Page, press: string) {
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: press, exact: true }).click();
  const download = await coming;
  const bytes = readFileSync(await download.path());
  return { name: download.suggestedFilename(), head: bytes.subarray(0, 5).toString("latin1"), size: bytes.length };
}

test("an exercise of one's own is printed: sheet, keys, copies and drawings, each seen before it is fetched", async ({
  page,
}) => {
  await setAside(page);
  await page.goto(`/sheet/draft?kept=${ID}`);
  const shown = page.locator(".printing-page img");
  const loaded = () =>
    expect
      .poll(() => shown.evaluateAll((all) => all.every((img) => (img as HTMLImageElement).naturalWidth > 0)))
      .toBe(true);
  await expect(shown).toHaveCount(1);
  await loaded();
  await page.getByLabel("Answer key").selectOption("all");
  await expect(shown).toHaveCount(4);
  await loaded();
  await expectNothingFound(page);
  expect(await saved(page, "Get the PDF")).toMatchObject({ name: "the-pantry-letter.pdf", head: "%PDF-" });
  await page.getByLabel("For whom").selectOption("copies");
  await expect(page.getByText("10 more sheets like these.")).toBeVisible();
  await page.getByLabel("What").selectOption("construction");
  await page.getByLabel("Point").selectOption({ index: 1 });
  await page.getByLabel("File").selectOption("svg");
  expect(await saved(page, "Get the SVG")).toMatchObject({ head: "<svg " });
});

test("an exercise of one's own is demonstrated with its notes window, its handout and its steps", async ({ page }) => {
  await setAside(page);
  await page.goto(`/demonstrate/draft?kept=${ID}`);
  await page.locator(".demonstration").waitFor();
  await page.getByRole("button", { name: "Presses", exact: true }).click();
  expect(await saved(page, "Handout")).toMatchObject({ name: "the-pantry-handout.pdf", head: "%PDF-" });
  expect(await saved(page, "Steps as PDF")).toMatchObject({ name: "the-pantry-steps.pdf", head: "%PDF-" });
  const opening = page.waitForEvent("popup");
  await page.getByRole("button", { name: "Notes window", exact: true }).click();
  const notes = await opening;
  await expect(notes.getByText("The demonstration is open.")).toBeVisible();
  await notes.getByRole("button", { name: "On", exact: true }).click();
  await expect(page.locator(".demonstration")).toHaveAttribute("data-step", "2");
  await expectNothingFound(notes);
});
