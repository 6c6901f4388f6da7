import { execFileSync } from "node:child_process";
import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import sharp from "sharp";
import { hasPoppler } from "@/lib/cli/get-poppler.mjs";
import { darkRuns } from "@/tests/drawing/rasterise";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

async function openSheet(page: Page, id: string) {
  await page.goto(`/sheet/${id}`);
  await expectShown(page);
}

/** The first page of the preview has come, and is a drawing. */
async function expectShown(page: Page) {
  const image = page.locator(".printing-page img").first();
  await expect
    .poll(() => image.evaluate((each: HTMLImageElement) => each.complete && each.naturalWidth > 0))
    .toBe(true);
}

for (const { name, colorScheme, viewport, look } of [
  { name: "laptop", colorScheme: "light", viewport: { width: 1366, height: 768 }, look: "device.desk" },
  { name: "laptop in the dark", colorScheme: "dark", viewport: { width: 1366, height: 768 }, look: "device.desk" },
  { name: "phone", colorScheme: "light", viewport: { width: 390, height: 844 }, look: "device.desk" },
  { name: "projector", colorScheme: "light", viewport: { width: 1280, height: 720 }, look: "paper.projector" },
] as const) {
  test(`axe finds nothing, and nothing runs off the side: ${name}`, async ({ browser, baseURL }) => {
    const context = await browser.newContext({ colorScheme, viewport });
    await context.addCookies([{ name: "plasterline-look", value: look, url: baseURL ?? "" }]);
    const page = await context.newPage();
    await openSheet(page, "the-tide-office");
    await page.getByLabel("For whom").selectOption("set");
    const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
    expect(violations.map(({ id, nodes }) => `${id} at ${nodes.map(({ target }) => target).join(", ")}`)).toEqual([]);
    const [wide, shown] = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
    expect(wide).toBeLessThanOrEqual(shown ?? 0);
    await context.close();
  });
}

for (const viewport of [
  { width: 1366, height: 768 },
  { width: 1280, height: 720 },
]) {
  test(`the press stays in reach beside a set of pages at ${viewport.width} by ${viewport.height}`, async ({
    page,
  }) => {
    await page.setViewportSize(viewport);
    await openSheet(page, "the-tide-office");
    await page.getByLabel("For whom").selectOption("set");
    const press = page.getByRole("button", { name: "Get the PDF" });
    await expect(press).toBeInViewport({ ratio: 1 });
    await page.mouse.move(viewport.width * 0.7, viewport.height / 2);
    await page.mouse.wheel(0, 900);
    await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(500);
    await expect(press).toBeInViewport({ ratio: 1 });
    await page.getByLabel("Lines").focus();
    await expect(page.getByLabel("Lines")).toBeInViewport({ ratio: 1 });
  });
}

test("a sheet is chosen and fetched by keys alone, and the choices are kept", async ({ page }) => {
  await openSheet(page, "the-tide-office");
  await page.getByLabel("Paper").focus();
  await page.keyboard.press("End");
  await expect(page.getByLabel("Paper")).toHaveValue("a3");
  await page.keyboard.press("Tab");
  await page.keyboard.press("ArrowDown");
  await expect(page.getByLabel("Answer key")).toHaveValue("points");
  await expect(page.locator(".printing-page")).toHaveCount(2);
  await page.getByRole("button", { name: "Get the PDF" }).focus();
  const coming = page.waitForEvent("download");
  await page.keyboard.press("Enter");
  expect((await coming).suggestedFilename()).toBe("the-tide-office-a3.pdf");
  await openSheet(page, "raking-wall");
  await expect(page.getByLabel("Paper")).toHaveValue("a3");
  await expect(page.getByLabel("Answer key")).toHaveValue("points");
});

/** The longest level stretch of ink at a page's foot, millimetres: the bar that is measured. */
async function longestAtFoot(image: string | Buffer, widthMm: number): Promise<number> {
  const { data, info } = await sharp(image).greyscale().raw().toBuffer({ resolveWithObject: true });
  const { width, height } = info;
  const pixels = { width, height, grey: new Uint8Array(data), perMm: width / widthMm };
  const rows = Array.from({ length: FOOT_MM * 5 }, (_, i) => height / pixels.perMm - (i + 1) / 5);
  return Math.max(...rows.flatMap((down) => darkRuns(pixels, "row", down).map(({ from, to }) => to - from)));
}

/** On a sheet with its words under the drawings the bar is the one long line so near to the paper's edge. */
const FOOT_MM = 40;
const A4_WIDTH_MM = 210;

for (const { id, bar } of [
  { id: "raking-wall", bar: 100 },
  { id: "the-tide-office", bar: 4 * 25.4 },
]) {
  test(`the bar of ${id} on A4 is as long as it says in the file that is fetched`, async ({ page }) => {
    const [format, dpi] = hasPoppler() ? ["pdf", 600] : ["png", 200];
    await openSheet(page, id);
    await page.getByLabel("Paper").selectOption("a4");
    await page.getByLabel("File").selectOption(format);
    const coming = page.waitForEvent("download");
    await page.getByRole("button", { name: `Get the ${format.toUpperCase()}` }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toBe(`${id}-a4.${format}`);
    const file = await download.path();
    const image =
      format === "pdf"
        ? execFileSync("pdftoppm", ["-png", "-gray", "-r", String(dpi), file], { maxBuffer: 200_000_000 })
        : file;
    expect(Math.abs((await longestAtFoot(image, A4_WIDTH_MM)) - bar)).toBeLessThanOrEqual(0.2);
  });
}

test("a class set of a generated exercise begins with its own number", async ({ page }) => {
  await openSheet(page, "walls-2-48213");
  await page.getByLabel("For whom").selectOption("set");
  await expect(page.getByLabel("First variant")).toHaveValue("48213");
  await page.getByLabel("Sheets").fill("3");
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: "Get the PDF" }).click();
  expect((await coming).suggestedFilename()).toBe("walls-2-48213-class-set-of-3-letter.pdf");
});

for (const view of ["plan", "picture", "both", "construction"]) {
  test(`the ${view} alone comes as a drawing`, async ({ page }) => {
    await openSheet(page, "raking-wall");
    await page.getByLabel("What").selectOption(view);
    await expectShown(page);
    await page.getByLabel("File").selectOption("svg");
    const coming = page.waitForEvent("download");
    await page.getByRole("button", { name: "Get the SVG" }).click();
    expect((await coming).suggestedFilename()).toBe(`raking-wall-${view}-letter.svg`);
  });
}

test("an address that asks for what there is not says so", async ({ page }) => {
  const response = await page.goto("/sheet/raking-wall/file?paper=a5");
  expect(response?.status()).toBe(400);
  await expect(page.getByRole("heading")).toHaveText("This file cannot be made");
  await page.getByRole("link", { name: "Back to the sheet" }).click();
  await expect(page.getByRole("heading", { name: "A raking wall" })).toBeVisible();
  await page.goto("/sheet/no-such-thing");
  await expect(page.getByRole("heading")).toHaveText("There is no such sheet");
});

test("without a script the form still gets the sheet", async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto("/sheet/raking-wall");
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: "Get the PDF" }).click();
  expect((await coming).suggestedFilename()).toBe("raking-wall-letter.pdf");
  await context.close();
});
