import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join as joinPath } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { type Browser, expect, type Page, test } from "@playwright/test";
import { openStore } from "@/lib/classroom/store/open-store";
import type { Store } from "@/lib/classroom/store/store";
import { join, openRoom } from "../classroom/accounts/room";
import { FILES, marksOf, putDrawnClass } from "../classroom/gradebook/drawn-class";
import { type ClassServer, sendForm, serveClass, TEACHER } from "./class-server";

const PHONE = { width: 390, height: 844 };
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const IN_TIME = "2026-11-09T12:00:00.000Z";
const LATE = "2026-11-11T12:00:00.000Z";

let server: ClassServer;
let classId = "";
let cookies: Readonly<Record<string, string>> = {};
const folder = mkdtempSync(joinPath(tmpdir(), "plasterline-gradebook-"));

/** A class that has drawn already: the store is filled before the server takes it. */
test.beforeAll(async () => {
  const opening = await openStore({ folder });
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  const { store } = opening;
  const room = await openRoom(store);
  classId = room.classId;
  const people = { Wim: await join(room, "Wim"), Tess: await join(room, "Tess"), Noor: await join(room, "=Noor") };
  cookies = Object.fromEntries(
    Object.entries(people).map(([name, one]) => [name, one.cookies[0]?.split(";")[0] ?? ""]),
  );
  const [wim, tess] = [people.Wim.memberId, people.Tess.memberId];
  await putDrawnClass(store, classId, [
    { id: "w1", memberId: wim, item: "floor", receivedAt: IN_TIME, habit: "plan-depth" },
    { id: "w2", memberId: wim, item: "floor", receivedAt: LATE, madeAt: IN_TIME, offMm: [0.3, 0.2] },
    { id: "t1", memberId: tess, item: "floor", receivedAt: IN_TIME, offMm: [2.5, 2] },
    { id: "t2", memberId: tess, item: "lamps", receivedAt: IN_TIME, habit: "plan-depth" },
    { id: "n1", memberId: people.Noor.memberId, item: "floor", receivedAt: IN_TIME, offMm: [-2, 3] },
  ]);
  const { id: _, ...teacher } = await store.db
    .selectFrom("user")
    .selectAll()
    .where("role", "=", "teacher")
    .executeTakeFirstOrThrow();
  await store.db
    .insertInto("user")
    .values({ ...teacher, id: "other", email: "other@tidemill.example" })
    .execute();
  const other = {
    id: "others",
    teacher_id: "other",
    title: "Others",
    code: "AAAAAA",
    keep_days: 0,
    archived: 0 as const,
  };
  await store.db
    .insertInto("class")
    .values({ ...other, created_at: IN_TIME })
    .execute();
  await putKeptBack(store, room.teacherId, wim);
  await store.close();
  server = await serveClass({}, folder);
});
/** Another class of Wim's, whose results are kept back until the homework is due. */
async function putKeptBack({ db }: Store, teacherId: string, wim: string) {
  const one = { title: "Second", code: "BBBBBB", keep_days: 0, created_at: IN_TIME, archived: 0 as const };
  await db
    .insertInto("class")
    .values({ ...one, id: "second", teacher_id: teacherId })
    .execute();
  const member = await db.selectFrom("member").selectAll().where("id", "=", wim).executeTakeFirstOrThrow();
  await db
    .insertInto("member")
    .values({ ...member, id: "wim-2", class_id: "second" })
    .execute();
  const homework = await db.selectFrom("homework").selectAll().executeTakeFirstOrThrow();
  const later = { id: "later", class_id: "second", feedback: "after-due", due_at: "2099-01-01T00:00:00.000Z" } as const;
  await db
    .insertInto("homework")
    .values({ ...homework, ...later })
    .execute();
  const item = await db.selectFrom("homework_item").selectAll().where("id", "=", "floor").executeTakeFirstOrThrow();
  await db
    .insertInto("homework_item")
    .values({ ...item, id: "later-floor", homework_id: "later" })
    .execute();
  const handIn = await db.selectFrom("hand_in").selectAll().where("id", "=", "w1").executeTakeFirstOrThrow();
  await db
    .insertInto("hand_in")
    .values({ ...handIn, id: "later-1", item_id: "later-floor", member_id: "wim-2" })
    .execute();
}

test.afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

async function expectNothingFound(page: Page) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(
    violations.map(({ id, nodes }) => `${page.url()}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`),
  ).toEqual([]);
}

async function expectNoSideways(page: Page) {
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
}

async function asTeacher(browser: Browser, viewport = { width: 1366, height: 768 }): Promise<Page> {
  const page = await (await browser.newContext({ viewport })).newPage();
  await page.goto(`${server.address}/class`);
  await page.getByLabel("E-mail address").fill(TEACHER.email);
  await page.getByLabel("Password").fill(TEACHER.password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("heading", { name: "Your classes" })).toBeVisible();
  return page;
}

async function asStudent(browser: Browser, name: string): Promise<Page> {
  const context = await browser.newContext({ viewport: PHONE });
  const [key = "", value = ""] = (cookies[name] ?? "").split(/=(.*)/s);
  await context.addCookies([{ name: key, value, url: server.address }]);
  return context.newPage();
}

test("a teacher reads the gradebook, changes a score and takes it back, excuses, weighs, saves and grades anew", async ({
  browser,
}) => {
  test.slow();
  const page = await asTeacher(browser);
  await page.goto(`${server.address}/class/${classId}/gradebook`);
  const rows = page.locator(".gradebook tbody tr");
  await expect(rows).toHaveCount(3);
  await expect(rows.nth(2)).toContainText("late; 2 attempts");
  await expect(rows.nth(2)).toContainText("missing");
  await expectNothingFound(page);

  // Both clocks are shown beside late work, and one press has it count as in time.
  await page.getByRole("button", { name: /^Wim, Points on the floor/ }).click();
  await expect(page.getByText(/made .* by the student’s own clock, received .*\.$/)).toBeVisible();
  await expect(page.getByLabel("Reason to count it as in time")).toHaveValue(/^Made before it was due/);
  await expectNothingFound(page);
  await page.getByRole("button", { name: "Count as in time" }).click();
  await expect(rows.nth(2)).toContainText("counted as in time: Made before it was due");
  await expect(rows.nth(2)).not.toContainText("late;");
  await page.getByRole("button", { name: "Count as late" }).click();
  await expect(rows.nth(2)).toContainText("late; 2 attempts");
  await page.getByLabel("Score by hand, 0 to 100").fill("62,5");
  await page.getByRole("button", { name: "Let this score count" }).click();
  await expect(page.locator(".complaint").filter({ hasText: "Write the reason" })).toBeVisible();
  await page.getByLabel("Why").fill("Drawn with help.");
  await page.getByRole("button", { name: "Let this score count" }).click();
  await expect(rows.nth(2)).toContainText("by hand, was 100");
  await expect(page.getByText("Changed by hand to 62.5: Drawn with help.")).toBeVisible();
  await page.getByRole("button", { name: "Take it back" }).click();
  await expect(rows.nth(2)).not.toContainText("by hand");
  await page.getByLabel("Line quality, of 5").fill("4");
  await page.getByLabel("Line quality, of 5").press("Enter");
  await expect(rows.nth(2)).toContainText("4 points");
  await expectNothingFound(page);

  await page.getByRole("button", { name: /^=Noor, Points on the floor/ }).click();
  await page.getByRole("button", { name: "Excuse from this homework" }).click();
  await expect(rows.nth(0).locator('[data-state="excused"]')).toHaveCount(2);
  await expect(rows.nth(0).locator(".gradebook-mean")).toHaveText("");

  await expect(rows.nth(2).locator(".gradebook-mean")).toHaveText("50");
  await page.locator("#weight-floor").fill("3");
  await page.getByRole("button", { name: "Weigh it so" }).click();
  await expect(rows.nth(2).locator(".gradebook-mean")).toHaveText("75");

  // On paper there is the table and nothing to press.
  await page.emulateMedia({ media: "print" });
  await expect(page.locator(".gradebook")).toBeVisible();
  await expect(page.getByRole("button", { name: "Weigh it so" })).toBeHidden();
  await expect(page.getByRole("button", { name: "Sign out" })).toBeHidden();
  await page.emulateMedia({ media: "screen" });

  const saving = page.waitForEvent("download");
  await page.getByRole("link", { name: "Save the table" }).click();
  const text = readFileSync(await (await saving).path(), "utf8");
  expect(text).toContain("Name,Number,Weighted mean,Week one: Points on the floor");
  expect(text).toContain("\r\n'=Noor,,,,excused");
  const results = await page.request.get(`${server.address}/api/class/gradebook?classId=${classId}&form=results`);
  expect(results.headers()["content-type"]).toBe("application/zip");
  const archive = (await results.body()).toString("utf8");
  expect(archive).toMatch(/^PK/);
  for (const part of ["manifest.csv", "file.results,bulk", "lineItems.csv", "results.csv", "lineItemSourcedId,student"])
    expect(archive).toContain(part);

  await page.getByLabel("How strictly").selectOption("drafted");
  await page.getByRole("button", { name: "See what would change" }).click();
  const change = page.getByRole("region", { name: "What would change" });
  await expect(change.locator("tbody tr").filter({ hasText: "Tess" }).first()).toBeVisible();
  const before = await rows.nth(1).textContent();
  await page.getByRole("button", { name: /^Change \d+ scores?$/ }).click();
  await expect(page.getByText(/^Done: \d+ scores? changed\.$/)).toBeVisible();
  await expect.poll(() => rows.nth(1).textContent()).not.toBe(before);
  await page.getByLabel("How strictly").selectOption("exercise");
  await page.getByRole("button", { name: "See what would change" }).click();
  await page.getByRole("button", { name: /^Change \d+ scores?$/ }).click();
  await expect.poll(() => rows.nth(1).textContent()).toBe(before);
  await page.context().close();
});

test("a teacher draws on a student's work in red, and the student alone sees it", async ({ browser }) => {
  test.slow();
  const page = await asTeacher(browser);
  await page.goto(`${server.address}/class/${classId}/drawing/w1`);
  await expect(page.getByText("A habit shows: ")).toBeVisible();
  await expectNothingFound(page);
  const sheet = page.locator(".work-drawing");
  await page.locator("#work[transform]").waitFor();
  const box = await sheet.boundingBox();
  if (!box) throw new Error("There is a drawing.");
  await page.mouse.move(box.x + box.width * 0.4, box.y + box.height * 0.5);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.6, { steps: 8 });
  await page.mouse.up();
  await expect(page.locator(".red-pencil")).toHaveCount(1);
  // The line lies where the pointer drew it.
  const drawn = await page.locator(".red-pencil").boundingBox();
  expect(Math.abs((drawn?.x ?? 0) - (box.x + box.width * 0.4))).toBeLessThan(4);
  expect(Math.abs((drawn?.y ?? 0) - (box.y + box.height * 0.5))).toBeLessThan(4);
  // The habit is named beside every mark that it explains.
  const habits = page.getByRole("region", { name: "Table of marks" }).locator("tbody td:nth-child(6)");
  expect((await habits.allTextContents()).filter((words) => words !== "").length).toBeGreaterThan(1);
  await page.getByLabel("Mark", { exact: true }).selectOption({ index: 1 });
  await page.getByRole("button", { name: "Ring it" }).click();
  await page.getByRole("button", { name: "Ring it" }).click();
  await expect(page.locator(".red-pencil")).toHaveCount(3);

  // Keys bring it closer, move it and show it whole; a line drawn from close by is as fine as the hand was.
  const size = async () => page.locator("#work").evaluate((group) => group.getBoundingClientRect().width);
  const left = async () => page.locator("#work").evaluate((group) => group.getBoundingClientRect().left);
  const whole = await size();
  await sheet.focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press("+");
  await expect.poll(size).toBeGreaterThan(3 * whole);
  const from = await left();
  await page.keyboard.press("ArrowRight");
  await expect.poll(left).toBeLessThan(from - 30);
  await page.keyboard.press("0");
  await expect.poll(size).toBeCloseTo(whole, 0);
  // The wheel moves the page until one has gone closer.
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.wheel(0, 200);
  await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(50);
  expect(await size()).toBeCloseTo(whole, 0);
  await page.evaluate(() => window.scrollTo(0, 0));
  await page.getByRole("button", { name: "Take back the last line" }).click();
  await page.getByLabel("Words").fill("Look where the depth comes from.");
  await page.getByRole("button", { name: "Keep lines and words" }).click();
  await expect(page.getByText("Kept. The student sees it with the result.")).toBeVisible();
  await page.reload();
  await expect(page.locator(".red-pencil")).toHaveCount(2);
  await expect(page.getByLabel("Words")).toHaveValue("Look where the depth comes from.");

  const wim = await asStudent(browser, "Wim");
  await wim.goto(`${server.address}/class/${classId}/drawing/w1`);
  await expect(wim.getByText("Look where the depth comes from.")).toBeVisible();
  await expect(wim.locator(".red-pencil")).toHaveCount(2);
  await expect(wim.getByRole("button", { name: "Ring it" })).toHaveCount(0);
  await wim.getByRole("button", { name: "Closer" }).click();
  await expect(wim.locator(".work-drawing[data-close]")).toHaveCount(1);
  await wim.getByRole("button", { name: "Whole" }).click();
  await expect(wim.locator(".work-drawing[data-close]")).toHaveCount(0);
  await expectNoSideways(wim);
  await expectNothingFound(wim);

  // What is kept back until it is due is not there for the student, and is for the teacher.
  expect((await wim.goto(`${server.address}/class/second/drawing/later-1`))?.status()).toBe(404);
  expect((await page.goto(`${server.address}/class/second/drawing/later-1`))?.status()).toBe(200);

  // A finger draws as well, and the page stays where it is under it.
  const touch = await (
    await browser.newContext({ viewport: PHONE, hasTouch: true, storageState: await page.context().storageState() })
  ).newPage();
  await touch.goto(`${server.address}/class/${classId}/drawing/t1`);
  await touch.locator("#work[transform]").waitFor();
  const small = await touch.locator(".work-drawing").boundingBox();
  if (!small) throw new Error("There is a drawing.");
  const finger = await touch.context().newCDPSession(touch);
  const [x, y] = [small.x + small.width / 3, small.y + small.height / 2];
  const at = (dx: number, dy: number) => ({ touchPoints: [{ x: x + dx, y: y + dy }] });
  await finger.send("Input.dispatchTouchEvent", { type: "touchStart", ...at(0, 0) });
  for (let step = 1; step <= 10; step++)
    await finger.send("Input.dispatchTouchEvent", { type: "touchMove", ...at(4 * step, -6 * step) });
  await finger.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await expect(touch.locator(".red-pencil")).toHaveCount(1);
  expect((await touch.locator(".red-pencil").boundingBox())?.height).toBeGreaterThan(40);
  expect(await touch.evaluate(() => window.scrollY)).toBe(0);
  await expectNoSideways(touch);
  // A second finger lets go of the line that the first began, and the two bring the drawing closer.
  const spread = (apart: number) => ({
    touchPoints: [
      { x: x - apart, y, id: 0 },
      { x: x + apart, y, id: 1 },
    ],
  });
  await finger.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [{ x: x - 20, y, id: 0 }] });
  await finger.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [{ x: x - 20, y: y + 1, id: 0 }] });
  await finger.send("Input.dispatchTouchEvent", { type: "touchStart", ...spread(20) });
  for (let apart = 25; apart <= 60; apart += 5)
    await finger.send("Input.dispatchTouchEvent", { type: "touchMove", ...spread(apart) });
  await finger.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await expect(touch.locator(".work-drawing[data-close]")).toHaveCount(1);
  await expect(touch.locator(".red-pencil")).toHaveCount(1);
  await touch.getByRole("button", { name: "Take all back" }).click();
  await expect(touch.locator(".red-pencil")).toHaveCount(0);

  // Nobody else, and nothing else.
  const tess = await asStudent(browser, "Tess");
  for (const path of ["work/w1", "gradebook", "teach-again"])
    expect((await tess.goto(`${server.address}/class/${classId}/${path}`))?.status()).toBe(404);
  expect((await tess.request.get(`${server.address}/api/class/gradebook?classId=${classId}`)).status()).toBe(403);
  for (const path of ["gradebook", "teach-again"])
    expect((await page.goto(`${server.address}/class/others/${path}`))?.status()).toBe(404);
  expect((await page.request.get(`${server.address}/api/class/gradebook?classId=others`)).status()).toBe(403);
  expect((await page.goto(`${server.address}/class/others/drawing/w1`))?.status()).toBe(404);
  const place = { itemId: "floor", memberId: "wim" };
  for (const [path, body] of [
    ["override", { ...place, score: 100, reason: "Mine." }],
    ["take-back", place],
    ["excuse", { homeworkId: "week-one", memberId: "wim", excused: true }],
    ["weights", { classId, homework: [], items: [] }],
    ["criterion", { ...place, criterion: "Line quality", points: 5 }],
    ["remark", { handInId: "w1", words: "", strokes: [] }],
    ["count-in-time", { handInId: "w2", reason: "Mine." }],
    ["regrade", { classId, homeworkId: "week-one", strictness: "as-set", exercises: "as-set" }],
  ] as const)
    for (const cookie of ["", cookies.Wim ?? ""])
      expect((await sendForm(server, path, body, cookie ? { cookie } : {})).status, path).toBe(403);
  await page.context().close();
});

test("a teacher sees what to teach again, and everyone's marks for one corner", async ({ browser }) => {
  const page = await asTeacher(browser, PHONE);
  await page.goto(`${server.address}/class/${classId}/teach-again`);
  await expect(page.getByText("This is a small class, of 3")).toBeVisible();
  await expect(page.getByRole("region", { name: "Figures of the exercises" }).locator("tbody tr")).toHaveCount(2);
  await expect(page.getByRole("link", { name: "Demonstrate it" })).toHaveAttribute(
    "href",
    /^\/demonstrate\/(points-on-the-floor|ring-of-lamps)$/,
  );
  await expect(page.locator(".cloud-mark")).toHaveCount(3);
  await expect(page.locator(".cloud-ring")).toHaveCount(2);
  await expect(
    page.getByText("quantiles of chi-square with 2 degrees of freedom, 1.386 for 50 % and 5.991 for 95 %"),
  ).toBeVisible();
  await expectNoSideways(page);
  await expectNothingFound(page);
  await page.getByRole("list", { name: "Exercise" }).getByRole("link").click();
  await expect(page.locator(".cloud-mark")).toHaveCount(1);
  await page.context().close();
});

test("a folder of marks becomes a gradebook without a store", async ({ page }) => {
  // The pages that every other test is served have no class.
  await page.goto("/class/folder");
  const file = (name: string, marks: unknown) => ({
    name,
    mimeType: "application/json",
    buffer: Buffer.from(typeof marks === "string" ? marks : JSON.stringify(marks)),
  });
  await page
    .getByLabel("Choose files")
    .setInputFiles([
      file("Wim Aalders - points-on-the-floor.marks.json", marksOf(FILES.floor)),
      file("Noor - points-on-the-floor.marks.json", marksOf(FILES.floor, [2, 2])),
      file("Noor - ring-of-lamps.marks (1).json", marksOf(FILES.lamps)),
      file("points-on-the-floor.marks.json", marksOf(FILES.floor)),
      file("notes.json", "hello"),
    ]);
  await expect(page.getByText("3 files graded, of 2 students.")).toBeVisible();
  await expect(page.locator(".gradebook tbody tr")).toHaveCount(2);
  await expect(page.locator(".gradebook tbody tr").nth(1)).toContainText("100");
  await expect(page.getByText("Its name tells no student.")).toBeVisible();
  await expect(page.getByText("This is no file of marks saved by Plasterline.")).toBeVisible();
  await expectNothingFound(page);
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the table" }).click();
  expect(readFileSync(await (await saving).path(), "utf8")).toContain("\r\nWim Aalders,,100,100,");
  await page.setViewportSize(PHONE);
  await expectNoSideways(page);
});

test("a whole folder is chosen, or files are dropped", async ({ page }) => {
  const chosen = mkdtempSync(joinPath(tmpdir(), "plasterline-week-one-"));
  for (const name of ["Wim Aalders", "Noor"]) {
    mkdirSync(joinPath(chosen, name));
    writeFileSync(joinPath(chosen, name, "points-on-the-floor.marks.json"), JSON.stringify(marksOf(FILES.floor)));
  }
  writeFileSync(joinPath(chosen, ".hidden.json"), "{}");
  await page.goto("/class/folder");
  await page.getByLabel("Choose a folder").setInputFiles(chosen);
  await expect(page.getByText("2 files graded, of 2 students.")).toBeVisible();
  await expect(page.locator(".gradebook tbody th")).toHaveText(["Noor", "Wim Aalders"]);
  await expect(page.getByRole("heading", { name: "To look at" })).toHaveCount(0);
  rmSync(chosen, { recursive: true });

  const dataTransfer = await page.evaluateHandle(
    (text) => {
      const dropped = new DataTransfer();
      dropped.items.add(new File([text], "Tess points-on-the-floor.marks.json", { type: "application/json" }));
      return dropped;
    },
    JSON.stringify(marksOf(FILES.floor)),
  );
  await page.locator(".file-drop").dispatchEvent("drop", { dataTransfer });
  await expect(page.getByText("1 file graded, of 1 student.")).toBeVisible();
  await expect(page.locator(".gradebook tbody th")).toHaveText(["Tess"]);
});
