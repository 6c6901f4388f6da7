import { expect, test } from "@playwright/test";
import { centreVanishingPoint } from "@/lib/perspective/vanishing-point";
import { courseExercise, openExercise, toPage, truePlaces } from "./drive";

const exercise = courseExercise("points-on-the-floor");
const [first = [0, 0] as const] = truePlaces(exercise);
const FOOT = 0.3048;

async function kept(page: import("@playwright/test").Page) {
  return page.evaluate((id) => JSON.parse(localStorage.getItem(`plasterline.attempt.${id}`) ?? "{}"), exercise.id);
}

test("a mark is picked up with one tap and put down with the next, without a drag", async ({ page }) => {
  await openExercise(page, exercise.id);
  const from = await toPage(page, first);
  await page.mouse.click(from.x, from.y);
  await page.mouse.click(from.x + 1, from.y);
  await expect(page.locator(".held-ring")).toBeAttached();
  const to = await toPage(page, [first[0] + 1, first[1] + 0.5]);
  await page.mouse.move(to.x, to.y);
  await page.mouse.click(to.x, to.y);
  await expect(page.locator(".held-ring")).not.toBeAttached();
  const { pending } = await kept(page);
  // A pixel of this pane is about a quarter of a millimetre of paper, 12 mm of the stage.
  expect(Math.abs(pending[0] - first[0] - 1)).toBeLessThan(0.02);
  expect(Math.abs(pending[1] - first[1] - 0.5)).toBeLessThan(0.02);
});

test("a dragged mark keeps its distance from the finger, and undo takes moves back one by one", async ({ page }) => {
  await openExercise(page, exercise.id);
  const from = await toPage(page, first);
  await page.mouse.click(from.x, from.y);
  const { pending: before } = await kept(page);
  await page.mouse.move(from.x + 6, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 106, from.y - 40, { steps: 5 });
  await page.mouse.up();
  const { pending: after } = await kept(page);
  const placed = await toPage(page, after);
  expect(Math.abs(placed.x - from.x - 100)).toBeLessThan(1.1);
  expect(Math.abs(placed.y - from.y + 40)).toBeLessThan(1.1);
  await page.getByRole("button", { name: "Undo" }).click();
  expect((await kept(page)).pending).toEqual(before);
  await page.getByRole("button", { name: "Undo" }).click();
  expect((await kept(page)).pending).toBeNull();
});

test("the straightedge catches the CVP and a tick, by two taps", async ({ page }) => {
  await openExercise(page, exercise.id);
  await page.getByRole("button", { name: "Straightedge" }).click();
  const cvp = centreVanishingPoint(exercise.viewer);
  const [a, b] = [await toPage(page, [cvp[0], cvp[1]]), await toPage(page, [5 * FOOT, 0])];
  await page.mouse.click(a.x + 4, a.y - 3);
  await page.mouse.click(b.x - 3, b.y + 3);
  const corner = await toPage(page, [-exercise.stage.opening.width / 2, 0]);
  const cross = await toPage(page, [2.5 * FOOT, cvp[1] / 2]);
  // A second line by drag, from a corner to a free end that crosses the first.
  await page.mouse.move(corner.x + 3, corner.y);
  await page.mouse.down();
  await page.mouse.move(cross.x + 40, cross.y - 7, { steps: 4 });
  await page.mouse.up();
  const { lines } = await kept(page);
  expect(lines).toHaveLength(2);
  expect(lines[0].from).toEqual([cvp[0], cvp[1]]);
  expect(lines[0].to[0]).toBeCloseTo(5 * FOOT, 9);
  expect(lines[0].to[1]).toBe(0);
  expect(lines[0].through).toEqual(["the CVP", `the rule's 5'-0" stage left`]);
  expect(lines[1].through[0]).toBe("the opening's foot, stage right");
  expect(lines[1].through[1]).toBe("a free end");
  await page.getByRole("button", { name: "Rub out line 1" }).click();
  await expect(page.locator("[data-blue]")).toHaveCount(1);
  await page.getByRole("button", { name: "Rub all out" }).click();
  await expect(page.locator("[data-blue]")).toHaveCount(0);
});

test("wheel, keys and presses zoom and pan; the sheet's scale is always told", async ({ page }) => {
  await openExercise(page, exercise.id);
  const shown = page.locator(".shown-at");
  const whole = await shown.textContent();
  const at = await toPage(page, first);
  await page.mouse.move(at.x, at.y);
  await page.mouse.wheel(0, -400);
  await expect(shown).not.toHaveText(whole ?? "");
  const still = await toPage(page, first);
  expect(Math.hypot(still.x - at.x, still.y - at.y)).toBeLessThan(2);
  await page.getByRole("application", { name: /^Picture/ }).focus();
  await page.keyboard.press("0");
  await expect(shown).toHaveText(whole ?? "");
  await page.keyboard.press("+");
  await expect(shown).not.toHaveText(whole ?? "");
  await page.getByRole("button", { name: "Whole" }).click();
  await expect(shown).toHaveText(whole ?? "");
});

test("the layout the student chose is there the next time, and stacked drawings share centre line and scale", async ({
  page,
}) => {
  await openExercise(page, exercise.id);
  await expect(page.locator(".sheet")).toHaveAttribute("data-layout", "beside");
  await page.getByRole("button", { name: "Put the plan under the picture" }).click();
  await page.reload();
  await expect(page.locator(".sheet")).toHaveAttribute("data-layout", "stacked");
  await page.locator("#plan-drawing[transform]").waitFor();
  const lines = await page.evaluate(() =>
    ["#picture-drawing", "#plan-drawing"].map((id) => {
      const group = document.querySelector(id);
      const [k = 0, , , , x = 0] =
        group
          ?.getAttribute("transform")
          ?.match(/-?[\d.]+(?:e-?\d+)?/g)
          ?.map(Number) ?? [];
      return { perMetre: k / Number(group?.getAttribute("data-ratio")), centre: x };
    }),
  );
  expect(lines[0]?.centre).toBeCloseTo(lines[1]?.centre ?? 0, 3);
  expect(lines[0]?.perMetre).toBeCloseTo(lines[1]?.perMetre ?? 0, 6);
});

test.describe("under a finger", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("the magnifier shows what the finger hides, and two fingers leave the mark where it was", async ({ page }) => {
    await openExercise(page, exercise.id);
    const at = await toPage(page, first);
    const touch = await page.context().newCDPSession(page);
    const send = (type: string, points: { x: number; y: number; id: number }[]) =>
      touch.send("Input.dispatchTouchEvent", { type: type as "touchStart", touchPoints: points });
    await send("touchStart", [{ ...at, id: 1 }]);
    await expect(page.locator(".magnifier")).toBeVisible();
    await send("touchEnd", []);
    const { pending } = await kept(page);
    const shown = page.locator(".shown-at");
    const whole = await shown.textContent();
    const [p, q] = [
      { x: at.x - 60, y: at.y - 40, id: 1 },
      { x: at.x + 30, y: at.y - 40, id: 2 },
    ];
    await send("touchStart", [p]);
    await send("touchStart", [p, q]);
    for (let i = 1; i <= 6; i++)
      await send("touchMove", [
        { ...p, x: p.x - 8 * i },
        { ...q, x: q.x + 8 * i },
      ]);
    await send("touchEnd", []);
    await expect(shown).not.toHaveText(whole ?? "");
    expect((await kept(page)).pending).toEqual(pending);
  });
});
