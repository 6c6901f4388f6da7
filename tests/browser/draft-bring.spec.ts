import { readFileSync } from "node:fs";
import AxeBuilder from "@axe-core/playwright";
import { type BrowserContextOptions, expect, type Page, test } from "@playwright/test";
import DxfParser from "dxf-parser";
import { layBoard, toBoard } from "@/app/draft/bring/board";
import type { BroughtBounds } from "@/lib/draft/bring/brought-bounds";
import { FOOT_M } from "@/lib/measure/length";
import { broughtDxf, toFile } from "./brought-dxf";
import { toPage } from "./drive";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

type Feet = readonly [x: number, y: number];

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const surface = (page: Page) => page.getByRole("application", { name: /^The drawing that was brought/ });

/** What the centre line and the plaster line of the drawing reach to, in metres of the file. */
function boundsOf(metres: number): BroughtBounds {
  const corners = [toFile([0, -4]), toFile([0, 22]), toFile([-20, 0]), toFile([20, 0])];
  const [xs, ys] = [corners.map(([x]) => x * metres), corners.map(([, y]) => y * metres)];
  return { least: [Math.min(...xs), Math.min(...ys)], most: [Math.max(...xs), Math.max(...ys)] };
}

/** A place of the stage, feet, on the page. */
async function place(page: Page, at: Feet, metres = FOOT_M) {
  const [x, y] = toFile(at);
  return toPage(page, toBoard(layBoard(boundsOf(metres)), [x * metres, y * metres]), "brought");
}

async function choose(page: Page, file = broughtDxf(), name = "lamp-room.dxf") {
  await page.goto("/draft/bring");
  await page.waitForLoadState("networkidle");
  await page
    .locator("input[type=file]")
    .setInputFiles({ name, mimeType: "image/vnd.dxf", buffer: Buffer.from(file, "utf8") });
}

async function bring(page: Page, file?: string) {
  await choose(page, file);
  await page.locator("#brought-drawing[transform]").waitFor();
}

/** Places on the centre line and the plaster line, the ends of each a little missed. */
const POINTED: readonly Feet[] = [
  [0.1, -3.95],
  [-0.1, 21.9],
  [-19.9, 0.1],
  [19.95, 0.05],
];

const OUT = [
  "3 walls and 1 door.",
  `24'-0" across, from 12'-0" stage right to 12'-0" stage left.`,
  `12'-0" deep, from 3'-0" upstage to 15'-0" upstage.`,
];

async function expectOut(page: Page) {
  await expect(page.locator(".bring-out p")).toHaveText(OUT);
}

const ON_PLAN = [
  `Wall W1, A to B, 12'-4 7/16" long`,
  `Wall W2, B to C, 18'-0" long`,
  `Door in W2, 3'-0" wide, 7'-6" from B`,
  `Wall W3, C to D, 12'-4 7/16" long`,
  `Corner A, 12'-0" stage right, 3'-0" upstage`,
  `Corner B, 9'-0" stage right, 15'-0" upstage`,
  `Corner C, 9'-0" stage left, 15'-0" upstage`,
  `Corner D, 12'-0" stage left, 3'-0" upstage`,
];

async function onThePlan(page: Page): Promise<string[]> {
  await page.locator(".draft-board[data-state=keeping]").waitFor();
  await button(page, "On the plan").click();
  return page.locator(".draft-list li").allTextContents();
}

async function putThere(page: Page) {
  await button(page, "Put it on the plan").click();
  await page.waitForURL(/\/draft$/);
}

test("a DXF is pointed at by mouse, put on a plan, undone, done again, and there after a reload", async ({ page }) => {
  await bring(page);
  for (const at of POINTED) {
    const { x, y } = await place(page, at);
    await page.mouse.click(x, y);
  }
  await expectOut(page);
  // A place is dragged along its line, and off it: the walls follow what is pointed at.
  const drag = async (from: Feet, to: Feet) => {
    const [a, b] = [await place(page, from), await place(page, to)];
    await page.mouse.move(a.x, a.y);
    await page.mouse.down();
    await page.mouse.move(b.x, b.y, { steps: 5 });
    await page.mouse.up();
  };
  await drag([-20, 0], [-15, 0.1]);
  await expectOut(page);
  await drag([-15, 0], [-15, 6]);
  await expect(page.locator(".bring-out")).toContainText("they are square to each other on a stage");
  await button(page, "Take back").click();
  await expectOut(page);
  await button(page, "The audience is at the other end").click();
  await expect(page.locator(".bring-out")).toContainText("downstage of the plaster line");
  await button(page, "Take back").click();
  await expectOut(page);
  await expect(page.getByText("Pieces of lettering: 1.")).toBeVisible();
  await expect(page.getByText("Hatchings: 1.")).toBeVisible();
  const whole = await page.locator("#brought-drawing").getAttribute("transform");
  await page.getByRole("button", { name: /^Show: Pieces of lettering/ }).click();
  await expect(page.locator(".bring-shown")).toBeVisible();
  expect(await page.locator("#brought-drawing").getAttribute("transform")).not.toBe(whole);
  await putThere(page);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("lamp room");
  expect(await onThePlan(page)).toEqual(ON_PLAN);
  await button(page, "Undo").click();
  await expect(page.getByText("Nothing yet. Draw something first.")).toBeVisible();
  await expect(button(page, "Undo")).toBeDisabled();
  await button(page, "Redo").click();
  expect(await onThePlan(page)).toEqual(ON_PLAN);
  await page.waitForTimeout(600);
  await page.reload();
  expect(await onThePlan(page)).toEqual(ON_PLAN);
  await button(page, "Undo").click();
  await expect(page.getByText("Nothing yet. Draw something first.")).toBeVisible();
});

test("the same by keys alone", async ({ page }) => {
  await bring(page);
  const keys = page.keyboard;
  await surface(page).focus();
  const press = async (...names: readonly string[]) => {
    for (const name of names) await keys.press(name);
  };
  // The first press shows what points in the middle of the drawing, which lies on the centre line.
  await press("ArrowRight", "Shift+ArrowRight");
  const aloud = page.locator("[data-aloud=pointing]");
  await expect(aloud).toContainText("In the middle of a line.");
  await press("Shift+ArrowRight");
  await expect(aloud).toContainText("At the end of a line.");
  await press("Enter");
  await expect(aloud).toContainText("Point at the centre line again");
  await press("ArrowLeft", "Shift+ArrowLeft", "Enter");
  await press("ArrowRight", "Shift+ArrowRight", "Enter");
  await press("ArrowRight", "Shift+ArrowRight", ...Array<string>(12).fill("ArrowUp"));
  await expect(aloud).toContainText("On a line.");
  await press("Enter");
  await expect(aloud).toContainText("Everything is pointed at.");
  await expectOut(page);
  await press("Backspace");
  await expect(aloud).toContainText("Point at the plaster line again");
  await press("ArrowRight", "Shift+ArrowRight", ...Array<string>(9).fill("ArrowDown"), "Enter");
  await expectOut(page);
  await button(page, "Put it on the plan").focus();
  await keys.press("Enter");
  await page.waitForURL(/\/draft$/);
  expect(await onThePlan(page)).toEqual(ON_PLAN);
});

test("the same by touch on a phone, with the magnifier, and two fingers set nothing", async ({ browser }) => {
  const context = await browser.newContext(PHONE);
  const page = await context.newPage();
  await bring(page);
  const client = await context.newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", points: readonly { x: number; y: number }[]) =>
    client.send("Input.dispatchTouchEvent", { type, touchPoints: points.map((at, id) => ({ ...at, id })) });
  const middle = await place(page, [4, 10]);
  const other = { x: middle.x + 60, y: middle.y };
  await touch("touchStart", [middle]);
  await expect(page.locator(".magnifier")).toBeVisible();
  await touch("touchStart", [middle, other]);
  await touch("touchEnd", []);
  await expect(page.locator(".magnifier")).toHaveCount(0);
  await expect(page.locator(".bring-place")).toHaveCount(0);
  for (const at of POINTED) {
    const { x, y } = await place(page, at);
    await page.touchscreen.tap(x, y);
  }
  await expectOut(page);
  await putThere(page);
  expect(await onThePlan(page)).toEqual(ON_PLAN);
  await context.close();
});

test("the lines that may be meant are taken, and a file without a unit gets its size by two places and a length", async ({
  page,
}) => {
  await bring(page, broughtDxf({ unit: 0 }));
  await button(page, "Take it as the centre line").click();
  await button(page, "Take it as the plaster line").click();
  await expect(page.locator(".bring-out")).toHaveText("Choose its size.");
  await page.getByLabel("Size of the drawing").selectOption("two places and a length");
  for (const at of [
    [-20, 0],
    [20, 0],
  ] as const) {
    const { x, y } = await place(page, at, 1);
    await page.mouse.click(x, y);
  }
  await page.getByLabel("How long that is").fill("forty feet");
  await page.getByLabel("How long that is").blur();
  await expect(page.getByText(/"forty feet" is not a length/).first()).toBeVisible();
  await page.getByLabel("How long that is").fill(`40'`);
  await expectOut(page);
  await page.getByLabel("Size of the drawing").selectOption("drawn in feet");
  await expectOut(page);
});

test("it goes beside what is on the table, and is one step there", async ({ page }) => {
  await bring(page);
  await button(page, "Take it as the centre line").click();
  await button(page, "Take it as the plaster line").click();
  await expectOut(page);
  await putThere(page);
  await page.waitForTimeout(600);
  await bring(page);
  await button(page, "Take it as the centre line").click();
  await button(page, "Take it as the plaster line").click();
  await page.getByLabel("Put it on").selectOption("table");
  // The same walls again: the plan has them, and says so.
  await expect(page.locator(".bring-out")).toContainText("already");
  await page.getByLabel("WALLS is").selectOption("ignore");
  await page.getByLabel("FURNITURE is").selectOption("walls");
  await expect(page.locator(".bring-out")).toContainText("2 walls.");
  await putThere(page);
  expect((await onThePlan(page)).filter((line) => line.startsWith("Wall"))).toHaveLength(5);
  await button(page, "Undo").click();
  expect(await onThePlan(page)).toEqual(ON_PLAN);
});

test("an SVG is let fall on the page, and its paper gets a scale", async ({ page }) => {
  await page.goto("/draft/bring");
  await page.waitForLoadState("networkidle");
  // A sheet of 400 mm: at 1:50 its walls are 8 m across and 5 m deep, from 1 m upstage.
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">
    <g id="walls"><polyline points="120,180 140,80 260,80 280,180" fill="none"/></g>
    <g id="centre line"><line x1="200" y1="20" x2="200" y2="260"/></g>
    <g id="plaster line"><line x1="40" y1="200" x2="360" y2="200"/></g>
    <text x="10" y="290">not to be built from</text></svg>`;
  const data = await page.evaluateHandle((text) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([text], "attic.svg", { type: "image/svg+xml" }));
    return transfer;
  }, svg);
  await page.dispatchEvent(".bring-choose .file-drop", "drop", { dataTransfer: data });
  await page.locator("#brought-drawing[transform]").waitFor();
  await button(page, "Take it as the centre line").click();
  await button(page, "Take it as the plaster line").click();
  await page.getByLabel("Size of the drawing").selectOption("paper at 1:50");
  await page.getByLabel("Put it on").selectOption("new-m");
  await expect(page.locator(".bring-out p")).toHaveText([
    "3 walls.",
    "8000 mm across, from 4000 mm stage right to 4000 mm stage left.",
    "5000 mm deep, from 1000 mm upstage to 6000 mm upstage.",
  ]);
});

test("a file that is no drawing, or a broken one, gets a plain message, and nothing is lost", async ({ page }) => {
  await choose(page, "Dear colleague,\nplease find the plan enclosed.", "letter.dxf");
  await expect(page.getByRole("alert").filter({ hasText: "cannot be read" })).toContainText(
    "letter.dxf cannot be read. In line 1: this is no DXF file",
  );
  await expect(page.getByText("What is on your desk is as it was.")).toBeVisible();
  await page.locator("input[type=file]").setInputFiles({
    name: "cut.dxf",
    mimeType: "image/vnd.dxf",
    buffer: Buffer.from(broughtDxf().slice(0, 300)),
  });
  await expect(page.getByRole("alert").filter({ hasText: "cut.dxf cannot be read" })).toContainText("To mend it:");
  await page.locator("input[type=file]").setInputFiles({
    name: "lamp-room.dxf",
    mimeType: "image/vnd.dxf",
    buffer: Buffer.from(broughtDxf()),
  });
  await page.locator("#brought-drawing[transform]").waitFor();
});

test("the plan that was brought goes out as DXF and comes back within a millionth of a metre", async ({ page }) => {
  await bring(page);
  await button(page, "Take it as the centre line").click();
  await button(page, "Take it as the plaster line").click();
  await expectOut(page);
  await putThere(page);
  await page.locator(".draft-board[data-state=keeping]").waitFor();
  await button(page, "Make it an exercise").click();
  const section = page.getByRole("region", { name: "What to do with it" });
  await expect(section.getByText("The files say so too.")).toBeVisible();
  const save = async (press: string) => {
    const coming = page.waitForEvent("download");
    await section.getByRole("button", { name: press }).click();
    const download = await coming;
    const file = new DxfParser().parseSync(readFileSync(await download.path(), "utf8"));
    return { name: download.suggestedFilename(), file };
  };
  const plan = await save("DXF of the plan");
  expect(plan.name).toBe("lamp-room-plan.dxf");
  expect(plan.file?.header.$INSUNITS).toBe(1);
  const inch = 0.0254;
  const ends = (plan.file?.entities ?? []).flatMap((entity) =>
    entity.layer === "Walls" && "vertices" in entity
      ? (entity.vertices as { x: number; y: number }[]).map(({ x, y }) => [x * inch, y * inch] as const)
      : [],
  );
  for (const [x, y] of [
    [-12, 3],
    [-9, 15],
    [9, 15],
    [12, 3],
    [-1.5, 15],
    [1.5, 15],
  ] as const) {
    const off = Math.min(...ends.map((end) => Math.hypot(end[0] - x * FOOT_M, end[1] - y * FOOT_M)));
    expect(off, `${x}, ${y}`).toBeLessThan(1e-6);
  }
  const picture = await save("DXF of the picture");
  expect(picture.name).toBe("lamp-room-picture.dxf");
  expect(new Set(picture.file?.entities.map(({ layer }) => layer))).toContain("Proscenium");
});

for (const colorScheme of ["light", "dark"] as const)
  for (const size of [{ viewport: { width: 1366, height: 768 } }, PHONE])
    test(`axe finds nothing, ${colorScheme}, ${size.viewport?.width} wide`, async ({ browser }) => {
      test.slow();
      const context = await browser.newContext({ colorScheme, ...size });
      const page = await context.newPage();
      const expectNothingFound = async (where: string) => {
        const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
        const found = violations.map(
          ({ id, nodes }) => `${where}: ${id} at ${nodes.map((node) => node.target).join(", ")}`,
        );
        expect(found).toEqual([]);
      };
      await choose(page, "no drawing", "letter.dxf");
      await page.getByText("letter.dxf cannot be read").waitFor();
      await expectNothingFound("a file that cannot be read");
      await bring(page, broughtDxf({ unit: 0 }));
      await expectNothingFound("read");
      await page.getByLabel("Size of the drawing").selectOption("two places and a length");
      await button(page, "Take it as the centre line").click();
      await expectNothingFound("half pointed at");
      await button(page, "Take it as the plaster line").click();
      await page.getByLabel("Size of the drawing").selectOption("drawn in feet");
      await page.getByRole("button", { name: /^WALLS/ }).click();
      await expectOut(page);
      await expectNothingFound("what comes out");
      await context.close();
    });
