import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import PDFDocument from "pdfkit";
import { readDraft } from "@/lib/draft/read-draft";
import {
  CENTRE_LINE,
  FRAME,
  type Pair,
  PICTURE,
  PLASTER_LINE,
  photographPlan,
  type Seen,
  slanted,
  straight,
  straightened,
  TRUE_LENGTHS,
  WALLS,
} from "./traced-plan";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

async function expectNothingFound(page: Page, where: string) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  const found = violations.map(({ id, nodes }) => `${where}: ${id} at ${nodes.map((node) => node.target).join(", ")}`);
  expect(found).toEqual([]);
}

async function openDesk(page: Page) {
  await page.goto("/draft");
  await page.locator(".draft-board[data-state=keeping]").waitFor();
  await button(page, "Draw").click();
}

async function choosePhotograph(page: Page, seen: Seen) {
  await button(page, "Lay a photograph under the plan").click();
  await page.locator(".trace-board input[type=file]").setInputFiles({
    name: "plan.png",
    mimeType: "image/png",
    buffer: await photographPlan(seen),
  });
  await page.locator("image.trace-photo").waitFor();
}

/** Where a place of a picture on the page is, told in pixels of `PICTURE` whatever its own are. */
async function onScreen(page: Page, picture: string, [x, y]: Pair) {
  const box = await page.locator(picture).boundingBox();
  if (!box) throw new Error(`${picture} is not shown.`);
  return { x: box.x + (x / PICTURE.width) * box.width, y: box.y + (y / PICTURE.height) * box.height };
}

/** A place is pointed at to a pixel of the screen: what that makes of the length between two places at most, as a share of it. */
async function lengthWithin(page: Page, picture: string, [from, to]: readonly [Pair, Pair]) {
  const [a, b] = [await onScreen(page, picture, from), await onScreen(page, picture, to)];
  return 2 / Math.hypot(a.x - b.x, a.y - b.y);
}

type PressAt = (page: Page, at: { readonly x: number; readonly y: number }) => Promise<void>;
const byMouse: PressAt = async (page, { x, y }) => {
  await page.mouse.move(x, y, { steps: 2 });
  await page.mouse.down();
  await page.mouse.up();
};
const byTouch: PressAt = (page, { x, y }) => page.touchscreen.tap(x, y);

/** Points at both ends of the two lines, and of the plaster line once more for its length; returns how wrong the scale may be. */
async function pointAtAll(page: Page, seen: Seen, press: PressAt) {
  for (const at of [...CENTRE_LINE, ...PLASTER_LINE, ...PLASTER_LINE])
    await press(page, await onScreen(page, "image.trace-photo", seen(at)));
  await page.getByLabel("How long that is").fill("34'");
  return lengthWithin(page, "image.trace-photo", [seen(PLASTER_LINE[0]), seen(PLASTER_LINE[1])]);
}

/** Where a place of the photograph under the plan is on the page, told in pixels of `PICTURE`. */
async function underPlan(page: Page, [x, y]: Pair) {
  return page.evaluate(
    ([right, down]) => {
      const image = document.querySelector<SVGImageElement>("image.trace-under");
      const matrix = image?.getScreenCTM();
      if (!image || !matrix) throw new Error("No photograph lies under the plan.");
      const [width, height] = [image.width.baseVal.value, image.height.baseVal.value];
      const { x, y } = new DOMPoint(right * width, down * height).matrixTransform(matrix);
      return { x, y };
    },
    [x / PICTURE.width, y / PICTURE.height] as const,
  );
}

/** The corners of the plan that is kept, metres. */
async function keptCorners(page: Page): Promise<readonly Pair[]> {
  await page.waitForTimeout(700);
  const kept = await page.evaluate(() => window.localStorage.getItem("plasterline.draft.plan.1") ?? "{}");
  const reading = readDraft(JSON.stringify((JSON.parse(kept) as { readonly now?: unknown }).now));
  if (!reading.ok) throw new Error("The plan that is kept cannot be read.");
  return [...reading.draft.exercise.plan.corners.values()].map(([x, y]) => [x, y]);
}

/** Draws walls over the photograph, corner by corner, with steps so fine that they move no corner further than pointing does. */
async function trace(page: Page, seen: Seen, press: PressAt) {
  await page.getByLabel("Steps of").selectOption({ label: '1"' });
  await button(page, "Draw walls").click();
  for (const at of WALLS) await press(page, await underPlan(page, seen(at)));
  await button(page, "End the run").click();
  await button(page, "Put the pencil down").click();
}

function lengths(corners: readonly Pair[]) {
  return corners.slice(1).map(([x, y], i) => Math.hypot(x - (corners[i] as Pair)[0], y - (corners[i] as Pair)[1]));
}

/** A pixel of the screen on the plan, metres. */
async function pixelOfPlan(page: Page) {
  return page.evaluate(() => {
    const group = document.querySelector<SVGGElement>("#plan-drawing");
    const mm = group?.getScreenCTM()?.a ?? 0;
    return Number(group?.dataset.ratio) / 1000 / mm;
  });
}

/**
 * Each wall is as long as it truly is, within the scale's share of that, and what a pixel of the screen at either end is on the
 * plan. A corner is caught by the grid and by lines from no further than a step and a half.
 */
async function expectTrueLengths(page: Page, scaleOff: number) {
  const cornerOff = (await pixelOfPlan(page)) + 1.5 * (await stepOfGrid(page));
  const drawn = lengths(await keptCorners(page));
  expect(drawn).toHaveLength(TRUE_LENGTHS.length);
  for (const [i, length] of drawn.entries()) {
    const truth = TRUE_LENGTHS[i] as number;
    expect(Math.abs(length - truth), `wall ${i + 1}: ${length} for ${truth}`).toBeLessThan(
      truth * scaleOff + 2 * cornerOff,
    );
  }
}

test("a photograph of a plan lies under it to scale, is traced, kept with it, and goes with it", async ({ page }) => {
  await openDesk(page);
  await choosePhotograph(page, straight);
  await expectNothingFound(page, "pointing");
  const scaleOff = await pointAtAll(page, straight, byMouse);
  await expect(page.locator(".trace-follows")).toContainText(/The two lines are (square|0\.\d degrees out of square)/);
  await button(page, "Lay it under the plan").click();
  await page.locator("image.trace-under").waitFor();
  await expectNothingFound(page, "laid under");
  await trace(page, straight, byMouse);
  await expectTrueLengths(page, scaleOff);
  await page.reload();
  await page.locator("image.trace-under").waitFor();
  expect(await keptCorners(page)).toHaveLength(WALLS.length);

  await button(page, "Draw").click();
  await button(page, "Hide it").click();
  await expect(page.locator("image.trace-under")).toHaveCount(0);
  await button(page, "Hide it").click();
  await page.getByLabel("How strongly it shows").fill("80");
  await expect(page.locator("image.trace-under")).toHaveAttribute("opacity", "0.8");
  await button(page, "Take it away").click();
  await expect(page.locator("image.trace-under")).toHaveCount(0);
  await button(page, "Put it back").click();
  await page.locator("image.trace-under").waitFor();
  await button(page, "Lay it again").click();
  await expect(button(page, "Lay it under the plan")).toBeEnabled();
  await button(page, "Leave it").click();
  await page.waitForTimeout(700);

  // Another plan has none under it; the first has, until it is thrown away.
  await page.locator(".draft-plans summary").click();
  await button(page, "New plan in feet").click();
  await expect(page.locator("image.trace-under")).toHaveCount(0);
  expect(await keptPhotographs(page)).toEqual(["1"]);
  const away = page.locator(".draft-plans li").filter({ hasNotText: "on the table" });
  await away.getByRole("button", { name: /^Throw .* away$/ }).click();
  await away.getByRole("button", { name: /^Really throw/ }).click();
  await expect.poll(() => keptPhotographs(page)).toEqual([]);
});

/** The step that the grid goes by, metres. */
async function stepOfGrid(page: Page) {
  return Number(await page.getByLabel("Steps of").inputValue());
}

/** The plans that have a photograph kept with them. */
async function keptPhotographs(page: Page) {
  return page.evaluate(
    () =>
      new Promise((done) => {
        const opening = indexedDB.open("plasterline");
        opening.onsuccess = () => {
          const shelf = opening.result.transaction("photographs under plans").objectStore("photographs under plans");
          const keys = shelf.getAllKeys();
          keys.onsuccess = () => {
            opening.result.close();
            done(keys.result);
          };
        };
      }),
  );
}

test("a photograph taken at a slant is straightened by four corners, and then gives the walls' true lengths", async ({
  page,
}) => {
  await openDesk(page);
  await choosePhotograph(page, slanted);
  await button(page, "It was taken at a slant: straighten it first").click();
  await page.locator("image.photo-image").waitFor();
  await expectNothingFound(page, "straightening");
  for (const [i, name] of ["upper left", "upper right", "lower right", "lower left"].entries()) {
    await page.getByRole("button", { name: new RegExp(name, "i") }).click();
    const handle = await page.locator(`[data-handle="${name}"] circle`).first().boundingBox();
    if (!handle) throw new Error(`There is no handle ${name}.`);
    const to = await onScreen(page, "image.photo-image", slanted(FRAME[i] as Pair));
    await page.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 5 });
    await page.mouse.up();
  }
  // The frame's right side is the shorter one; what lies between corners that are set wrong is wrong by no more than they.
  const [, upper, lower] = FRAME.map(slanted) as [Pair, Pair, Pair];
  const frameOff = 2 * (await lengthWithin(page, "image.photo-image", [upper, lower]));
  await page.getByLabel("How wide it is").fill("36'");
  await page.getByLabel("How high it is").fill("27'");
  await button(page, "Straighten it").click();
  await page.locator("image.trace-photo").waitFor();
  const scaleOff = await pointAtAll(page, straightened, byMouse);
  await button(page, "Lay it under the plan").click();
  await page.locator("image.trace-under").waitFor();
  await trace(page, straightened, byMouse);
  await expectTrueLengths(page, scaleOff + frameOff);
});

for (const colorScheme of ["light", "dark"] as const)
  test(`on a telephone by touch, ${colorScheme}`, async ({ browser }) => {
    const context = await browser.newContext({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      colorScheme,
    });
    const page = await context.newPage();
    await openDesk(page);
    await button(page, "Lay a photograph under the plan").click();
    await page.locator(".trace-choose").waitFor();
    await expectNothingFound(page, `choosing, ${colorScheme}`);
    await button(page, "Leave it").click();
    await choosePhotograph(page, straight);
    await expectNothingFound(page, `pointing, ${colorScheme}`);
    const scaleOff = await pointAtAll(page, straight, byTouch);
    await button(page, "Lay it under the plan").click();
    await page.locator("image.trace-under").waitFor();
    await expectNothingFound(page, `laid under, ${colorScheme}`);
    await trace(page, straight, byTouch);
    await expectTrueLengths(page, scaleOff);
    await context.close();
  });

test("a page of a scan is traced, and what cannot be read is said in a sentence", async ({ page }) => {
  await openDesk(page);
  await button(page, "Lay a photograph under the plan").click();
  const file = page.locator(".trace-board input[type=file]");
  await file.setInputFiles({
    name: "plan.txt",
    mimeType: "text/plain",
    buffer: Buffer.from("A ground plan, in words."),
  });
  await expect(page.getByRole("alert").filter({ hasText: "The file is not a picture." })).toContainText(
    "What is on your desk is as it was.",
  );
  await file.setInputFiles({ name: "scan.pdf", mimeType: "application/pdf", buffer: await scanOfPages() });
  await page.getByLabel(/The scan has 2 pages/).selectOption("2");
  await button(page, "Open that page").click();
  const photo = page.locator("image.trace-photo");
  await photo.waitFor();
  // The second page lies across, as no first one does.
  const box = await photo.boundingBox();
  expect((box?.width ?? 0) / (box?.height ?? 1)).toBeCloseTo(792 / 612, 1);
});

/** A scan of two Letter pages, the second across. */
function scanOfPages(): Promise<Buffer> {
  const scan = new PDFDocument({ size: "LETTER" });
  scan.rect(72, 72, 400, 600).stroke();
  scan.addPage({ size: "LETTER", layout: "landscape" });
  scan.rect(72, 72, 600, 400).stroke();
  const parts: Buffer[] = [];
  return new Promise((done) => {
    scan.on("data", (part: Buffer) => parts.push(part));
    scan.on("end", () => done(Buffer.concat(parts)));
    scan.end();
  });
}

test("a browser that does not keep the photograph says so, and it can be traced all the same", async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new Error("Nothing is kept here.");
    };
  });
  await openDesk(page);
  await choosePhotograph(page, straight);
  await pointAtAll(page, straight, byMouse);
  await button(page, "Lay it under the plan").click();
  await page.locator("image.trace-under").waitFor();
  await expect(page.getByText("This browser does not keep the photograph")).toBeVisible();
});

test("a photograph is laid by keys alone", async ({ page }) => {
  await openDesk(page);
  await choosePhotograph(page, straight);
  await page.getByRole("application", { name: /^The photograph of the plan/ }).focus();
  const ways: readonly (readonly string[])[] = [
    ["ArrowDown", "ArrowDown", "ArrowDown", "ArrowDown"],
    ["ArrowUp", "ArrowUp", "ArrowUp", "ArrowUp"],
    ["ArrowDown", "ArrowDown", "ArrowDown", "ArrowLeft", "ArrowLeft", "ArrowLeft"],
    ["ArrowDown", "ArrowDown", "ArrowDown", "ArrowRight", "ArrowRight", "ArrowRight"],
    ["ArrowLeft", "ArrowLeft", "ArrowLeft", "ArrowLeft"],
    ["ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight"],
  ];
  for (const way of ways) {
    for (const key of way) await page.keyboard.press(`Shift+${key}`);
    await page.keyboard.press("Enter");
  }
  // Something set by a slip is taken back, and set again.
  await page.keyboard.press("Backspace");
  for (const key of ways[5] ?? []) await page.keyboard.press(`Shift+${key}`);
  await page.keyboard.press("Enter");
  await page.getByLabel("How long that is").fill("20'");
  await expect(page.locator(".trace-follows")).toContainText("The two lines are square to each other.");
  await button(page, "Lay it under the plan").focus();
  await page.keyboard.press("Enter");
  await page.locator("image.trace-under").waitFor();
  await expect(page.locator(".draft-plan .draft-keys")).toBeFocused();
});
