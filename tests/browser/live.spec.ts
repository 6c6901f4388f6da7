import AxeBuilder from "@axe-core/playwright";
import { type Browser, expect, type Page, test } from "@playwright/test";
import { type ClassServer, sendForm, serveClass, TEACHER } from "./class-server";
import { courseExercise, type Place, toPage, truePlaces } from "./drive";
import { steer } from "./steer";

const PHONE = { width: 390, height: 844 };
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const EXERCISE = courseExercise("points-on-the-floor");
const POINT = EXERCISE.task.marks[0] ?? "";
const TRUTH = truePlaces(EXERCISE)[0] as Place;
/** A metre and a half off: wrong by any tolerance. */
const WRONG: Place = [TRUTH[0] + 1.5, TRUTH[1] + 0.1];

let server: ClassServer;
let cookie = "";
test.beforeAll(async () => {
  server = await serveClass();
  const made = await sendForm(server, "first-teacher", TEACHER);
  expect(made.status).toBe(200);
  cookie = made.cookies.map((line) => line.split(";")[0]).join("; ");
});
test.afterAll(async () => server.close());

/** Sends a form to any route, as a page of the server would. */
async function post(path: string, body: unknown, headers: Readonly<Record<string, string>> = {}) {
  const answer = await fetch(`${server.address}${path}`, {
    method: "POST",
    headers: { "Content-Type": "application/json", Origin: server.address, ...headers },
    body: JSON.stringify(body),
  });
  return { status: answer.status, reply: await answer.json(), cookies: answer.headers.getSetCookie() };
}

async function openVote(classId: string | null = null) {
  const opened = await post("/class/live", { classId, exerciseId: EXERCISE.id, point: POINT }, { Cookie: cookie });
  expect(opened.status).toBe(200);
  return opened.reply as { readonly voteId: string; readonly code: string; readonly classId: string };
}

async function takePart(browser: Browser, code: string, options: { readonly hasTouch?: boolean } = {}): Promise<Page> {
  const page = await (await browser.newContext({ viewport: PHONE, ...options })).newPage();
  await page.goto(`${server.address}/live/${code}`);
  await expect(page.locator(".live-board")).toHaveAttribute("data-joined", "true");
  await page.locator("#picture-drawing[transform]").waitFor();
  return page;
}

const IN = "Your mark is in. You may move it until the marks are shown.";

async function place(page: Page, at: Place) {
  const { x, y } = await toPage(page, at);
  await page.mouse.click(x, y);
  await expect(page.getByRole("status")).toHaveText(IN);
}

test("ten phones place a point twice, and the screen at the front shows both clouds against the truth", async ({
  browser,
}) => {
  test.setTimeout(240_000);
  const front = await (await browser.newContext({ viewport: { width: 1600, height: 900 } })).newPage();
  await front.goto(`${server.address}/class`);
  await front.getByLabel("E-mail address").fill(TEACHER.email);
  await front.getByLabel("Password").fill(TEACHER.password);
  await front.getByRole("button", { name: "Sign in" }).click();
  await expect(front.getByRole("heading", { name: "Your classes" })).toBeVisible();

  // A teacher who has made no class yet gets one.
  const { classId } = await openVote();
  await front.goto(`${server.address}/class/${classId}/live`);
  await front.getByLabel("Exercise").selectOption(EXERCISE.id);
  await front.getByLabel("Point").selectOption(POINT);
  await front.getByRole("button", { name: "Everyone places it" }).click();
  const code = (await front.locator("[data-code]").textContent()) ?? "";
  expect(code).toMatch(/^[A-Z]{6}$/);
  await expect(front.getByRole("img", { name: /^Code to scan/ })).toBeVisible();

  const pages: Page[] = [];
  for (let i = 0; i < 10; i++) pages.push(await takePart(browser, code.toLowerCase(), { hasTouch: i === 0 }));
  const [touched, keyed, lost, reloaded, ...others] = pages as [Page, Page, Page, Page, ...Page[]];
  for (const page of [front, touched]) {
    const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
    expect(violations.map(({ id, nodes }) => `${id} at ${nodes.map(({ target }) => target).join(", ")}`)).toEqual([]);
  }

  // By finger, by keys, and the rest by mouse; three of ten right.
  const { x, y } = await toPage(touched, TRUTH);
  await touched.touchscreen.tap(x, y);
  await expect(touched.getByRole("status")).toHaveText(IN);
  await keyed.getByRole("application").focus();
  await keyed.keyboard.press("ArrowLeft");
  const start = await keyed.evaluate(() => {
    const group = document.querySelector("#picture-drawing-live [data-live-mark] > g:last-child");
    const [, x, y] = /translate\((-?[\d.]+)px, (-?[\d.]+)px\)/.exec(group?.getAttribute("style") ?? "") ?? [];
    const ratio = Number(document.querySelector("#picture-drawing")?.getAttribute("data-ratio"));
    return [(Number(x) * ratio) / 1000, (-Number(y) * ratio) / 1000] as const;
  });
  await steer(keyed, start, TRUTH, EXERCISE.scaleRatio);
  await expect(keyed.getByRole("status")).toHaveText(IN);
  for (const page of [lost, reloaded, ...others]) await place(page, page === others[0] ? TRUTH : WRONG);
  await expect(front.locator("[data-placed]")).toHaveText("10");

  // A mark may be moved until the marks are shown, and a line that is down loses none.
  await lost.context().setOffline(true);
  const moved = await toPage(lost, [WRONG[0], WRONG[1] + 0.4]);
  await lost.mouse.click(moved.x, moved.y);
  await expect(lost.getByRole("status")).toContainText("Not sent yet.");
  await lost.context().setOffline(false);
  await expect(lost.getByRole("status")).toHaveText(IN, { timeout: 20_000 });
  await reloaded.reload();
  await expect(reloaded.getByRole("status")).toHaveText(IN);
  await expect(front.locator("[data-placed]")).toHaveText("10");

  await front.getByRole("button", { name: "Show the marks" }).click();
  for (const page of pages) await expect(page.getByRole("status")).toContainText("the marks are shown");
  await expect(front.locator("[data-cloud]")).toBeVisible();
  await expect(front.locator(".cloud-mark")).toHaveCount(10);
  await expect(front.locator(".cloud-spread")).toHaveCount(1);
  await expect(front.locator(".vote-share")).toHaveText("3 of 10 right, 30\u00a0%.");
  await expect(front.locator(".vote-advice")).toContainText("Fewer than 35\u00a0% are right");
  // The true point is kept back until it is told.
  await expect(front.locator("[data-true]")).toHaveCount(0);
  await expect(touched.locator(".true-mark")).toHaveCount(0);

  await front.getByRole("button", { name: "Place it again" }).click();
  await expect(front.locator("[data-placed]")).toHaveText("0");
  for (const page of pages) await expect(page.locator(".live-board")).toHaveAttribute("data-round", "2");
  for (const page of pages) await place(page, page === lost ? WRONG : TRUTH);
  await expect(front.locator("[data-placed]")).toHaveText("10");
  await front.getByRole("button", { name: "Show marks and true point" }).click();
  await expect(front.locator("[data-true]")).toBeVisible();
  await expect(front.locator("[data-cloud='2'] [data-round]")).toHaveCount(2);
  await expect(front.locator(".cloud-mark")).toHaveCount(20);
  await expect(front.locator(".vote-share")).toHaveText([
    "Round 1 (triangles): 3 of 10 right, 30\u00a0%.",
    "Round 2 (rings): 9 of 10 right, 90\u00a0%.",
  ]);
  await expect(touched.getByRole("status")).toContainText("Right, within the tolerance");
  await expect(lost.getByRole("status")).toContainText("mm of paper from the true point");
  await expect(lost.locator(".true-mark")).toBeVisible();

  // The phones go on to the next point by themselves.
  await front.getByRole("button", { name: /^Next: / }).click();
  await expect(front.locator("[data-placed]")).toHaveText("0");
  for (const page of pages) await expect(page.locator(".live-board")).toHaveAttribute("data-state", "open");
  for (const page of pages) expect(page.url()).not.toContain(code);
});

test("only who was let in takes part, and only the teacher moves the vote and sees the marks", async () => {
  const { voteId, code } = await openVote();
  const guess = { voteId, round: 1, at: [1, 1] };
  const move = { voteId, round: 1, move: "show" };

  expect((await fetch(`${server.address}/live/QQQQQQ`).then((page) => page.text())).includes("Nobody is let in")).toBe(
    true,
  );
  expect((await fetch(`${server.address}/live/${code}`)).status).toBe(200);
  expect((await post("/api/live/guess", guess)).status).toBe(403);
  expect((await post("/api/live/guess", guess, { Cookie: "plasterline-guest=me.me" })).status).toBe(403);
  expect((await fetch(`${server.address}/api/live/events?vote=${voteId}`)).status).toBe(403);

  const joined = await post("/api/live/join", { voteId });
  expect(joined).toMatchObject({ status: 200, reply: { ok: true, mine: [] } });
  expect(joined.cookies.join()).toMatch(/^plasterline-guest=.*HttpOnly; SameSite=Lax/);
  const guest = { Cookie: joined.cookies[0]?.split(";")[0] ?? "" };

  // From another site, too large, not a guess: nothing is kept of it.
  const bad: readonly (readonly [unknown, Readonly<Record<string, string>>, number])[] = [
    [guess, { ...guest, Origin: "http://elsewhere.example" }, 403],
    [guess, { ...guest, "Sec-Fetch-Site": "cross-site" }, 403],
    [{ ...guess, more: "x".repeat(2000) }, guest, 413],
    [{ ...guess, person: "someone else" }, guest, 400],
    [{ ...guess, at: ["1", 1] }, guest, 400],
    [{ ...guess, round: 2 }, guest, 422],
    [{ ...guess, voteId: "another" }, guest, 403],
  ];
  for (const [body, headers, status] of bad)
    expect({ body, status: (await post("/api/live/guess", body, headers)).status }).toEqual({ body, status });

  await new Promise((resolve) => setTimeout(resolve, 1100));
  // How many are let through depends on how long the server takes for all of them; never all at once.
  const many = await Promise.all(Array.from({ length: 60 }, () => post("/api/live/guess", guess, guest)));
  const taken = many.filter(({ status }) => status === 200).length;
  expect(taken).toBeGreaterThanOrEqual(5);
  expect(many.filter(({ status }) => status === 429)).toHaveLength(60 - taken);
  expect(taken).toBeLessThan(60);
  expect((await post("/api/live/join", { voteId }, guest)).reply).toEqual({
    ok: true,
    mine: [{ round: 1, at: [1, 1] }],
  });

  for (const headers of [{}, guest]) {
    expect((await post("/api/live/move", move, headers)).status).toBe(403);
    expect((await post("/class/live", { exerciseId: EXERCISE.id, point: POINT }, headers)).status).toBe(403);
    expect((await fetch(`${server.address}/api/live/result?vote=${voteId}`, { headers })).status).toBe(403);
  }
  const asTeacher = { headers: { Cookie: cookie } };
  const before = await (await fetch(`${server.address}/api/live/result?vote=${voteId}`, asTeacher)).json();
  expect(before).toMatchObject({ truth: null, rounds: [] });
  expect((await post("/api/live/move", move, { Cookie: cookie })).reply).toMatchObject({ ok: true, state: "revealed" });
  expect((await post("/api/live/guess", guess, guest)).status).not.toBe(200);
});

test("the stream begins with the whole vote, is not packed on its way, and ends when nobody looks", async () => {
  const { voteId } = await openVote();
  const stop = new AbortController();
  const answer = await fetch(`${server.address}/api/live/events?vote=${voteId}`, {
    headers: { Cookie: cookie, "Accept-Encoding": "gzip, br" },
    signal: stop.signal,
  });
  expect(answer.headers.get("content-type")).toContain("text/event-stream");
  expect(answer.headers.get("content-encoding")).toBeNull();
  const reader = answer.body?.pipeThrough(new TextDecoderStream()).getReader();
  let said = "";
  while (!said.includes("data: {")) said += (await reader?.read())?.value ?? "";
  expect(said).toMatch(/^retry: \d+$/m);
  expect(said).toContain('"state":"open","placed":0,"truth":null');
  stop.abort();
  const again = await fetch(`${server.address}/api/live/events?vote=${voteId}`, { headers: { Cookie: cookie } });
  expect(again.status).toBe(200);
  await again.body?.cancel();
});
