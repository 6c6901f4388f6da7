import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import { courseExercise, toPage, truePlaces } from "./drive";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const SIZES = [
  { width: 1920, height: 1080 },
  { width: 1280, height: 720 },
];

async function open(page: Page, id: string, step?: number) {
  await page.goto(`/demonstrate/${id}${step ? `#step=${step}` : ""}`);
  await page.locator("#picture-drawing[transform]").waitFor({ state: "attached" });
  await page.locator(`.demonstration[data-step="${step ?? 1}"]`).waitFor();
}

const main = (page: Page) => page.locator(".demonstration");
const sentence = (page: Page) => page.locator(".demonstration-sentence");

/** Widths of the lines on the sheet and font sizes of everything that is read, pixels of the screen. */
function measure(page: Page) {
  return page.evaluate(() => {
    const widths = (group: string) =>
      [...document.querySelectorAll(`${group} path.stroke`)].map((line) =>
        Number.parseFloat(getComputedStyle(line).strokeWidth),
      );
    const letters = [...document.querySelectorAll<SVGTextElement>(".pane text")].map((text) => {
      const matrix = text.getScreenCTM();
      return Number.parseFloat(getComputedStyle(text).fontSize) * (matrix ? Math.hypot(matrix.a, matrix.b) : 0);
    });
    const words = [...document.querySelectorAll(".demonstration-words :is(h2, p, span):not(.aloud)")].map((element) =>
      Number.parseFloat(getComputedStyle(element).fontSize),
    );
    const box = document.querySelector(".demonstration-words");
    const spilt = box ? box.scrollHeight - box.clientHeight : 0;
    return { set: widths(".on-set"), blue: widths(".on-construction"), letters, words, spilt };
  });
}

for (const viewport of SIZES) {
  test(`a whole demonstration by a remote's keys at ${viewport.width} by ${viewport.height}, readable from the last row`, async ({
    page,
  }) => {
    test.slow();
    await page.setViewportSize(viewport);
    const exercise = courseExercise("raking-wall");
    const steps = demonstrationSteps(exercise);
    await open(page, exercise.id);
    for (const step of steps) {
      await expect(main(page)).toHaveAttribute("data-step", String(step.number));
      await expect(sentence(page)).toHaveText(step.sentence);
      const { set, blue, letters, words, spilt } = await measure(page);
      if (!step.shown.finished) for (const width of set) expect(width).toBeGreaterThanOrEqual(4);
      for (const width of blue) expect(width).toBeGreaterThanOrEqual(4);
      for (const width of [...set, ...blue]) expect(width).toBeLessThanOrEqual(6);
      for (const size of [...letters, ...words]) expect(size).toBeGreaterThanOrEqual(31.9);
      expect(spilt, `step ${step.number}: its words need no scrolling`).toBeLessThanOrEqual(1);
      await page.keyboard.press("PageDown");
    }
    await expect(main(page)).toHaveAttribute("data-step", String(steps.length));
    for (let i = steps.length; i > steps.length - 5; i--) await page.keyboard.press("PageUp");
    await expect(main(page)).toHaveAttribute("data-step", String(steps.length - 5));
    expect(new URL(page.url()).hash).toBe(`#step=${steps.length - 5}`);
    await page.reload();
    await expect(main(page)).toHaveAttribute("data-step", String(steps.length - 5));
  });
}

test("a blank screen is black and whole, and a remote's key lights it on the same step", async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await open(page, "raking-wall", 12);
  await page.keyboard.press("b");
  const blank = page.locator(".blank-screen");
  await expect(blank).toHaveCSS("background-color", "rgb(0, 0, 0)");
  expect(await blank.boundingBox()).toEqual({ x: 0, y: 0, width: 1280, height: 720 });
  await page.keyboard.press("PageDown");
  await expect(blank).toHaveCount(0);
  await page.keyboard.press(".");
  await blank.click();
  await expect(main(page)).toHaveAttribute("data-step", "12");
});

test("the ring follows the pointer, and the pencil draws over the sheet and stays with its step", async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await open(page, "raking-wall", 12);
  await page.keyboard.press("r");
  await page.mouse.move(400, 300);
  const ring = await page.locator(".pointer-ring").boundingBox();
  expect(ring).not.toBeNull();
  expect((ring?.x ?? 0) + (ring?.width ?? 0) / 2).toBeCloseTo(400, 0);
  expect((ring?.y ?? 0) + (ring?.height ?? 0) / 2).toBeCloseTo(300, 0);
  expect(ring?.width).toBeGreaterThan(90);
  await page.keyboard.press("p");
  await page.mouse.move(200, 250);
  await page.mouse.down();
  await page.mouse.move(300, 300, { steps: 5 });
  await page.mouse.up();
  await page.keyboard.press("p");
  await page.mouse.move(900, 200);
  await page.mouse.down();
  await page.mouse.move(960, 260, { steps: 5 });
  await page.mouse.up();
  await expect(page.locator(".free-line")).toHaveCount(2);
  await expect(page.locator("[data-free=red]")).toHaveCSS("stroke-width", "5px");
  await page.keyboard.press("PageDown");
  await expect(page.locator(".free-line")).toHaveCount(0);
  await page.keyboard.press("PageUp");
  await expect(page.locator(".free-line")).toHaveCount(2);
  await page.keyboard.press("u");
  await expect(page.locator("[data-free=blue]")).toHaveCount(0);
  await page.keyboard.press("x");
  await expect(page.locator(".free-line")).toHaveCount(0);
});

test("you try: guesses called out are set down, and the true point shown beside them with what they mean", async ({
  page,
}) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  const exercise = courseExercise("raking-wall");
  await open(page, exercise.id);
  await page.keyboard.press("t");
  await expect(page.locator(".demonstration-title")).toHaveText("The foot of A");
  const [truth = [0, 0]] = truePlaces(exercise);
  const offMm = 8;
  const high = await toPage(page, [truth[0], truth[1] + (offMm * exercise.scaleRatio) / 1000]);
  await page.mouse.click(high.x, high.y);
  await page.getByLabel("Initials").fill("KO");
  const aside = await toPage(page, [truth[0] + 1, truth[1]]);
  await page.mouse.click(aside.x, aside.y);
  await expect(page.locator("[data-guess]")).toHaveCount(2);
  await expect(page.locator("[data-true]")).toHaveCount(0);
  await page.keyboard.press("PageDown");
  await expect(page.locator("[data-true]")).toHaveCount(1);
  await expect(page.getByRole("button", { name: /^KO: \d+\.\d mm off$/ })).toBeVisible();
  const first = page.getByRole("button", { name: /^1: / });
  const said = Number.parseFloat(((await first.textContent()) ?? "").replace("1: ", ""));
  // A click falls on a whole pixel, which is less than a quarter of a millimetre of paper here.
  expect(Math.abs(said - offMm)).toBeLessThan(0.25);
  await first.click();
  await expect(page.locator("[data-verdict]")).toContainText("mm high");
  await expect(page.locator("[data-verdict]")).toContainText("upstage of the plaster line instead of");
  await page.keyboard.press("PageDown");
  await expect(page.locator("[data-guess]")).toHaveCount(0);
});

test("the notes window follows along, presses on, and survives a reload of either window", async ({
  page,
  context,
}) => {
  const exercise = courseExercise("raking-wall");
  const steps = demonstrationSteps(exercise);
  await open(page, exercise.id, 10);
  const [notes] = await Promise.all([context.waitForEvent("page"), page.keyboard.press("n")]);
  const now = notes.getByRole("region", { name: "On the screen now" });
  await expect(now).toContainText(steps[9]?.sentence ?? "");
  await expect(notes.getByRole("status")).toContainText("The demonstration is open");
  await page.keyboard.press("PageDown");
  await expect(now).toContainText(steps[10]?.sentence ?? "");
  await notes.getByRole("button", { name: "On" }).click();
  await expect(main(page)).toHaveAttribute("data-step", "12");
  await notes.keyboard.press("PageUp");
  await expect(main(page)).toHaveAttribute("data-step", "11");
  await notes.getByRole("button", { name: "Blank" }).click();
  await expect(page.locator(".blank-screen")).toHaveCount(1);
  await notes.getByRole("button", { name: "Light the screen" }).click();
  await expect(page.locator(".blank-screen")).toHaveCount(0);
  await notes.reload();
  await expect(now).toContainText(steps[10]?.sentence ?? "");
  await page.reload();
  await expect(main(page)).toHaveAttribute("data-step", "11");
  await notes.getByRole("button", { name: "On" }).click();
  await expect(main(page)).toHaveAttribute("data-step", "12");
  const { violations } = await new AxeBuilder({ page: notes }).withTags(WCAG).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
  await page.close();
  await expect(notes.getByRole("status")).toContainText("not open in this browser");
});

test("the demonstration on paper has a page for each step, and the handout eight steps to a page", async ({
  request,
}) => {
  const exercise = courseExercise("raking-wall");
  const steps = demonstrationSteps(exercise);
  const pagesOf = async (address: string) => {
    const response = await request.get(address);
    expect(response.headers()["content-type"]).toBe("application/pdf");
    return ((await response.body()).toString("latin1").match(/\/Type \/Page\b(?!s)/g) ?? []).length;
  };
  expect(await pagesOf(`/demonstrate/${exercise.id}/steps.pdf`)).toBe(steps.length);
  expect(await pagesOf(`/demonstrate/${exercise.id}/handout?paper=letter`)).toBe(Math.ceil(steps.length / 8));
  expect((await request.get(`/demonstrate/${exercise.id}/handout?paper=napkin`)).status()).toBe(400);
  expect((await request.get("/demonstrate/no-such-thing/steps.pdf")).status()).toBe(404);
});

test("an unknown exercise gets the plain page that says so", async ({ page }) => {
  for (const address of ["/demonstrate/no-such-thing", "/demonstrate/no-such-thing/notes"]) {
    expect((await page.goto(address))?.status()).toBe(404);
    await expect(page.getByRole("link", { name: /list of exercises/ })).toBeVisible();
  }
});

for (const colorScheme of ["light", "dark"] as const)
  for (const viewport of [...SIZES, { width: 1366, height: 768 }, { width: 390, height: 844 }])
    test(`axe finds nothing, ${colorScheme}, ${viewport.width} wide, and nothing runs off the screen`, async ({
      browser,
    }) => {
      test.slow();
      const context = await browser.newContext({ colorScheme, viewport, reducedMotion: "reduce" });
      const page = await context.newPage();
      const found = async (where: string) => {
        const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
        return violations.map(({ id, nodes }) => `${where}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`);
      };
      await open(page, "the-upper-room");
      expect(await found("plan")).toEqual([]);
      for (const layout of ["as it is", "changed"]) {
        await open(page, "the-upper-room", 40);
        if (layout === "changed") await page.keyboard.press("l");
        const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(over).toBeLessThanOrEqual(0);
        expect(await found(layout)).toEqual([]);
        await page.keyboard.press("t");
        expect(await found("you try")).toEqual([]);
      }
      await page.keyboard.press("?");
      expect(await found("keys")).toEqual([]);
      await context.close();
    });
