import { type BrowserContextOptions, expect, type Locator, type Page } from "@playwright/test";
import { FOOT_M } from "@/lib/measure/length";
import { toPage } from "./drive";

/** A place of the plan, feet. */
export type Feet = readonly [x: number, y: number];

/** A set of five walls from stage right round to stage left. */
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

export const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

export async function openDesk(page: Page) {
  await page.goto("/draft");
  await page.locator(".draft-board[data-state=keeping]").waitFor();
}

export function button(page: Page, name: string): Locator {
  return page.getByRole("button", { name, exact: true });
}

/** A place of the plan on the page. */
export async function place(page: Page, [x, y]: Feet) {
  return toPage(page, [x * FOOT_M, y * FOOT_M], "plan");
}

/** Presses a place of the page, by mouse or finger. */
export type PressAt = (page: Page, at: { readonly x: number; readonly y: number }) => Promise<void>;

export const byMouse: PressAt = async (page, { x, y }) => {
  await page.mouse.move(x, y, { steps: 3 });
  await page.mouse.down();
  await page.mouse.up();
};
export const byTouch: PressAt = (page, { x, y }) => page.touchscreen.tap(x, y);

/** Drags from one place of the page to another. */
export type DragTo = (page: Page, from: { x: number; y: number }, to: { x: number; y: number }) => Promise<void>;

export const dragByMouse: DragTo = async (page, from, to) => {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
  await page.mouse.up();
};
export const dragByTouch: DragTo = async (page, from, to) => {
  const client = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", share: number) =>
    client.send("Input.dispatchTouchEvent", {
      type,
      touchPoints:
        type === "touchEnd"
          ? []
          : [{ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share, id: 0 }],
    });
  await touch("touchStart", 0);
  for (let i = 1; i <= 6; i++) await touch("touchMove", i / 6);
  await touch("touchEnd", 1);
  await client.detach();
};

/** Draws the five walls with an arch, a niche and a platform. */
export async function drawSet(page: Page, press: PressAt) {
  const at = async (feet: Feet) => press(page, await place(page, feet));
  await button(page, "Draw").click();
  await button(page, "Draw walls").click();
  for (const corner of CORNERS) await at(corner);
  await button(page, "End the run").click();
  await button(page, "Put the pencil down").click();
  await button(page, "Put in an opening").click();
  await page.getByLabel("Kind").selectOption("arch");
  await at([0, 18]);
  await page.getByLabel("Kind").selectOption("niche");
  await at([-12, 7]);
  await button(page, "Put the pencil down").click();
  await button(page, "Build a platform").click();
  for (const corner of PLATFORM) await at(corner);
  await button(page, "Close the platform").click();
  await button(page, "Put the pencil down").click();
}

/** Draws the same with the keyboard and nothing else. */
export async function drawSetByKeys(page: Page) {
  const keys = page.keyboard;
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
  await enter(page, "Draw");
  await enter(page, "Draw walls");
  await expect(plan).toBeFocused();
  await keys.press("ArrowUp");
  let from: Feet = [0, 12];
  for (const corner of CORNERS) {
    await go(from, corner);
    from = corner;
  }
  await keys.press("Escape");
  await keys.press("Escape");
  await enter(page, "Put in an opening");
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
  await enter(page, "Build a platform");
  await keys.press("ArrowUp");
  from = [0, 12];
  for (const corner of PLATFORM) {
    await go(from, corner);
    from = corner;
  }
  await keys.press("Escape");
  await keys.press("Escape");
}

/** Goes by keys to something that can be pressed, and presses it. */
export async function enter(page: Page, name: string) {
  await button(page, name).focus();
  await page.keyboard.press("Enter");
}

/** What the list says is on the plan. */
export async function onThePlan(page: Page): Promise<string[]> {
  await button(page, "On the plan").click();
  return page.locator(".draft-list li").allTextContents();
}

export const DRAWN = [
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
