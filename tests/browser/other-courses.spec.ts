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

test("dragging a mark on a plan of 200 walls draws neither drawing again", async ({ page }) => {
  await page.goto(`${course.address}/practise/many`);
  await page.locator(".sheet[data-opened=true]").waitFor();
  const start = await toPage(page, [1, 1]);
  await page.mouse.click(start.x, start.y);
  await page.evaluate(() => {
    const changed: string[] = [];
    Object.assign(window, { changed });
    const watch = new MutationObserver((all) => changed.push(...all.map(({ target }) => target.nodeName)));
    for (const id of ["picture-drawing", "plan-drawing"]) {
      const drawing = document.getElementById(id);
      if (drawing) watch.observe(drawing, { attributes: true, childList: true, characterData: true, subtree: true });
    }
  });
  await page.mouse.down();
  for (let i = 0; i < 40; i++) await page.mouse.move(start.x + Math.sin(i / 9) * 120, start.y - i);
  await page.mouse.up();
  const moved = await toPage(page, [1, 1]);
  expect(moved).toEqual(start);
  expect(await page.evaluate(() => (window as unknown as { changed: string[] }).changed)).toEqual([]);
  const transform = await page.locator("[data-pending] > g").last().getAttribute("style");
  expect(transform).toContain("translate(");
});
