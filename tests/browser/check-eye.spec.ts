import { expect, type Page, test } from "@playwright/test";
import { drawFinishedPicture } from "@/lib/drawing/draw-finished-picture";
import { pageToPng } from "@/lib/drawing/paper/page-to-png";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { parseLength } from "@/lib/measure/length";
import { project } from "@/lib/perspective/project";
import { listEdges } from "@/lib/plan/list-edges";
import type { PicturePoint, StagePoint } from "@/lib/stage/frame";
import { drag, expectSound, handleAt, PHONE } from "./check-page";
import { courseExercise } from "./drive";

const exercise = courseExercise("square-and-parallel");
const { stage, viewer } = exercise;

/** The picture's paper, millimetres, and where the foot of the centre line stands on it. */
const PAPER = { widthMm: 250, heightMm: 170 };
const AT = [125, 140] as const;
const DPI = 150;

/** How many times the give that the page names the truth may be away. */
const GIVES = 3;

async function picture(): Promise<Buffer> {
  const list = drawFinishedPicture(exercise);
  const page = { title: exercise.title, ...PAPER, layers: [{ list, scaleRatio: exercise.scaleRatio, at: AT }] };
  return Buffer.from(await pageToPng(page, { dpi: DPI }));
}

type Mm = readonly [right: number, down: number];

function onPaper([X, Z]: PicturePoint): Mm {
  const mm = 1000 / exercise.scaleRatio;
  return [AT[0] + X * mm, AT[1] - Z * mm];
}

function seen(point: StagePoint): Mm {
  const found = project(viewer, point);
  if (!found.seen) throw new Error("The point is not seen.");
  return onPaper(found.at);
}

/** Edges of the set that run square to the plaster line, on the picture. */
function squareEdges(): (readonly [Mm, Mm])[] {
  const points = exercisePoints(exercise);
  return listEdges(exercise.plan, points).flatMap(({ from, to }) => {
    const [a, b] = [points.get(from), points.get(to)];
    if (!a?.picture || !b?.picture) return [];
    const isSquare = Math.abs(a.at[0] - b.at[0]) < 1e-6 && Math.abs(a.at[1] - b.at[1]) > 1;
    return isSquare ? [[onPaper(a.picture), onPaper(b.picture)] as const] : [];
  });
}

async function openPicture(page: Page, address = "/check/eye") {
  await page.goto(address);
  await page
    .getByLabel("Choose a picture")
    .setInputFiles({ name: "drawing.png", mimeType: "image/png", buffer: await picture() });
  await expect(page.getByRole("heading", { name: "What it tells" })).toBeVisible({ timeout: 30_000 });
  await expect(page.locator(".photo-image")).toBeVisible();
}

async function onScreen(page: Page, [right, down]: Mm) {
  const image = await page.locator(".photo-image").boundingBox();
  if (!image) throw new Error("The picture is not shown.");
  return {
    x: image.x + (right / PAPER.widthMm) * image.width,
    y: image.y + (down / PAPER.heightMm) * image.height,
  };
}

async function press(page: Page, places: readonly Mm[]) {
  for (const place of places) {
    const { x, y } = await onScreen(page, place);
    await page.mouse.click(x, y);
  }
}

/** Steps a handle from where the keys start it to a place, by arrows alone. */
async function byArrows(page: Page, place: Mm) {
  await page.keyboard.press("ArrowUp");
  const far = [place[0] - PAPER.widthMm / 2, place[1] - PAPER.heightMm / 2] as const;
  for (const [off, more, less] of [
    [far[0], "ArrowRight", "ArrowLeft"],
    [far[1], "ArrowDown", "ArrowUp"],
  ] as const) {
    const arrow = off > 0 ? more : less;
    let left = Math.abs(off);
    for (const [keys, mm] of [
      [`Shift+${arrow}`, 5],
      [arrow, 1],
      [`Alt+${arrow}`, 0.2],
    ] as const) {
      const times = mm === 0.2 ? Math.round(left / mm) : Math.floor(left / mm);
      for (let i = 0; i < times; i++) await page.keyboard.press(keys);
      left -= times * mm;
    }
  }
}

/** A number and its give out of a sentence. */
async function told(page: Page, pattern: RegExp): Promise<{ readonly value: string; readonly give: string }> {
  const sentence = page.getByRole("list", { name: "What is known" }).getByText(pattern);
  const [, value = "", give = ""] = pattern.exec((await sentence.textContent()) ?? "") ?? [];
  return { value, give };
}

async function expectHorizon(page: Page) {
  const { value, give } = await told(page, /horizon lies ([\d.]+) mm under .*\(give or take ([\d.]+) mm\)/);
  const [, truth] = onPaper([0, viewer.eyeHeight]);
  expect(Number(give)).toBeGreaterThan(0);
  expect(Math.abs(Number(value) - truth)).toBeLessThan(GIVES * Number(give));
}

function metres(written: string): number {
  const parsed = parseLength(written, "m");
  if (!parsed.ok) throw new Error(parsed.reason);
  return parsed.metres;
}

test("marked by pointer, a picture of an exercise tells its own eye, and a reload loses nothing", async ({ page }) => {
  test.setTimeout(120_000);
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await page.goto("/check");
  await page.getByRole("link", { name: "Any drawing: whose eye drew it?" }).click();
  await expect(page.getByRole("heading", { name: "Whose eye drew this?" })).toBeVisible();
  await expectSound(page, "eye-choose");
  await openPicture(page);
  await expectSound(page, "eye-empty");

  const [one, two] = squareEdges();
  if (!one || !two) throw new Error("The exercise has no two edges square to the plaster line.");
  for (const edge of [one, two]) {
    await page.getByRole("button", { name: "Add a line" }).click();
    await press(page, edge);
  }
  await expectHorizon(page);
  await page.getByLabel("How group A runs").selectOption("square");
  const { value: cvp, give: cvpGive } = await told(page, /vanishing point lies ([\d.]+) mm .*take ([\d.]+) mm\)/);
  expect(Math.abs(Number(cvp) - AT[0])).toBeLessThan(GIVES * Number(cvpGive));
  // Horizon and CVP alone leave the distance open, and the page says so.
  await expect(page.getByRole("list", { name: "What is not known" })).toContainText("How far off the eye is");

  const { width } = stage.opening;
  const corners = [
    [-width / 2, 0, 0],
    [width / 2, 0, 0],
    [width / 2, stage.depth, 0],
    [-width / 2, stage.depth, 0],
  ] as const;
  await page.getByRole("button", { name: "Mark its four corners" }).click();
  await press(page, corners.map(seen));
  const proportion = page.getByLabel(/Side 1–2 to side 2–3/);
  await proportion.fill("0");
  await expect(page.getByText("A proportion is above 0.")).toBeVisible();
  await proportion.fill(`${width} to ${stage.depth}`);
  await page.getByRole("button", { name: "Mark its two ends" }).click();
  await press(page, [seen([-width / 2, 0, 0]), seen([width / 2, 0, 0])]);
  await page.getByLabel("It lies").selectOption("plaster line");
  await page.getByLabel("How long it is").fill("wide");
  await expect(page.getByText(/"wide" is not a length/)).toBeVisible();
  await page.getByLabel("How long it is").fill(`${width} m`);

  await expectHorizon(page);
  const distance = await told(page, /It stands ([\d.]+ mm) \(give or take ([\d.]+ mm)\) before the plaster line/);
  expect(Math.abs(metres(distance.value) - viewer.distance)).toBeLessThan(GIVES * metres(distance.give));
  const height = await told(page, /The eye is ([\d.]+ mm) \(give or take ([\d.]+ mm)\) above the floor/);
  expect(Math.abs(metres(height.value) - viewer.eyeHeight)).toBeLessThan(GIVES * metres(height.give));
  const width250 = page.getByLabel("Width of this picture on its paper");
  await width250.fill("");
  await expect(page.getByText(/Write a size here/)).toBeVisible();
  await width250.pressSequentially("250");
  await expectHorizon(page);
  await page.getByRole("button", { name: "Room round it" }).click();
  await expectSound(page, "eye-marked");
  await page.setViewportSize({ width: 1920, height: 1080 });
  await expectSound(page, "eye-marked-projector");

  const said = await page.getByRole("list", { name: "What is known" }).textContent();
  await page.reload();
  await expect(page.getByRole("list", { name: "What is known" })).toHaveText(said ?? "none");
  await expect(page.getByLabel("How long it is")).toHaveValue(`${width} m`);

  // A drag takes a place elsewhere, and a press takes that back.
  const before = await handleAt(page, "F.2");
  await drag(page, "F.2", { x: before.x - 60, y: before.y });
  await expect(page.getByText("On hand: corner 3 of the rectangle.")).toBeVisible();
  await expect(page.getByRole("list", { name: "What is known" })).not.toHaveText(said ?? "none");
  await page.getByRole("button", { name: "Take back" }).click();
  await expect(page.getByRole("list", { name: "What is known" })).toHaveText(said ?? "none");
  expect(complaints).toEqual([]);
});

test("by keys alone, on a phone, two edges tell the horizon, and nothing else is claimed", async ({ browser }) => {
  test.setTimeout(120_000);
  const page = await (await browser.newContext({ viewport: PHONE, hasTouch: true, isMobile: true })).newPage();
  await openPicture(page);
  await expectSound(page, "eye-empty-phone");
  for (const edge of squareEdges().slice(0, 2)) {
    await page.getByRole("button", { name: "Add a line" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("application").focus();
    for (const place of edge) {
      await byArrows(page, place);
      await page.keyboard.press("Enter");
    }
  }
  await expectHorizon(page);
  await expect(page.getByRole("list", { name: "What is known" })).not.toContainText("stands");
  await expect(page.getByRole("list", { name: "What is not known" })).toContainText("known length");
  await expectSound(page, "eye-marked-phone");
  await page.context().close();
});

test("on a phone an end is set with a finger, and uprights that lean are refused in words", async ({ browser }) => {
  const page = await (await browser.newContext({ viewport: PHONE, hasTouch: true, isMobile: true })).newPage();
  await openPicture(page);
  for (const right of [60, 180]) {
    await page.getByRole("button", { name: "Add an upright" }).tap();
    for (const place of [
      [right, 130],
      [right + 20, 60],
    ] as const) {
      const { x, y } = await onScreen(page, place);
      await page.touchscreen.tap(x, y);
    }
  }
  await expect(page.getByRole("region", { name: "What it tells" })).toContainText("the drawing is turned");
  await page.context().close();
});

test("a picture taken aslant is straightened by a rectangle on its paper", async ({ page }) => {
  await openPicture(page);
  await page.getByRole("button", { name: "Straighten it" }).click();
  await expect(page.getByRole("heading", { name: "Straighten the picture" })).toBeFocused();
  await page.getByLabel("How wide the rectangle is").fill("200");
  await page.getByLabel("How high it is").fill("0");
  await expect(page.getByText("A size is above 0.")).toBeVisible();
  await page.getByLabel("How high it is").fill("100");
  await expectSound(page, "eye-straighten");
  for (const [name, right, down] of [
    ["upper left", 25, 35],
    ["upper right", 225, 35],
    ["lower right", 225, 135],
    ["lower left", 25, 135],
  ] as const)
    await drag(page, name, await onScreen(page, [right, down]));
  await page.getByRole("button", { name: "Straighten it" }).click();
  await expect(page.getByRole("heading", { name: "What it tells" })).toBeVisible({ timeout: 30_000 });
  // The rectangle's width with 12 % of it on both sides.
  await expect(page.getByLabel("Width of this picture on its paper")).toHaveValue("248.0");
});
