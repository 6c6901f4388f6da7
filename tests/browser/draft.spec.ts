import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { FOOT_M } from "@/lib/measure/length";
import {
  button,
  byMouse,
  byTouch,
  DRAWN,
  drawSet,
  drawSetByKeys,
  enter,
  onThePlan,
  openDesk,
  PHONE,
  place,
} from "./draft-hands";
import { toPage } from "./drive";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

async function expectNothingFound(page: Page, where: string) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  const found = violations.map(({ id, nodes }) => `${where}: ${id} at ${nodes.map((node) => node.target).join(", ")}`);
  expect(found).toEqual([]);
}

test("a set of five walls with an arch, a niche and a platform is drawn by mouse, undone, and there after a reload", async ({
  page,
}) => {
  await openDesk(page);
  await drawSet(page, byMouse);
  expect(await onThePlan(page)).toEqual(DRAWN);
  // The picture has followed, as the eye sees it: the arch's curve and the platform's edge are in it.
  await expect(page.locator("#picture-drawing [data-stroke^='own.W3.arch']").first()).toBeAttached();
  await expect(page.locator("#picture-drawing [data-stroke^='own.P1.']").first()).toBeAttached();
  for (let i = 0; i < 4; i++) await button(page, "Undo").click();
  await expect(page.getByText("Nothing yet. Draw something first.")).toBeVisible();
  await expect(button(page, "Undo")).toBeDisabled();
  for (let i = 0; i < 4; i++) await button(page, "Redo").click();
  expect(await onThePlan(page)).toEqual(DRAWN);
  await page.waitForTimeout(600);
  await page.reload();
  await page.locator(".draft-board[data-state=keeping]").waitFor();
  expect(await onThePlan(page)).toEqual(DRAWN);
  for (let i = 0; i < 4; i++) await button(page, "Undo").click();
  await expect(page.getByText("Nothing yet. Draw something first.")).toBeVisible();
});

test("the same set is drawn by touch on a phone", async ({ browser }) => {
  const context = await browser.newContext(PHONE);
  const page = await context.newPage();
  await openDesk(page);
  await drawSet(page, byTouch);
  expect(await onThePlan(page)).toEqual(DRAWN);
  await context.close();
});

test("two fingers come closer to the plan, and set nothing down", async ({ browser }) => {
  const context = await browser.newContext(PHONE);
  const page = await context.newPage();
  await openDesk(page);
  await button(page, "Draw").click();
  await button(page, "Draw walls").click();
  const whole = await page.locator("#plan-drawing").getAttribute("transform");
  const { x, y } = await place(page, [0, 10]);
  const client = await context.newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", apart: number, fingers = 2) =>
    client.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: [-1, 1].slice(0, fingers).map((side, id) => ({ x: x + side * apart, y, id })),
    });
  await touch("touchStart", 20, 1);
  await touch("touchStart", 20);
  for (const apart of [30, 45, 60]) await touch("touchMove", apart);
  await touch("touchEnd", 0, 0);
  expect(await page.locator("#plan-drawing").getAttribute("transform")).not.toBe(whole);
  await expect(button(page, "Take the last corner back")).toHaveCount(0);
  await context.close();
});

test("the same set is drawn by keys alone", async ({ page }) => {
  await openDesk(page);
  await drawSetByKeys(page);
  await enter(page, "On the plan");
  expect(await page.locator(".draft-list li").allTextContents()).toEqual(DRAWN);
  await page.keyboard.press("Control+z");
  await expect(page.locator(".draft-list li", { hasText: "Platform" })).toHaveCount(0);
  await page.keyboard.press("Control+Shift+z");
  await expect(page.locator(".draft-list li", { hasText: "Platform" })).toHaveCount(1);
});

test("a corner is dragged, an opening slides along its wall, and the back wall is taken hold of in the picture", async ({
  page,
}) => {
  await openDesk(page);
  await drawSet(page, byMouse);
  const drag = async (from: { x: number; y: number }, to: { x: number; y: number }, during?: () => Promise<void>) => {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 6 });
    await during?.();
    await page.mouse.up();
  };
  await drag(await place(page, [12, 2]), await place(page, [14, 2]));
  await drag(await place(page, [0, 18]), await place(page, [2, 18]), async () => {
    await expect(page.locator(".draft-where")).toHaveText(`5'-6" from C, 1'-6" from D.`);
  });
  const list = await onThePlan(page);
  expect(list).toContain(`Corner F, 14'-0" stage left, 2'-0" upstage`);
  expect(list).toContain(`Arch in W3, 5'-0" wide, 5'-6" from C`);
  await button(page, "Stage and eye").click();
  const eye = page.getByLabel("From the plaster line", { exact: true });
  await expect(eye).toHaveValue(`36'-0"`);
  // The foot of the back wall stands 24 * 8 / (36 + 24) = 3.2 ft up; at 4 ft the eye is 24 * (8 - 4) / 4 = 24 ft away.
  await drag(await toPage(page, [2, 3.2 * FOOT_M]), await toPage(page, [2, 4 * FOOT_M]));
  await expect(eye).toHaveValue(`24'-0"`);
});

for (const colorScheme of ["light", "dark"] as const) {
  for (const size of [{ viewport: { width: 1366, height: 768 } }, PHONE]) {
    test(`axe finds nothing on the desk, ${colorScheme}, ${size.viewport?.width} wide`, async ({ browser }) => {
      test.slow();
      const context = await browser.newContext({ colorScheme, ...size });
      const page = await context.newPage();
      await openDesk(page);
      await expectNothingFound(page, "stage");
      await button(page, "Draw").click();
      await expectNothingFound(page, "what to draw");
      await button(page, "Build a stair").click();
      await expectNothingFound(page, "a stair in hand");
      await button(page, "Put the pencil down").click();
      await drawSet(page, size === PHONE ? byTouch : byMouse);
      await onThePlan(page);
      await page.getByLabel(/^Arch in/).check();
      await expectNothingFound(page, "an arch chosen");
      await button(page, "Notes").click();
      await expectNothingFound(page, "notes");
      await button(page, "Make it an exercise").click();
      await expectNothingFound(page, "exercise");
      await context.close();
    });
  }
}
