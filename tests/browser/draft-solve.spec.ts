import { expect, type Locator, type Page, test } from "@playwright/test";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { readExercise } from "@/lib/exercise/read-exercise";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { FOOT_M } from "@/lib/measure/length";
import {
  button,
  byMouse,
  byTouch,
  drawSet,
  drawSetByKeys,
  enter,
  openDesk,
  PHONE,
  type PressAt,
  place,
} from "./draft-hands";
import { type Place, toPage } from "./drive";
import { steer } from "./steer";

const ASKED = ["P1.3.foot", "P1.3.top", "C.foot", "C.top", "D.foot"];
/** The platform's third corner, and corner C: on the plan foot and top are one press. D's foot is pressed in the picture. */
const ON_PLAN = [
  [3, 10],
  [-6, 18],
] as const;
/** Where the eye of a new plan, 36 ft away and 8 ft up, sees D's foot, 6 ft to stage left and 18 ft upstage: s = 36 / (36 + 18). */
const D_IN_PICTURE: Place = [(6 * 36 * FOOT_M) / 54, ((8 - (8 * 36) / 54) * FOOT_M) as number];

/** The exercise that the drafting desk set aside to be tried, read by the engine itself. */
async function ownExercise(page: Page): Promise<Exercise> {
  const text = await page.evaluate(() => JSON.parse(localStorage.getItem("plasterline.own") ?? "[]")[0]?.text);
  const reading = readExercise(text);
  if (!reading.ok) throw new Error("What was set aside is no exercise.");
  return reading.exercise;
}

/** What the browser keeps of the attempt. */
async function keptAttempt(page: Page) {
  return page.evaluate(() => JSON.parse(localStorage.getItem("plasterline.own.attempt") ?? "{}").attempt);
}

/** Where each mark goes: where it truly falls, but the first where depth is used up as the plan does. */
function placesFor(exercise: Exercise): Place[] {
  const points = exercisePoints(exercise);
  const { stage, viewer } = exercise;
  return exercise.task.marks.map((name, i): Place => {
    const point = points.get(name);
    if (!point?.picture) throw new Error(`${name} is not seen.`);
    if (i > 0) return [point.picture[0], point.picture[1]];
    const [x, y] = point.at;
    const backWall = (viewer.eyeHeight * stage.depth) / (viewer.distance + stage.depth);
    const Z = (backWall * y) / stage.depth;
    return [x * (1 - Z / viewer.eyeHeight), Z];
  });
}

type Means = {
  /** Presses something that has a name. */
  readonly use: (thing: Locator) => Promise<void>;
  /** Puts the mark of a step at a place of the picture and sets it down. */
  readonly put: (page: Page, at: Place, exercise: Exercise) => Promise<void>;
};

async function solve(page: Page, { use, put }: Means) {
  await page.locator(".sheet[data-opened=true]").waitFor();
  const exercise = await ownExercise(page);
  expect(exercise.task.marks).toEqual(ASKED);
  for (const [i, at] of placesFor(exercise).entries()) {
    await put(page, at, exercise);
    if (i > 0) await expect(page.locator(".notes-where")).toContainText("Right:");
    else {
      await expect(page.locator(".notes-words")).toContainText("You used up depth as the plan does");
      await use(page.getByRole("button", { name: "Show how" }));
      await expect(page.locator("[data-construction]")).toHaveAttribute("data-construction", "1");
      await use(page.getByRole("button", { name: "Back to the words" }));
    }
    if (i === ASKED.length - 1) break;
    await use(page.getByRole("button", { name: /^Next:/ }));
  }
  const { marks } = await keptAttempt(page);
  await use(page.getByRole("button", { name: "See the whole drawing" }));
  const { scale, id, version } = exercise;
  const grade = gradeMarks(exercise, { format: "plasterline.marks/1", exercise: id, version, scale, marks, hints: {} });
  const score = Math.round(grade.score ?? Number.NaN);
  expect(score).toBeGreaterThan(75);
  expect(score).toBeLessThan(100);
  await expect(page.getByRole("heading", { name: `Score ${score} of 100` })).toBeVisible();
  await expect(page.getByText("4 of 5 marks lie within what a hand is allowed.")).toBeVisible();
  await expect(page.getByText("does not count in your record")).toBeVisible();
  const slider = page.getByRole("slider", { name: "Lay yours over the finished picture" });
  await slider.focus();
  await page.keyboard.press("Home");
  await expect(slider).toHaveValue("0");
}

const setDown = (page: Page) => page.getByRole("button", { name: "Set it down" });

async function askByPointing(page: Page, press: PressAt) {
  await button(page, "Make it an exercise").click();
  await page.getByLabel("Graded").selectOption({ label: "as a drafted drawing" });
  await button(page, "Begin with none").click();
  for (const feet of ON_PLAN) await press(page, await place(page, feet));
  await press(page, await toPage(page, D_IN_PICTURE));
  await expect(page.locator("#picture-drawing-live [data-number='D.foot']")).toHaveText("5");
  await expect(page.locator("#plan-drawing-live [data-number='C.foot']")).toHaveText("3, 4");
}

test("the set is drawn, made an exercise and solved by mouse", async ({ page }) => {
  test.slow();
  await openDesk(page);
  await drawSet(page, byMouse);
  await askByPointing(page, byMouse);
  // A second press gives the point, a third leaves it out, a fourth asks for it again, last of all.
  const d = await toPage(page, D_IN_PICTURE);
  await byMouse(page, d);
  await expect(page.locator("#picture-drawing-live [data-given='D.foot']")).toBeAttached();
  await byMouse(page, d);
  await expect(page.locator("#picture-drawing-live [data-free='D.foot']")).toBeAttached();
  await byMouse(page, d);
  await button(page, "Try it").click();
  await solve(page, {
    use: (thing) => thing.click(),
    put: async (_, at) => {
      const { x, y } = await toPage(page, at);
      await page.mouse.click(x, y);
      await setDown(page).click();
    },
  });
});

test("the set is drawn, made an exercise and solved by touch on a phone", async ({ browser }) => {
  test.slow();
  const context = await browser.newContext(PHONE);
  const page = await context.newPage();
  await openDesk(page);
  await drawSet(page, byTouch);
  await askByPointing(page, byTouch);
  await button(page, "Try it").tap();
  await solve(page, {
    use: (thing) => thing.tap(),
    put: async (_, at) => {
      const { x, y } = await toPage(page, at);
      await page.touchscreen.tap(x, y);
      await setDown(page).tap();
    },
  });
  await context.close();
});

test("the set is drawn, made an exercise and solved by keys alone", async ({ page }) => {
  test.slow();
  await openDesk(page);
  await drawSetByKeys(page);
  const keys = page.keyboard;
  const said = page.locator("[data-aloud=draft]");
  await enter(page, "Make it an exercise");
  await page.getByLabel("Graded").focus();
  await keys.type("as a drafted");
  await enter(page, "Begin with none");
  /** Goes from point to point of a drawing until it is told of one, and asks for it. */
  const ask = async (drawing: RegExp, told: RegExp) => {
    await page.getByRole("application", { name: drawing }).focus();
    for (let i = 0; i < 80 && !told.test((await said.textContent()) ?? ""); i++) await keys.press("ArrowRight");
    await keys.press("Enter");
    await expect(said).toHaveText(/asked as/);
  };
  await ask(/^Ground plan/, /^The foot of C, the top of C/);
  await ask(/^Ground plan/, /^The foot of P1's corner 3, the top/);
  // The platform's corner is to come first: each press takes both its points one place up.
  await keys.press("Alt+ArrowUp");
  await keys.press("Alt+ArrowUp");
  await expect(said).toHaveText(/asked as 1, 2\.$/);
  await ask(/^Picture/, /^The foot of D:/);
  await enter(page, "Try it");
  await solve(page, {
    use: async (thing) => {
      await thing.focus();
      await keys.press("Enter");
    },
    put: async (_, at, exercise) => {
      await page.getByRole("application", { name: /^Picture/ }).focus();
      await keys.press("ArrowUp");
      const { pending } = await keptAttempt(page);
      await steer(page, pending, at, exercise.scaleRatio);
      await keys.press("Enter");
    },
  });
});
