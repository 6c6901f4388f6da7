import { expect, type Page, test } from "@playwright/test";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { HINT_COST } from "@/lib/grading/score";
import { courseExercise, openExercise, type Place, toPage, truePlaces } from "./drive";

/** Where a student puts a floor point who uses up depth as the plan does: on its ray, at the plan's share of the drawn floor. */
function planDepthPlaces({ task, plan, stage, viewer }: Exercise): Place[] {
  const backWall = (viewer.eyeHeight * stage.depth) / (viewer.distance + stage.depth);
  return task.marks.map((name) => {
    const [x, y] = plan.corners.get(name.split(".")[0] ?? "") ?? [0, 0];
    const Z = (backWall * y) / stage.depth;
    return [viewer.offset + (x - viewer.offset) * (1 - Z / viewer.eyeHeight), Z];
  });
}

async function setDown(page: Page, place: Place) {
  const { x, y } = await toPage(page, place);
  await page.mouse.click(x, y);
  await page.getByRole("button", { name: "Set it down" }).click();
}

const goOn = (page: Page) => page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();

test("a wrong idea acted out over an exercise is named in words, and its place is shown beside the truth", async ({
  page,
}) => {
  const exercise = courseExercise("points-on-the-floor");
  await openExercise(page, exercise.id);
  let named = 0;
  for (const place of planDepthPlaces(exercise)) {
    await setDown(page, place);
    if ((await page.locator("[data-correction] .idea-mark").count()) > 0) {
      named += 1;
      await expect(page.locator(".notes-words")).toContainText("You used up depth as the plan does");
    }
    await goOn(page);
  }
  expect(named).toBeGreaterThan(1);
  await expect(page.getByText(/^A habit shows: depth in plan proportion/)).toBeVisible();
});

test("after a mark its construction plays line by line, forward and back, by keys", async ({ page }) => {
  const exercise = courseExercise("alcove");
  await openExercise(page, exercise.id);
  await setDown(page, [0, 1]);
  await expect(page.locator("[data-construction]")).toHaveCount(0);
  await page.getByRole("button", { name: "Show how" }).click();
  const drawn = page.locator("[data-construction]");
  await expect(drawn).toHaveAttribute("data-construction", "1");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await expect(drawn).toHaveAttribute("data-construction", "3");
  await page.keyboard.press("ArrowLeft");
  await expect(drawn).toHaveAttribute("data-construction", "2");
  await page.keyboard.press("End");
  await expect(page.getByRole("list").getByRole("listitem").last()).toContainText("cross at the foot of A");
  await expect(page.getByRole("button", { name: "On", exact: true })).toHaveAttribute("aria-disabled", "true");
  await page.getByRole("button", { name: "Back to the words" }).click();
  await expect(page.getByRole("button", { name: "Show how" })).toBeVisible();
});

test("an early exercise shows the construction of a missed mark unasked", async ({ page }) => {
  await openExercise(page, "square-and-parallel");
  await setDown(page, [0, 1]);
  await expect(page.locator("[data-construction] .construction-line")).not.toHaveCount(0);
});

test("hints before a mark cost part of its score and survive a reload", async ({ page }) => {
  const exercise = courseExercise("alcove");
  const [first] = truePlaces(exercise);
  await openExercise(page, exercise.id);
  await page.getByRole("button", { name: `Hint: the method, costs ${HINT_COST} of 100` }).click();
  await expect(page.locator(".hints")).toContainText("on the plaster line");
  await page.getByRole("button", { name: `Hint: its lines, costs ${HINT_COST} of 100` }).click();
  await page.locator(".construction-notes").waitFor();
  await page.keyboard.press("End");
  // The lines are drawn; the crossing itself is left to be found.
  await expect(page.locator("[data-construction] .construction-line")).not.toHaveCount(0);
  await expect(page.locator("[data-construction] .construction-point")).toHaveCount(0);
  await page.reload();
  await page.locator(".sheet[data-opened=true]").waitFor();
  await expect(page.getByRole("button", { name: "See the lines again" })).toBeVisible();
  await setDown(page, first as Place);
  await expect(page.locator(".notes-title")).toContainText(`${100 - 2 * HINT_COST}`);
});

test("an exercise that forbids hints offers none", async ({ page }) => {
  await openExercise(page, "two-pairs-of-doors");
  await expect(page.locator(".notes-title")).toBeVisible();
  await expect(page.getByRole("button", { name: /^Hint/ })).toHaveCount(0);
});

test("blue lines that fix the point are recognised", async ({ page }) => {
  const exercise = courseExercise("reading-the-frame");
  await openExercise(page, exercise.id);
  // B stands straight upstage of A, 8 ft stage right: its ray from the rule's 8 ft tick meets the back wall's foot there.
  await setDown(page, truePlaces(exercise)[0] as Place);
  await goOn(page);
  expect(exercisePoints(exercise).get(exercise.task.marks[1] ?? "")?.at[1]).toBeCloseTo(exercise.stage.depth, 9);
  await page.getByRole("button", { name: "Straightedge" }).click();
  await page.getByLabel("From").selectOption({ label: "the CVP" });
  await page.getByLabel("Through").selectOption({ label: `the rule's 8'-0" stage right` });
  await page.getByRole("button", { name: "Draw this line" }).click();
  await page.getByRole("button", { name: "Back to the mark" }).click();
  await expect(page.getByText("Your blue lines fix this point already")).toBeVisible();
});
