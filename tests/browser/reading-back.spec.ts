import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { centreVanishingPoint } from "@/lib/perspective/vanishing-point";
import { courseExercise, openExercise, planPlaces, toPage, truePlaces } from "./drive";
import { exerciseText, serveCourse } from "./other-course";
import { pendingPlace, steer, tabTo } from "./steer";

const exercise = courseExercise("room-from-its-picture");
const places = planPlaces(exercise);
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

async function expectPerfect(page: Page, count: number) {
  await expect(page.getByRole("heading", { name: "Score 100 of 100" })).toBeVisible();
  await expect(page.getByText(`${count} of ${count} marks lie within what a hand is allowed.`)).toBeVisible();
  await expect(page.getByRole("table").getByRole("row")).toHaveCount(count + 1);
}

/** What is lettered on the plan, but for the sign of the centre line, a C and an L. */
async function planLetters(page: Page): Promise<string[]> {
  const all = await page.locator("#plan-drawing text").allTextContents();
  return all.filter((text, i) => !(text === "C" && all[i + 1] === "L") && !(text === "L" && all[i - 1] === "C"));
}

test("a perfect reading by mouse scores 100, and the plan fills with what was read", async ({ page }) => {
  await openExercise(page, exercise.id);
  await expect(page.getByText("Read the foot of A back on to the plan: it is lit in the picture.")).toBeVisible();
  for (const [i, place] of places.entries()) {
    const letter = exercise.task.marks[i]?.charAt(0) ?? "";
    expect(await planLetters(page)).not.toContain(letter);
    const { x, y } = await toPage(page, place, "plan");
    await page.mouse.click(x, y);
    await page.getByRole("button", { name: "Set it down" }).click();
    await expect(page.locator(".notes-where")).toContainText("Right:");
    await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
    if (i + 1 < places.length) await expect.poll(() => planLetters(page)).toContain(letter);
  }
  await expectPerfect(page, places.length);
  await expect(page.getByRole("img", { name: /^The plan as you read it, with/ })).toBeVisible();
  await expect(page.getByRole("columnheader", { name: "In the picture" })).toBeVisible();
});

test("a perfect reading by keys alone scores 100, its places told from the centre line and the plaster line", async ({
  page,
}) => {
  test.slow();
  const furniture = courseExercise("where-the-furniture-stood");
  await openExercise(page, furniture.id);
  const plan = page.getByRole("application", { name: /^Plan/ });
  const targets = planPlaces(furniture);
  for (const [i, place] of targets.entries()) {
    await tabTo(page, () => plan.evaluate((element) => element === document.activeElement));
    await page.keyboard.press("ArrowUp");
    await steer(page, await pendingPlace(page, furniture.id), place, furniture.scaleRatio);
    if (i === 0)
      await expect(page.locator("[data-aloud=place]")).toHaveText(
        /^Mark 2700 mm stage right of the centre line, 19[45]\d mm upstage of the plaster line\.$/,
      );
    await page.keyboard.press("Enter");
    await expect(page.locator(".notes-where")).toContainText("Right:");
    await page.keyboard.press("Enter");
  }
  await expectPerfect(page, targets.length);
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("a perfect reading by touch scores 100; the picture can be put away", async ({ page }) => {
    await openExercise(page, exercise.id);
    const high = async () => (await page.locator(".plan-keys").boundingBox())?.height ?? 0;
    const before = await high();
    const laid = await page.locator("#plan-drawing").getAttribute("transform");
    await page.getByRole("button", { name: "Picture", exact: true }).tap();
    await expect(page.locator("#picture-drawing")).toBeHidden();
    expect(await high()).toBeGreaterThan(before * 1.3);
    await page.getByRole("button", { name: "Picture", exact: true }).tap();
    // The plan is where it was, once it has been laid out anew.
    await expect(page.locator("#plan-drawing")).toHaveAttribute("transform", laid ?? "");
    for (const place of places) {
      const { x, y } = await toPage(page, place, "plan");
      await page.touchscreen.tap(x, y);
      await page.getByRole("button", { name: "Set it down" }).tap();
      await expect(page.locator(".notes-where")).toContainText("Right:");
      await page.getByRole("button", { name: /^(Next:|See the whole)/ }).tap();
    }
    await expectPerfect(page, places.length);
  });
});

test("two rooms that differ only in what is to be read show the same empty plan, letter for letter", async ({
  page,
}) => {
  const room = (corners: Record<string, readonly [number, number]>) => ({
    unit: "reading",
    plan: {
      corners,
      walls: [
        { id: "W1", from: "A", to: "B", height: 12, thickness: 0.5 },
        {
          id: "W2",
          from: "B",
          to: "C",
          height: 12,
          openings: [{ id: "door", kind: "door", at: 1, width: 3, head: 7 }],
        },
      ],
      platforms: [{ id: "P1", outline: [corners.A, corners.B, corners.C], height: 1 }],
    },
    task: { kind: "picture-to-plan", marks: ["A.foot", "B.foot", "C.foot"] },
  });
  const course = await serveCourse({
    "reading/one.json": exerciseText("one", room({ A: [-12, 3], B: [-8, 12], C: [7, 12] })),
    "reading/two.json": exerciseText("two", room({ A: [-9, 6], B: [-3, 15], C: [11, 8] })),
  });
  try {
    const [one = "", two = ""] = await Promise.all(
      ["one", "two"].map(async (id) => {
        const tab = await page.context().newPage();
        await tab.goto(`${course.address}/practise/${id}`);
        await tab.locator(".sheet[data-opened=true]").waitFor();
        await tab.locator("#plan-drawing[transform]").waitFor();
        const plan = await tab.locator(".plan-place").evaluate((element) => element.outerHTML);
        const words = (await tab.locator(".notes").textContent()) ?? "";
        return `${plan} ${words.replace(/The picture shows it .* by the rule\./, "")}`;
      }),
    );
    expect(one).toContain("plan.stage.plaster-line");
    expect(two).toBe(one);
  } finally {
    await course.close();
  }
});

test("a miss is corrected on the plan and shown in the picture, and the eye it was read from is told", async ({
  page,
}) => {
  await openExercise(page, exercise.id);
  for (const [i, [x, y]] of places.entries()) {
    const at = await toPage(page, [x, y + 0.9], "plan");
    await page.mouse.click(at.x, at.y);
    await page.getByRole("button", { name: "Set it down" }).click();
    await expect(page.locator("#plan-drawing .true-mark")).toHaveCount(1);
    await expect(page.locator("#plan-drawing .off-line")).toHaveCount(1);
    await expect(page.locator("#picture-drawing .mark-ring")).toHaveCount(1);
    await expect(page.locator(".notes-where")).toContainText("high");
    if (i > 0) await expect(page.locator("#plan-drawing [data-stroke^='true.']").first()).toBeAttached();
    await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
  }
  await expect(page.getByText(/^In depth you are out by 2'-11".*mostly too far upstage\.$/)).toBeVisible();
});

test("the straightedge runs a ray through a corner of the picture, and lines on the plan", async ({ page }) => {
  await openExercise(page, exercise.id);
  await page.getByRole("button", { name: "Straightedge" }).click();
  const [X, Z] = centreVanishingPoint(exercise.viewer);
  const cvp = await toPage(page, [X, Z]);
  const seen = await toPage(page, truePlaces(exercise)[0] ?? [0, 0]);
  await page.mouse.click(cvp.x + 3, cvp.y);
  await page.mouse.click(seen.x - 3, seen.y + 2);
  await expect(page.getByText("1. the CVP to the foot of A")).toBeVisible();
  const [x, y] = places[0] ?? [0, 0];
  const FAR = 1.5;
  for (const [from, to] of [
    [
      [x, 0],
      [x, y + FAR],
    ],
    [
      [x - FAR, y],
      [x + FAR, y],
    ],
  ] as const) {
    const [a, b] = [await toPage(page, from, "plan"), await toPage(page, to, "plan")];
    await page.mouse.move(a.x, a.y);
    await page.mouse.down();
    await page.mouse.move(b.x, b.y, { steps: 4 });
    await page.mouse.up();
  }
  await expect(page.locator("#plan-drawing [data-blue]")).toHaveCount(2);
  await expect(page.getByText(/^2\. Plan: the rule's 13'-0" stage right to/)).toBeVisible();
});

for (const colorScheme of ["light", "dark"] as const) {
  for (const viewport of [
    { width: 1366, height: 768 },
    { width: 390, height: 844 },
  ]) {
    test(`axe finds nothing in a reading, ${colorScheme}, ${viewport.width} wide`, async ({ browser }) => {
      test.slow();
      const context = await browser.newContext({ colorScheme, viewport });
      const page = await context.newPage();
      const expectNothingFound = async (where: string) => {
        const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
        expect(violations.map(({ id, nodes }) => `${where}: ${id} at ${nodes.map((node) => node.target)}`)).toEqual([]);
      };
      await openExercise(page, exercise.id);
      await expectNothingFound("empty");
      for (const [i, [x, y]] of places.entries()) {
        const at = await toPage(page, [x + 0.3, y + 0.5], "plan");
        await page.mouse.click(at.x, at.y);
        if (i === 1) await expectNothingFound("placed");
        await page.getByRole("button", { name: "Set it down" }).click();
        if (i === 1) await expectNothingFound("corrected");
        await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
      }
      await expectNothingFound("result");
      await context.close();
    });
  }
}
