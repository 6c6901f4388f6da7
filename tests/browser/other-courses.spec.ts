import { expect, test } from "@playwright/test";
import { toPage } from "./drive";
import { exerciseText, manyWalls, type OtherCourse, serveCourse } from "./other-course";

let course: OtherCourse;

test.beforeAll(async () => {
  course = await serveCourse({
    "floor/rule.json": exerciseText("rule", {
      task: { kind: "plan-to-picture", marks: ["Q.foot"], dimensions: "rule" },
    }),
    "floor/torn.json": exerciseText("torn", { level: 9 }),
    "walls/many.json": exerciseText("many", manyWalls(200)),
  });
});
test.afterAll(async () => course.close());

test("an unknown exercise and a broken file get plain pages that say what to do", async ({ page }) => {
  const unknown = await page.goto(`${course.address}/practise/nowhere`);
  expect(unknown?.status()).toBe(404);
  await expect(page.getByRole("heading", { name: "There is no such sheet" })).toBeVisible();
  await page.goto(`${course.address}/practise/torn`);
  await expect(page.getByRole("heading", { name: "This sheet cannot be read" })).toBeVisible();
  await expect(page.getByText("floor/torn.json")).toBeVisible();
  await expect(page.getByText("/level")).toBeVisible();
  await page.getByRole("link", { name: "To the list of exercises" }).click();
  await expect(page.getByText("Sheets that cannot be read")).toBeVisible();
});

test("without JavaScript the page says what it needs", async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${course.address}/practise/rule`);
  await expect(page.getByRole("heading", { name: "This page needs JavaScript" })).toBeVisible();
  await context.close();
});

test("a place that is to be read is not printed; the rule reads it with the right edge only", async ({ page }) => {
  await page.goto(`${course.address}/practise/rule`);
  await page.locator(".sheet[data-opened=true]").waitFor();
  await expect(page.getByText("Read its place on the plan with the scale rule.")).toBeVisible();
  await expect(page.locator(".plan-place")).not.toContainText(`6'-0"`);
  await expect(page.locator("[data-aloud=step]")).not.toContainText(`6'-0"`);
  const rule = page.getByRole("application", { name: /^Scale rule/ });
  await rule.focus();
  await page.keyboard.press("Shift+ArrowUp");
  // The number 6 of the right edge stands over the point's offset; of the 1/2" edge it stands twice as far.
  const far = async (edge: string) => {
    await page.getByLabel("Rule's edge").selectOption({ label: edge });
    return page.evaluate(() => {
      const letters = [...document.querySelectorAll(".scale-rule text")];
      const place = (words: string) => {
        const text = letters.find((each) => each.textContent === words);
        const box = text?.getBoundingClientRect();
        return box ? box.left + box.width / 2 : Number.NaN;
      };
      return place("10") - place("0");
    });
  };
  const [right, twice] = [await far(`1/4" = 1'-0"`), await far(`1/2" = 1'-0"`)];
  expect(twice / right).toBeCloseTo(2, 1);
});

test("dragging a mark on a plan of 200 walls keeps its frames, the processor slowed four times", async ({ page }) => {
  test.slow();
  await page.goto(`${course.address}/practise/many`);
  await page.locator(".sheet[data-opened=true]").waitFor();
  const start = await toPage(page, [1, 1]);
  await page.mouse.click(start.x, start.y);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  // The script's own share of a frame: from the pointer's event to the end of the work it made.
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { dragTimes: times });
    const pane = document.querySelector('[data-plane="picture"] svg');
    let began = 0;
    window.addEventListener(
      "pointermove",
      () => {
        began = performance.now();
      },
      { capture: true },
    );
    pane?.addEventListener("pointermove", () =>
      queueMicrotask(() =>
        requestAnimationFrame(() => {
          const channel = new MessageChannel();
          channel.port1.onmessage = () => times.push(performance.now() - began);
          channel.port2.postMessage(null);
        }),
      ),
    );
  });
  await page.mouse.down();
  for (let i = 0; i < 80; i++) await page.mouse.move(start.x + Math.sin(i / 9) * 120, start.y - i);
  await page.mouse.up();
  const times = await page.evaluate(() => (window as unknown as { dragTimes: number[] }).dragTimes);
  const sorted = [...times].sort((a, b) => a - b);
  const p95 = sorted[Math.floor(sorted.length * 0.95)] ?? Number.POSITIVE_INFINITY;
  test.info().annotations.push({ type: "p95 ms from event to painted frame", description: p95.toFixed(1) });
  console.log(`drag, 200 walls, slowed four times: p95 ${p95.toFixed(1)} ms of ${times.length} frames`);
  expect(times.length).toBeGreaterThan(20);
});
