import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join as joinPath } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { type Browser, expect, type Page, test } from "@playwright/test";
import PDFDocument from "pdfkit";
import { courseText } from "@/lib/classroom/homework/course-text";
import { importMembers } from "@/lib/classroom/homework/import-members";
import type { SetHomework } from "@/lib/classroom/homework/requests";
import { setHomework } from "@/lib/classroom/homework/set-homework";
import { openStore } from "@/lib/classroom/store/open-store";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import { openRoom } from "../classroom/accounts/room";
import { CLEAR_PENCIL } from "../photo/photographer/conditions";
import { marksByHabit } from "../photo/photographer/marks-by-habit";
import { takePhotograph } from "../photo/photographer/take-photograph";
import { type ClassServer, serveClass, TEACHER } from "./class-server";
import { courseExercise } from "./drive";
import { faxPdf } from "./fax-pdf";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const SHOTS = process.env.PLASTERLINE_SHOTS;
const LETTER_PT = { width: 612, height: 792 };
const SIZES = { phone: { width: 390, height: 844 }, projector: { width: 1920, height: 1080 } } as const;

const office = courseExercise("the-tide-office");
const frame = courseExercise("reading-the-frame");
const notSet = courseExercise("square-and-parallel");

let server: ClassServer;
let classId = "";
const folder = mkdtempSync(joinPath(tmpdir(), "plasterline-pile-"));

/** A class with two exercises due, one of them long ago, and four students of whom three have numbers. */
test.beforeAll(async () => {
  const opening = await openStore({ folder });
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  const { store } = opening;
  const room = await openRoom(store);
  classId = room.classId;
  const text = "Ada Brook, 1\nBo Stern, 2\nCem Rivers, 3\nDot Lane\n";
  await importMembers(store, { classId, text, put: true });
  const rules: Omit<SetHomework, "title" | "dueAt" | "items"> = {
    classId,
    attempts: 0,
    counts: "best",
    feedback: "at-once",
    strictness: null,
    hints: "allowed",
    weight: 1,
    criteria: [],
    toWhom: { kind: "all" },
  };
  const set = (title: string, exerciseId: string, dueAt: string | null) =>
    setHomework(store, { ...rules, title, dueAt, items: [{ source: "course", exerciseId, weight: 1 }] }, (id) =>
      courseText("exercises", id),
    );
  await set("On the floor", frame.id, "2026-01-07T12:00:00.000Z");
  await set("The office", office.id, null);
  await store.close();
  server = await serveClass({}, folder);
});

test.afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

type Asked = Partial<Parameters<typeof takePhotograph>[0]>;

/** A photograph of a sheet drawn on by someone with a habit. */
async function photograph(exercise: Exercise, seed: number, asked: Asked = {}): Promise<Buffer> {
  const marks = marksByHabit(exercise, null, seed);
  return (await takePhotograph({ exercise, paper: "letter", marks, seed, ...asked })).jpeg;
}

/** A page as the copier has it: flat, straight but for a trace, and as white as paper. */
const SCAN: Asked = {
  megapixels: 3.74,
  tiltDeg: 0,
  turnDeg: 0.6,
  focal: 3,
  fill: 0.98,
  evenness: 1,
  vignette: 0,
  exposure: 0.95,
  blurPx: 0.5,
};

/** Pictures as the pages of one PDF; null is an empty page. */
function scanOf(pictures: readonly (Buffer | null)[]): Promise<Buffer> {
  const book = new PDFDocument({ autoFirstPage: false });
  const parts: Buffer[] = [];
  book.on("data", (part: Buffer) => parts.push(part));
  const done = new Promise<Buffer>((resolve) => book.on("end", () => resolve(Buffer.concat(parts))));
  for (const picture of pictures) {
    book.addPage({ size: "LETTER", margin: 0 });
    if (picture) book.image(picture, 0, 0, LETTER_PT);
  }
  book.end();
  return done;
}

async function asTeacher(browser: Browser): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width: 1366, height: 768 } })).newPage();
  await page.goto(`${server.address}/class`);
  await page.getByLabel("E-mail address").fill(TEACHER.email);
  await page.getByLabel("Password").fill(TEACHER.password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("heading", { name: "Your classes" })).toBeVisible();
  return page;
}

async function expectSound(page: Page, name: string) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(
    violations.map(({ id, nodes }) => `${name}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`),
  ).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
  if (!SHOTS) return;
  const was = page.viewportSize();
  await page.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: !name.endsWith("look") });
  for (const [size, viewport] of Object.entries(SIZES)) {
    await page.setViewportSize(viewport);
    await page.screenshot({ path: `${SHOTS}/${name}-${size}.png`, fullPage: !name.endsWith("look") });
  }
  if (was) await page.setViewportSize(was);
}

/** Settles what is still open at the board: a doubtful point is right, one that was not found is not drawn. */
async function settleAll(page: Page) {
  const main = page.locator(".check-side-foot .press[data-weight=main]");
  while ((await main.textContent())?.startsWith("Next to look at")) {
    await main.click();
    const right = page.getByRole("button", { name: "It is right" });
    await ((await right.count()) > 0 ? right : page.getByRole("button", { name: "Not drawn" })).click();
  }
  return main;
}

test("a pile of photographs and a scan are read, confirmed and handed in, and nothing else leaves the browser", async ({
  browser,
}) => {
  test.setTimeout(300_000);
  const [ada, dot, cem, stray] = [
    await photograph(office, 1, { copy: 1 }),
    await photograph(frame, 2),
    await photograph(office, 3, { orientation: 6 }),
    await photograph(notSet, 4),
  ];
  const scan = await scanOf([
    await photograph(office, 5, { ...SCAN, copy: 2 }),
    await photograph(frame, 6, SCAN),
    null,
  ]);
  const page = await asTeacher(browser);
  const elsewhere: string[] = [];
  const sent: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (/^https?:/.test(url) && !url.startsWith(server.address)) elsewhere.push(url);
    if (request.method() === "POST") sent.push(`${new URL(url).pathname} ${request.postData() ?? ""}`);
  });
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await page.goto(`${server.address}/class/${classId}`);
  await page.getByRole("link", { name: "A pile of drawings" }).click();
  await expect(page.getByRole("heading", { name: "A pile of drawings" })).toBeVisible();
  await expectSound(page, "pile-empty");
  expect(sent).toEqual([]);

  await page.getByLabel("Choose photographs or a scan").setInputFiles([
    { name: "ada.jpg", mimeType: "image/jpeg", buffer: ada },
    { name: "dot.jpg", mimeType: "image/jpeg", buffer: dot },
    { name: "cem.jpg", mimeType: "image/jpeg", buffer: cem },
    { name: "stray.jpg", mimeType: "image/jpeg", buffer: stray },
    { name: "copier.pdf", mimeType: "application/pdf", buffer: scan },
    { name: "notes.txt", mimeType: "text/plain", buffer: Buffer.from("Not a picture.") },
  ]);
  await expect(page.locator("[data-read='8']")).toBeVisible({ timeout: 200_000 });
  expect(sent.filter((each) => each.startsWith("/api/class/pile "))).toEqual([]);

  // What could not be read says why.
  const unread = page.locator(".pile-unread-row");
  await expect(unread).toHaveCount(3);
  await expect(unread.filter({ hasText: "stray.jpg" })).toContainText("in no homework of this class");
  await expect(unread.filter({ hasText: "copier.pdf, page 3" })).toContainText(/marker|sheet/i);
  await expect(unread.filter({ hasText: "notes.txt" })).toContainText(/photograph|picture/i);

  const row = (from: string) => page.locator(`.pile-row[data-page="${from}"]`);
  const rows = page.locator(".pile-row");
  await expect(rows).toHaveCount(5);
  await expect(row("ada.jpg")).toContainText("The office; sheet 1");
  await expect(row("dot.jpg")).toContainText("On the floor");
  await expect(page.getByLabel("Student of ada.jpg")).toHaveValue(/.+/);
  await expect(row("ada.jpg")).toContainText("known by the sheet’s number alone");
  await expect(row("dot.jpg")).toContainText("Whose is it?");
  await expectSound(page, "pile-read");

  // Numbers are believed once the teacher says so.
  await page.getByLabel("The sheets were given out by the class list’s numbers").check();
  await expect(row("ada.jpg")).not.toContainText("number alone");
  await expect(row("copier.pdf, page 1")).not.toContainText("number alone");

  for (const [from, name] of [
    ["dot.jpg", "Dot Lane"],
    ["cem.jpg", "Cem Rivers, 3"],
    ["copier.pdf, page 2", "Dot Lane"],
  ] as const)
    await page.getByLabel(`Student of ${from}`).selectOption({ label: name });
  await expect(row("dot.jpg")).toContainText("the same exercise by the same student");
  await page.getByLabel("Student of copier.pdf, page 2").selectOption({ label: "Bo Stern, 2" });
  await expect(row("dot.jpg")).not.toContainText("the same exercise by the same student");
  await page.getByLabel("dot.jpg came in late").check();

  // One page closely: a point is moved by keys and dropped, and taken back.
  await page.getByRole("button", { name: "Look at ada.jpg closely" }).click();
  await expect(page.getByRole("dialog", { name: "Look at ada.jpg" })).toBeVisible();
  await expectSound(page, "pile-look");
  const first = page.locator(".point-row").first();
  if ((await first.getAttribute("data-chosen")) !== "true") await first.locator(".point-name").click();
  await first.getByRole("button", { name: "Left" }).click();
  await expect(first).toContainText("moved by you");
  await first.getByRole("button", { name: "Not drawn" }).click();
  await expect(first.locator(".point-state")).toHaveText("not drawn");
  if ((await first.getAttribute("data-chosen")) !== "true") await first.locator(".point-name").click();
  await first.getByRole("button", { name: "As it was read" }).click();
  await expect(first.locator(".point-state")).not.toHaveText("not drawn");
  await settleAll(page);
  await page.getByRole("button", { name: "Confirm this page" }).click();
  // The next doubtful page may be shown: back to the list.
  await page.waitForFunction(() => document.querySelector('[data-page="ada.jpg"][data-state="taken"]') !== null);
  const back = page.getByRole("button", { name: "Back to the pile" });
  if (await back.isVisible()) await back.click();
  await expect(row("ada.jpg")).toContainText("In the gradebook since");

  // Doubtful pages one by one, and the sure at one press.
  for (const from of ["dot.jpg", "cem.jpg", "copier.pdf, page 1", "copier.pdf, page 2"]) {
    if ((await row(from).getAttribute("data-state")) !== "doubtful") continue;
    await page.getByRole("button", { name: `Look at ${from} closely` }).click();
    await settleAll(page);
    if (await back.isVisible()) await back.click();
  }
  const all = page.getByRole("button", { name: /^Confirm all that are sure/ });
  await expect(all).toHaveText("Confirm all that are sure: 4");
  await all.click();
  await expect(page.locator(".pile-row[data-state=taken]")).toHaveCount(5);
  await expect(row("dot.jpg")).toContainText(", late");
  await expect(row("copier.pdf, page 2")).not.toContainText(", late");
  await expect(all).toBeDisabled();
  await expectSound(page, "pile-handed-in");

  // The server was asked about codes and given points; no picture went anywhere.
  const pictures = sent.filter((each) => /image|JFIF|blob|base64/.test(each) || each.length > 20_000);
  expect(pictures).toEqual([]);
  expect(sent.filter((each) => each.startsWith("/api/class/pile "))).toHaveLength(5);
  expect(elsewhere).toEqual([]);
  expect(complaints).toEqual([]);
  const printed = layOutPracticeSheet(office, { paper: "letter" })?.scale.written;
  expect(sent.find((each) => each.includes(office.id) && each.startsWith("/api/class/pile "))).toContain(printed);

  await page.goto(`${server.address}/class/${classId}/gradebook`);
  const book = page.locator(".gradebook tbody tr");
  await expect(book.filter({ hasText: "Ada Brook" })).toContainText(/\d+/);
  await expect(book.filter({ hasText: "Bo Stern" })).toContainText("counted as in time: Handed in on paper.");
  await expect(book.filter({ hasText: "Dot Lane" })).toContainText("late");
});

test("a copier's scan in black and white is opened by what this server gives, and a torn one says so", async ({
  browser,
}) => {
  test.setTimeout(200_000);
  const fax = await faxPdf(await photograph(office, 7, { ...SCAN, copy: 3, pencil: { ...CLEAR_PENCIL, darkness: 1 } }));
  const page = await asTeacher(browser);
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await page.goto(`${server.address}/class/${classId}/pile`);
  await page.getByLabel("Choose photographs or a scan").setInputFiles([
    { name: "fax.pdf", mimeType: "application/pdf", buffer: fax },
    { name: "torn.pdf", mimeType: "application/pdf", buffer: Buffer.from("%PDF-1.5\nand nothing more") },
    { name: "posing.jpg", mimeType: "image/jpeg", buffer: fax },
  ]);
  await expect(page.locator("[data-read='3']")).toBeVisible({ timeout: 120_000 });
  await expect(page.locator(".pile-unread-row")).toContainText(["torn.pdf"]);
  await expect(page.locator(".pile-unread-row").first()).toContainText("cannot be opened");
  await expect(page.locator('.pile-row[data-page="fax.pdf, page 1"]')).toContainText("The office; sheet 3");
  // What a file is called does not matter.
  await expect(page.locator('.pile-row[data-page="posing.jpg, page 1"]')).toContainText("The office; sheet 3");
  expect(complaints).toEqual([]);
});
