import AxeBuilder from "@axe-core/playwright";
import { type BrowserContextOptions, expect, type Page, test } from "@playwright/test";
import { FOOT_M } from "@/lib/measure/length";
import { toPage } from "./drive";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

type Feet = readonly [x: number, y: number];

/** A set of five walls, feet, from stage right round to stage left. */
const CORNERS: readonly Feet[] = [
  [-12, 2],
  [-12, 12],
  [-6, 18],
  [6, 18],
  [12, 12],
  [12, 2],
];
const PLATFORM: readonly Feet[] = [
  [-3, 6],
  [3, 6],
  [3, 10],
  [-3, 10],
];

async function openDesk(page: Page) {
  await page.goto("/draft");
  await page.locator(".draft-board[data-state=keeping]").waitFor();
}

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

async function expectNothingFound(page: Page, where: string) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  const found = violations.map(({ id, nodes }) => `${where}: ${id} at ${nodes.map((node) => node.target).join(", ")}`);
  expect(found).toEqual([]);
}

/** Presses a place of the plan, feet. */
type PressAt = (page: Page, at: Feet) => Promise<void>;

async function place(page: Page, [x, y]: Feet) {
  return toPage(page, [x * FOOT_M, y * FOOT_M], "plan");
}
const byMouse: PressAt = async (page, at) => {
  const { x, y } = await place(page, at);
  await page.mouse.move(x, y, { steps: 3 });
  await page.mouse.down();
  await page.mouse.up();
};
const byTouch: PressAt = async (page, at) => {
  const { x, y } = await place(page, at);
  await page.touchscreen.tap(x, y);
};

async function drawSet(page: Page, press: PressAt) {
  await button(page, "Draw").click();
  await button(page, "Draw walls").click();
  for (const corner of CORNERS) await press(page, corner);
  await button(page, "End the run").click();
  await button(page, "Put the pencil down").click();
  await button(page, "Put in an opening").click();
  await page.getByLabel("Kind").selectOption("arch");
  await press(page, [0, 18]);
  await page.getByLabel("Kind").selectOption("niche");
  await press(page, [-12, 7]);
  await button(page, "Put the pencil down").click();
  await button(page, "Build a platform").click();
  for (const corner of PLATFORM) await press(page, corner);
  await button(page, "Close the platform").click();
  await button(page, "Put the pencil down").click();
}

/** What the list says is on the plan. */
async function onThePlan(page: Page): Promise<string[]> {
  await button(page, "On the plan").click();
  return page.locator(".draft-list li").allTextContents();
}

const DRAWN = [
  `Wall W1, A to B, 10'-0" long`,
  `Niche in W1, 3'-0" wide, 3'-6" from A`,
  `Wall W2, B to C, 8'-5 13/16" long`,
  `Wall W3, C to D, 12'-0" long`,
  `Arch in W3, 5'-0" wide, 3'-6" from C`,
  `Wall W4, D to E, 8'-5 13/16" long`,
  `Wall W5, E to F, 10'-0" long`,
  `Platform P1, 1'-0" high`,
  `Corner A, 12'-0" stage right, 2'-0" upstage`,
  `Corner B, 12'-0" stage right, 12'-0" upstage`,
  `Corner C, 6'-0" stage right, 18'-0" upstage`,
  `Corner D, 6'-0" stage left, 18'-0" upstage`,
  `Corner E, 12'-0" stage left, 12'-0" upstage`,
  `Corner F, 12'-0" stage left, 2'-0" upstage`,
];

test("a set of five walls with an arch, a niche and a platform is drawn by mouse, undone, and there after a reload", async ({
  page,
}) => {
  await openDesk(page);
  await drawSet(page, byMouse);
  expect(await onThePlan(page)).toEqual(DRAWN);
  // The picture has followed: the arch's curve and the platform's edge are in it.
  await expect(page.locator("#picture-drawing [data-stroke^='own.W3.arch']").first()).toBeAttached();
  await expect(page.locator("#picture-drawing [data-stroke^='own.P1.1.foot']").first()).toBeAttached();
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

const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

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
  const keys = page.keyboard;
  /** Goes with Tab to something that can be pressed or chosen. */
  const reach = async (name: string) => {
    await button(page, name).focus();
    await keys.press("Enter");
  };
  const plan = page.getByRole("application", { name: /^Ground plan/ });
  /** The pencil goes by steps of a foot from where it is held; from nowhere its first press only shows it. */
  const go = async ([fromX, fromY]: Feet, [toX, toY]: Feet) => {
    const press = async (key: string, times: number) => {
      for (let i = 0; i < times; i++) await keys.press(key);
    };
    await press(toX < fromX ? "ArrowLeft" : "ArrowRight", Math.abs(toX - fromX));
    await press(toY < fromY ? "ArrowDown" : "ArrowUp", Math.abs(toY - fromY));
    await keys.press("Enter");
  };
  await page.getByLabel("Steps of").selectOption({ label: `1'-0"` });
  await reach("Draw");
  await reach("Draw walls");
  await expect(plan).toBeFocused();
  await keys.press("ArrowUp");
  let from: Feet = [0, 12];
  for (const corner of CORNERS) {
    await go(from, corner);
    from = corner;
  }
  await keys.press("Escape");
  await keys.press("Escape");
  await reach("Put in an opening");
  await page.getByLabel("Kind").focus();
  await keys.type("Arch");
  await plan.focus();
  // The first wall long enough, then upstage to the next ones; each opening begins in the middle.
  for (let i = 0; i < 3; i++) await keys.press("ArrowUp");
  await keys.press("Enter");
  await page.getByLabel("Kind").focus();
  await keys.type("Niche");
  await plan.focus();
  for (let i = 0; i < 2; i++) await keys.press("ArrowDown");
  await keys.press("Enter");
  await keys.press("Escape");
  await reach("Build a platform");
  await keys.press("ArrowUp");
  from = [0, 12];
  for (const corner of PLATFORM) {
    await go(from, corner);
    from = corner;
  }
  await keys.press("Escape");
  await keys.press("Escape");
  await reach("On the plan");
  expect(await page.locator(".draft-list li").allTextContents()).toEqual(DRAWN);
  await keys.press("Control+z");
  await expect(page.locator(".draft-list li", { hasText: "Platform" })).toHaveCount(0);
  await keys.press("Control+Shift+z");
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
