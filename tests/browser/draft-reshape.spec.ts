import { expect, type Page, test } from "@playwright/test";
import {
  button,
  byMouse,
  byTouch,
  type DragTo,
  dragByMouse,
  dragByTouch,
  drawSet,
  enter,
  type Feet,
  openDesk,
  PHONE,
  type PressAt,
  place,
} from "./draft-hands";

/** The corners of the platform as the form beside the drawing writes them. */
async function corners(page: Page): Promise<string[][]> {
  const fields = page.getByLabel(/^Corner \d+, (across|upstage)$/);
  const values = await fields.evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));
  return Array.from({ length: values.length / 2 }, (_, i) => values.slice(2 * i, 2 * i + 2));
}

const WHOLE = [
  [`-3'-0"`, `6'-0"`],
  [`3'-0"`, `6'-0"`],
  [`3'-0"`, `10'-0"`],
  [`-3'-0"`, `10'-0"`],
];

/** Chooses the platform, pulls a corner out, pulls a new one out of an edge, and undoes both, a step each. */
async function reshape(page: Page, press: PressAt, drag: DragTo) {
  const pull = async (from: Feet, to: Feet) => drag(page, await place(page, from), await place(page, to));
  await press(page, await place(page, [0, 7.5]));
  expect(await corners(page)).toEqual(WHOLE);
  await pull([3, 10], [5, 11]);
  expect((await corners(page))[2]).toEqual([`5'-0"`, `11'-0"`]);
  await expect(page.locator("[data-grip^=corner]")).toHaveCount(4);
  await pull([0, 6], [0, 5]);
  expect(await corners(page)).toHaveLength(5);
  expect((await corners(page))[1]).toEqual([`0"`, `5'-0"`]);
  await button(page, "Take corner 2 out").click();
  expect(await corners(page)).toHaveLength(4);
  for (let i = 0; i < 3; i++) await button(page, "Undo").click();
  expect(await corners(page)).toEqual(WHOLE);
}

test("a platform is reshaped by mouse: a corner pulled, one added on an edge, one taken out, each undone in one step", async ({
  page,
}) => {
  await openDesk(page);
  await drawSet(page, byMouse);
  await reshape(page, byMouse, dragByMouse);
});

test("a platform is reshaped by touch on a phone", async ({ browser }) => {
  const context = await browser.newContext(PHONE);
  const page = await context.newPage();
  await openDesk(page);
  await drawSet(page, byTouch);
  await reshape(page, byTouch, dragByTouch);
  await context.close();
});

test("a platform is reshaped by keys: Enter takes hold of one handle after another, arrows move it", async ({
  page,
}) => {
  await openDesk(page);
  await drawSet(page, byMouse);
  await enter(page, "On the plan");
  await page.getByLabel(/^Platform P1/).focus();
  await page.keyboard.press("Space");
  await page.getByLabel("Steps of").selectOption({ label: `1'-0"` });
  await page.getByRole("application", { name: /^Ground plan/ }).focus();
  const said = page.locator("[data-aloud=draft]");
  await page.keyboard.press("Enter");
  await expect(said).toHaveText("Held: corner 1.");
  await page.keyboard.press("ArrowLeft");
  await expect(said).toHaveText(`Corner 1: 4'-0" stage right, 6'-0" upstage; parallel to the plaster line.`);
  await page.keyboard.press("Enter");
  await expect(said).toHaveText("Held: the edge from corner 1 to corner 2.");
  await page.keyboard.press("ArrowDown");
  expect(await corners(page)).toHaveLength(5);
  await expect(said).toHaveText(/^A new corner 2:/);
  await page.keyboard.press("Delete");
  expect(await corners(page)).toHaveLength(4);
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  expect(await corners(page)).toEqual(WHOLE);
});
