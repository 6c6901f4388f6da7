import AxeBuilder from "@axe-core/playwright";
import { type Browser, expect, type Page, test } from "@playwright/test";
import type { Exercise } from "@/lib/exercise/exercise";
import { findVariant } from "@/lib/generator/find-variant";
import { type ClassServer, sendForm, serveClass, TEACHER } from "./class-server";
import { courseExercise, toPage, truePlaces } from "./drive";

const PHONE = { width: 390, height: 844 };
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const exercise = courseExercise("square-and-parallel");
const floor = courseExercise("points-on-the-floor");
const SHOTS = process.env.PLASTERLINE_SHOTS;

let server: ClassServer;
test.beforeAll(async () => {
  server = await serveClass();
});
test.afterAll(async () => server.close());

/** A change that a form would send. */
const CHANGE = {
  title: "Mine",
  items: [{ source: "variant", unit: "floor", level: 1, weight: 1 }],
  dueAt: null,
  attempts: 0,
  counts: "best",
  feedback: "at-once",
  strictness: null,
  hints: "allowed",
  weight: 1,
  criteria: [],
  toWhom: { kind: "all" },
  agreed: { hides: 0, seal: null },
};

async function expectSound(page: Page, name: string) {
  if (SHOTS) await page.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: true });
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(
    violations.map(({ id, nodes }) => `${name}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`),
  ).toEqual([]);
  const tooWide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(tooWide).toBeLessThanOrEqual(0);
}

async function joinClass(browser: Browser, code: string, name: string, viewport = PHONE): Promise<Page> {
  const page = await (await browser.newContext({ viewport })).newPage();
  await page.goto(`${server.address}/class/join?code=${code}`);
  await page.getByLabel("Your name").fill(name);
  await page.getByRole("button", { name: "Join" }).click();
  await page.getByRole("link", { name: "I have it: go on to your class" }).click();
  return page;
}

/** Sets every mark down where it truly lies, without waiting for a correction where none comes. */
async function drawAll(page: Page, corrected: boolean, drawn: Exercise = exercise) {
  await page.locator("#picture-drawing[transform]").waitFor();
  await page.locator(".sheet[data-opened=true]").waitFor();
  for (const [i, place] of truePlaces(drawn).entries()) {
    await expect(page.locator(".notes-step")).toHaveText(`Step ${i + 1} of ${drawn.task.marks.length}`);
    const { x, y } = await toPage(page, place);
    await page.mouse.click(x, y);
    await page.getByRole("button", { name: "Set it down" }).click();
    if (corrected) await page.locator(".notes-presses .press[data-weight=main]").click();
    else if (i + 1 < drawn.task.marks.length) await expect(page.getByText("Set down:")).toBeVisible();
  }
}

/** A moment as a date field has it, so many minutes from now. */
function inMinutes(minutes: number): string {
  const moment = new Date(Date.now() + minutes * 60_000);
  return new Date(moment.getTime() - moment.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
}

test("a teacher sets homework, two students do it, one of them offline for a while, and the teacher sees it", async ({
  browser,
}) => {
  test.setTimeout(240_000);
  const teacher = await (await browser.newContext()).newPage();
  await teacher.goto(`${server.address}/class`);
  await teacher.getByLabel("Your name").fill(TEACHER.name);
  await teacher.getByLabel("E-mail address").fill(TEACHER.email);
  await teacher.getByLabel("Password").fill(TEACHER.password);
  await teacher.getByRole("button", { name: "Begin to teach here" }).click();
  await teacher.getByLabel("Name of the class").fill("First year, Thursday");
  await teacher.getByRole("button", { name: "Make the class" }).click();
  const code = (await teacher.locator(".class-code").textContent()) ?? "";
  const classPage = teacher.url();

  // A class list makes places, after it was looked at.
  await teacher.getByText("Put in a class list").click();
  await teacher.getByLabel("Names, one on each line").fill("Wim,7\nTess\nwim");
  await teacher.getByRole("button", { name: "Look at it first" }).click();
  await expect(teacher.getByText("stands in the list twice")).toBeVisible();
  await expectSound(teacher, "class-list");
  await teacher.getByRole("button", { name: "Make 2 places" }).click();
  await expect(teacher.getByText("2 places were made.")).toBeVisible();
  await expect(teacher.getByText("has not joined")).toHaveCount(2);

  const wim = await joinClass(browser, code, "Wim");
  const tess = await joinClass(browser, code, "Tess", { width: 1366, height: 768 });
  const noor = await joinClass(browser, code, "Noor");
  await expect(wim.getByText("Nothing just now.")).toBeVisible();

  // What cannot be set is told, and nothing that was written is lost.
  await teacher.getByRole("link", { name: "Set homework" }).click();
  await teacher.getByLabel("Title").fill("Week one");
  await teacher.getByLabel("Corrections and scores").selectOption("after-due");
  await teacher.locator("summary", { hasText: /^Walls/ }).click();
  await teacher.getByRole("checkbox", { name: exercise.title }).check();
  await teacher.getByLabel("Attempts", { exact: true }).fill("1");
  await teacher.getByLabel("Criteria of your own").fill("Line quality, 10");
  await expectSound(teacher, "set-homework");
  await teacher.setViewportSize(PHONE);
  await expectSound(teacher, "set-homework-phone");
  await teacher.setViewportSize({ width: 1366, height: 768 });
  await teacher.getByRole("button", { name: "Set it", exact: true }).click();
  await expect(teacher.locator(".complaint")).toContainText("need a due date");
  await expect(teacher.getByLabel("Title")).toHaveValue("Week one");
  await expect(teacher.getByRole("checkbox", { name: exercise.title })).toBeChecked();
  await expect(teacher.getByLabel("Criteria of your own")).toHaveValue("Line quality, 10");
  await teacher.getByLabel("Due", { exact: true }).fill(inMinutes(60));
  await teacher.getByLabel("Set it to").selectOption("some");
  await teacher.getByLabel("Wim", { exact: true }).check();
  await teacher.getByLabel("Tess", { exact: true }).check();
  await teacher.getByRole("button", { name: "Set it", exact: true }).click();
  await expect(teacher.getByRole("heading", { name: "Week one" })).toBeVisible();
  const homeworkPage = teacher.url();
  await expect(teacher.locator("[data-handed-in]")).toHaveText(["0 of 1", "0 of 1"]);

  // One press starts it; no correction and no score are shown.
  await wim.reload();
  await expectSound(wim, "to-do-phone");
  await wim.getByRole("link", { name: "Draw it" }).click();
  await expect(wim.locator(".title-block")).toContainText("after the due date");
  const address = wim.url();
  await wim.locator(".sheet[data-opened=true]").waitFor();
  await wim.context().setOffline(true);
  await drawAll(wim, false);
  await expect(wim.getByRole("heading", { name: "Every mark is set down" })).toBeVisible();
  await expect(wim.getByText("Kept here; will be sent when the network is back.")).toBeVisible();
  await expect(wim.locator("[data-correction]")).toHaveCount(0);
  await expectSound(wim, "kept-phone");
  await wim.context().setOffline(false);
  await wim.evaluate(() => window.dispatchEvent(new Event("online")));
  await expect(wim.locator("[data-handed-in]")).toContainText("Handed in at");
  await expect(wim.getByText("Kept here")).toHaveCount(0);
  await expectSound(wim, "handed-in-phone");
  await wim.reload();
  await expect(wim.locator("[data-handed-in]")).toContainText("Handed in at");
  await expect(wim.getByRole("button", { name: /Draw it again/ })).toHaveCount(0);

  // Another student closes the page before the network is back: it is sent at the next load.
  await tess.reload();
  await tess.getByRole("link", { name: "Draw it" }).click();
  await tess.locator(".sheet[data-opened=true]").waitFor();
  await tess.route("**/api/class/hand-in", (route) => route.abort());
  await drawAll(tess, false);
  await expect(tess.getByText("Kept here; will be sent")).toBeVisible();
  await tess.unroute("**/api/class/hand-in");
  await tess.goto(`${server.address}/class`);
  await expect(tess.getByText("handed in", { exact: false }).first()).toBeVisible();
  await expect(tess.getByText("Kept here")).toHaveCount(0);
  await expectSound(tess, "done-laptop");

  // Nobody else gets the exercise, the teacher's sheet or the right to hand in for Wim.
  const itemId = new URL(address).searchParams.get("homework") ?? "";
  const stored = await wim.evaluate(() =>
    Object.keys(window.localStorage).find((key) => key.startsWith("plasterline.homework.")),
  );
  const memberId = stored?.split(".")[2] ?? "";
  const cookieOf = async (page: Page) =>
    (await page.context().cookies()).map(({ name, value }) => `${name}=${value}`).join("; ");
  const body = {
    id: "0123456789abcdef0123",
    itemId,
    memberId,
    madeAt: new Date().toISOString(),
    marks: { format: "plasterline.marks/1", exercise: exercise.id, marks: [] },
  };
  expect((await noor.goto(address))?.status()).toBe(404);
  expect((await noor.goto(homeworkPage))?.status()).toBe(404);
  expect((await wim.goto(homeworkPage))?.status()).toBe(404);
  expect((await wim.goto(`${classPage}/homework/set`))?.status()).toBe(404);
  const forbidden: readonly (readonly [string, unknown])[] = [
    ["hand-in", body],
    [
      "set-homework",
      {
        classId: classPage.split("/").at(-1),
        title: "Mine",
        items: [{ source: "variant", unit: "floor", level: 1, weight: 1 }],
        dueAt: null,
        attempts: 0,
        counts: "best",
        feedback: "at-once",
        strictness: null,
        hints: "allowed",
        weight: 1,
        criteria: [],
        toWhom: { kind: "all" },
      },
    ],
    [
      "reuse-homework",
      { homeworkId: homeworkPage.split("/").at(-1), classId: classPage.split("/").at(-1), dueAt: null },
    ],
    ["change-homework", { homeworkId: homeworkPage.split("/").at(-1), ...CHANGE }],
    ["archive-homework", { homeworkId: homeworkPage.split("/").at(-1), archived: true }],
    ["homework-terms", { homeworkId: homeworkPage.split("/").at(-1), memberId, dueAt: null, excused: true }],
    ["class-list", { classId: classPage.split("/").at(-1), text: "Jo", put: true }],
  ];
  for (const cookie of ["", await cookieOf(noor), await cookieOf(tess)])
    for (const [path, sent] of forbidden)
      expect([path, (await sendForm(server, path, sent, { Cookie: cookie })).status]).toEqual([path, 403]);

  // The teacher sees who is in, gives the class an earlier end, and both see their result.
  await teacher.goto(homeworkPage);
  await expect(teacher.locator("[data-handed-in]")).toContainText(["1 of 1", "1 of 1"]);
  await expectSound(teacher, "homework-laptop");
  await teacher.setViewportSize(PHONE);
  await expectSound(teacher, "homework-phone");
  await teacher.setViewportSize({ width: 1366, height: 768 });
  await teacher.getByRole("button", { name: "Another date for Wim" }).click();
  await teacher.getByLabel("Due for Wim").fill(inMinutes(-1));
  await teacher.getByRole("button", { name: "Agree" }).click();
  await expect(teacher.getByLabel("Due for Wim")).toHaveCount(0);
  await wim.goto(`${server.address}/class`);
  await expect(wim.getByText(/^(9\d|100) of 100/)).toBeVisible();
  await expectSound(wim, "done-phone");
  await wim.getByRole("link", { name: "See it" }).click();
  await expect(wim.locator(".result-number")).toHaveText(/^(9\d|100)$/);
  await expect(wim).toHaveTitle("Homework - Plasterline");
  await expectSound(wim, "result-phone");
  await tess.goto(`${server.address}/class`);
  await expect(tess.getByText(/of 100/)).toHaveCount(0);
  await teacher.goto(classPage);
  await expect(teacher.getByText("2 of 2 handed in")).toBeVisible();
  await expectSound(teacher, "class-laptop");

  // A variant for each, corrected at once: the result is there as soon as the last mark is.
  await teacher.getByRole("link", { name: "Set homework" }).click();
  await teacher.getByLabel("Title").fill("Week two");
  await teacher.getByRole("button", { name: "Add it" }).click();
  await teacher.getByRole("button", { name: "Set it", exact: true }).click();
  await expect(teacher.getByRole("heading", { name: "Week two" })).toBeVisible();
  const seen: string[] = [];
  for (const page of [wim, noor]) {
    await page.goto(`${server.address}/class`);
    await page.getByRole("link", { name: "Draw it" }).click();
    await page.locator(".sheet[data-opened=true]").waitFor();
    const id = new URL(page.url()).pathname.split("/").at(-1) ?? "";
    const made = findVariant(id);
    if (!made) throw new Error(`${id} is no variant.`);
    await drawAll(page, true, made.exercise);
    await expect(page.locator(".result-number")).toHaveText(/^(9\d|100)$/);
    await expect(page.locator("[data-handed-in]")).toContainText("Handed in at");
    await expect(page.getByRole("button", { name: "Draw it again" })).toBeVisible();
    seen.push(id);
  }
  expect(seen[0]).not.toBe(seen[1]);
  expect(server.said()).not.toMatch(/Wim|Tess|Noor|Week one/);
});

test("a teacher changes homework that is set, and nothing that was handed in is lost", async ({ browser }) => {
  test.setTimeout(240_000);
  const teacher = await (await browser.newContext()).newPage();
  await teacher.goto(`${server.address}/class`);
  await teacher.getByLabel("E-mail address").fill(TEACHER.email);
  await teacher.getByLabel("Password").fill(TEACHER.password);
  await teacher.getByRole("button", { name: "Sign in" }).click();
  await teacher.getByLabel("Name of the class").fill("Second year, Friday");
  await teacher.getByRole("button", { name: "Make the class" }).click();
  const code = (await teacher.locator(".class-code").textContent()) ?? "";
  const classPage = teacher.url();
  const mia = await joinClass(browser, code, "Mia");
  await teacher.getByRole("link", { name: "Set homework" }).click();
  await teacher.getByLabel("Title").fill("Week one");
  await teacher.locator("summary", { hasText: /^Walls/ }).click();
  await teacher.getByRole("checkbox", { name: exercise.title }).check();
  await teacher
    .locator("summary", { hasText: /^Points on the floor|^The floor|floor/i })
    .first()
    .click();
  await teacher.getByRole("checkbox", { name: floor.title, exact: true }).check();
  await teacher.getByLabel("Due", { exact: true }).fill(inMinutes(60));
  await teacher.getByRole("button", { name: "Set it", exact: true }).click();
  await expect(teacher.getByRole("heading", { name: "Week one" })).toBeVisible();
  const homeworkPage = teacher.url();

  // Mia draws one of the two; the other waits in her browser, and is sent from the first page of all.
  const draw = async (drawn: Exercise) => {
    await mia.goto(`${server.address}/class`);
    await mia.locator(".class-row", { hasText: drawn.title }).getByRole("link", { name: "Draw it" }).click();
    await mia.locator(".sheet[data-opened=true]").waitFor();
    await drawAll(mia, true, drawn);
    await expect(mia.locator(".result-number")).toHaveText(/^(9\d|100)$/);
  };
  await draw(exercise);
  await expect(mia.locator("[data-handed-in]")).toContainText("Handed in at");
  await mia.route("**/api/class/hand-in", (route) => route.abort());
  await draw(floor);
  await expect(mia.getByText("Kept here; will be sent").first()).toBeVisible();
  await mia.goto(server.address);
  await expect(mia.getByText(`Not handed in yet: ${floor.title}.`)).toBeVisible();
  await expectSound(mia, "home-waiting-phone");
  await mia.unroute("**/api/class/hand-in");
  await mia.getByRole("button", { name: "Send now" }).click();
  await expect(mia.getByText("Handed in just now: 1 exercise of your homework.")).toBeVisible();
  await mia.reload();
  await mia.getByRole("heading", { name: "Your work" }).waitFor();
  await expect(mia.getByText(/Handed in just now|Not handed in yet/)).toHaveCount(0);

  // Another title and an earlier date: what came in is late by it, both clocks are shown, and one press excuses it.
  await teacher.goto(homeworkPage);
  await expect(teacher.locator("[data-handed-in]")).toContainText("2 of 2");
  await teacher.getByRole("link", { name: "Change it" }).click();
  await expect(teacher.getByLabel("Title")).toHaveValue("Week one");
  await expect(teacher.getByLabel("Due", { exact: true })).not.toHaveValue("");
  await expect(teacher.getByRole("list", { name: "Chosen" }).getByRole("listitem")).toHaveCount(2);
  await expectSound(teacher, "change-homework");
  await teacher.getByLabel("Title").fill("Week one, again");
  await teacher.getByLabel("Due", { exact: true }).fill(inMinutes(-30));
  await teacher.getByRole("button", { name: "Change it" }).click();
  await expect(teacher.getByRole("heading", { name: "Week one, again" })).toBeVisible();
  await expect(teacher.locator("[data-handed-in]")).toContainText("late");
  await expect(teacher.getByText(/made .* by the student’s own clock, received .*\.$/)).toHaveCount(2);
  await expectSound(teacher, "late-laptop");
  for (const title of [exercise.title, floor.title])
    await teacher.getByRole("button", { name: `Count as in time: Mia, ${title}` }).click();
  await expect(teacher.getByText("Counted as in time: Excused by the teacher.")).toHaveCount(2);
  await expect(teacher.locator("[data-handed-in]")).not.toContainText("late");
  await mia.goto(`${server.address}/class`);
  await expect(mia.getByText(", late")).toHaveCount(0);

  // An exercise with a drawing goes only once its number was said and agreed to, and comes back with it.
  await teacher.getByRole("link", { name: "Change it" }).click();
  await teacher.getByRole("button", { name: `Take out ${floor.title}` }).click();
  await expect(teacher.getByText("1 drawing would be hidden")).toBeVisible();
  await teacher.getByRole("button", { name: "Change it" }).click();
  await expect(teacher.getByRole("heading", { name: "Nothing is changed yet" })).toBeFocused();
  await expect(teacher.getByText("1 drawing that was handed in would be hidden")).toBeVisible();
  await expectSound(teacher, "agree-laptop");
  await teacher.setViewportSize(PHONE);
  await expectSound(teacher, "agree-phone");
  await teacher.setViewportSize({ width: 1366, height: 768 });
  await teacher.getByRole("button", { name: "No, not yet" }).click();
  await mia.reload();
  await expect(mia.getByText(floor.title)).toBeVisible();
  await teacher.getByRole("button", { name: "Change it" }).click();
  await teacher.getByRole("button", { name: "Yes, hide 1 drawing" }).click();
  await expect(teacher.locator("[data-handed-in]")).toContainText("1 of 1");
  await mia.reload();
  await expect(mia.getByText(floor.title)).toHaveCount(0);
  await teacher.getByRole("link", { name: "Change it" }).click();
  await expect(teacher.getByText("1 drawing kept")).toBeVisible();
  await teacher.getByRole("button", { name: `Put back ${floor.title}` }).click();
  await teacher.getByRole("button", { name: "Change it" }).click();
  await expect(teacher.locator("[data-handed-in]")).toContainText("2 of 2");
  await mia.reload();
  await expect(mia.getByText(floor.title)).toBeVisible();

  // Another strictness shows what it would change before it does.
  await teacher.getByRole("link", { name: "Change it" }).click();
  await teacher.getByLabel("Near enough").selectOption("drafted");
  await teacher.getByRole("button", { name: "Change it" }).click();
  await expect(teacher.getByText(/would change, of 2 handed in\.$/)).toBeVisible();
  await expectSound(teacher, "agree-strictness");
  await teacher.getByRole("button", { name: "Yes, change it so" }).click();
  await expect(teacher.getByText("judged as drafted work")).toBeVisible();
  expect((await mia.goto(`${homeworkPage}/change`))?.status()).toBe(404);
  expect((await teacher.goto(`${classPage}/homework/none/change`))?.status()).toBe(404);
});
