import { expect, test } from "@playwright/test";
import { type ClassServer, sendForm, serveClass, TEACHER } from "./class-server";
import { courseExercise } from "./drive";

let server: ClassServer;
test.beforeAll(async () => {
  server = await serveClass();
});
test.afterAll(async () => server.close());

const EXERCISE = courseExercise("points-on-the-floor");

test("every page runs its own scripts and no others, under rules that allow none written into it", async ({ page }) => {
  const complaints: string[] = [];
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  const nonces = new Set<string>();
  const alive: Readonly<Record<string, () => Promise<unknown>>> = {
    "/": () => page.getByText("not yet drawn").first().waitFor(),
    [`/practise/${EXERCISE.id}`]: () => page.locator(".sheet[data-opened=true]").waitFor(),
    "/record": () => page.getByText("Nothing is drawn yet").waitFor(),
    "/class": () => page.getByLabel("E-mail address").fill("still here"),
    "/class/join": () => page.getByLabel("Class code").waitFor(),
    "/class/back": () => page.getByLabel("Passphrase").waitFor(),
  };
  for (const [path, isAlive] of Object.entries(alive)) {
    const answer = await page.goto(`${server.address}${path}`);
    const rules = answer?.headers()["content-security-policy"] ?? "";
    const scripts = /script-src ([^;]*)/.exec(rules)?.[1] ?? "";
    expect(scripts).toContain("'strict-dynamic'");
    expect(scripts).not.toMatch(/'unsafe-inline'|'(wasm-)?unsafe-eval'|https?:/);
    expect(rules).not.toContain("upgrade-insecure-requests");
    nonces.add(/'nonce-([^']+)'/.exec(scripts)?.[1] ?? path);
    await isAlive();
    const ran = await page.evaluate(() => {
      // As a page that was tampered with on its way would have them: read with the page, and as an attribute.
      const frame = document.createElement("iframe");
      document.body.append(frame);
      frame.contentDocument?.write(
        '<script>parent.planted = 1</script><img src="x:" onerror="parent.planted = 2" alt="">',
      );
      return new Promise((resolve) => setTimeout(() => resolve("planted" in window), 100));
    });
    expect({ path, ran }).toEqual({ path, ran: false });
  }
  expect(nonces.size).toBe(Object.keys(alive).length);
  const unexpected = complaints.filter((line) => !/inline (script|event handler)|x:/.test(line));
  expect(unexpected).toEqual([]);
  // Where marks and drawings stand is said in style attributes; those still work.
  await page.goto(`${server.address}/practise/${EXERCISE.id}`);
  await page.locator(".sheet[data-opened=true]").waitFor();
  const styled = await page.evaluate(
    () =>
      [...document.querySelectorAll<HTMLElement | SVGElement>("[style]")].filter((each) => each.style.length === 0)
        .length,
  );
  expect(styled).toBe(0);
});

test("what another site has a browser send is refused, and so is too much, and what is no form", async () => {
  const refused = { name: "Eve", email: "eve@elsewhere.example", password: "seven tidy gulls", word: "" };
  const cases: readonly (readonly [string, unknown, Readonly<Record<string, string>>, number])[] = [
    ["another site", refused, { Origin: "http://elsewhere.example" }, 403],
    ["another port of this computer", refused, { Origin: "http://127.0.0.1:9" }, 403],
    ["no site at all", refused, { Origin: "null" }, 403],
    ["a site that the browser calls another", refused, { "Sec-Fetch-Site": "cross-site" }, 403],
    ["a plain form", "name=Eve", { "Content-Type": "application/x-www-form-urlencoded" }, 415],
    ["too much", { ...refused, name: "x".repeat(300_000) }, {}, 413],
    ["cut short", '{"name":', {}, 400],
    ["a member too many", { ...refused, role: "teacher" }, {}, 400],
    ["not even a form", "[]", {}, 400],
  ];
  for (const [name, body, headers, status] of cases) {
    const said = await sendForm(server, "first-teacher", body, headers);
    expect({ name, status: said.status, sentence: typeof said.reply.sentence }).toEqual({
      name,
      status,
      sentence: "string",
    });
    expect(said.cookies).toEqual([]);
  }
});

test("a forged address does not help a guesser, and only someone at the server begins without the word", async () => {
  // Sixty passwords are digested.
  test.slow();
  const word = /asks for this word: ([A-Z]{6})/;
  await fetch(`${server.address}/class`);
  const [, right = ""] = word.exec(server.said()) ?? [];
  expect(right).toMatch(/^[A-Z]{6}$/);
  const through = { "X-Forwarded-For": "203.0.113.5" };
  const first = await sendForm(server, "first-teacher", { ...TEACHER, word: "AAAAAA" }, through);
  expect(first).toMatchObject({ status: 422, reply: { reason: "wrong-word" } });
  expect(await sendForm(server, "first-teacher", { ...TEACHER, word: right }, through)).toMatchObject({ status: 200 });

  const statuses = [];
  for (let i = 0; i < 62; i++) {
    const forged = {
      "X-Forwarded-For": `198.51.100.${i}`,
      "X-Plasterline-Remote": `198.51.100.${i}`,
      Forwarded: `for=198.51.100.${i}`,
    };
    const guess = { email: `nobody${i}@tidemill.example`, password: "a guess of mine" };
    statuses.push((await sendForm(server, "sign-in", guess, forged)).status);
  }
  expect(statuses.slice(0, 59)).toEqual(statuses.slice(0, 59).map(() => 422));
  expect(statuses.slice(-2)).toEqual([429, 429]);
});

test("behind a proxy that was named, addresses count as it says, and cookies travel by https only", async () => {
  // Sixty passwords are digested.
  test.slow();
  const behind = await serveClass({ PLASTERLINE_PROXY: "127.0.0.1" });
  await fetch(`${behind.address}/class`);
  const [, word = ""] = /asks for this word: ([A-Z]{6})/.exec(behind.said()) ?? [];
  const said = { "X-Forwarded-For": "203.0.113.5", "X-Forwarded-Proto": "https" };
  const made = await sendForm(behind, "first-teacher", { ...TEACHER, word }, said);
  expect(made.status).toBe(200);
  for (const cookie of made.cookies) expect(cookie).toMatch(/^__Secure-.*; Secure/);
  const guess = (i: number, address: string) =>
    sendForm(
      behind,
      "sign-in",
      { email: `nobody${i}@tidemill.example`, password: "x" },
      { "X-Forwarded-For": address },
    );
  let last = 0;
  for (let i = 0; i < 61; i++) last = (await guess(i, "1.2.3.4, 198.51.100.7")).status;
  expect(last).toBe(429);
  expect((await guess(99, "1.2.3.4, 198.51.100.8")).status).toBe(422);
  await behind.close();
});

test("a second server on the same folder says so plainly, and the rest of it works", async ({ page }) => {
  await page.goto(`${server.address}/class`);
  const second = await serveClass({}, server.folder);
  await page.goto(`${second.address}/class`);
  await expect(page.getByRole("heading", { name: "Class is closed just now" })).toBeVisible();
  await expect(page.getByText("Another Plasterline on this computer is already using this data folder.")).toBeVisible();
  await page.goto(`${second.address}/practise/${EXERCISE.id}`);
  await page.locator(".sheet[data-opened=true]").waitFor();
  expect(await sendForm(second, "sign-in", { email: "a@b.example", password: "x" })).toMatchObject({
    status: 503,
    reply: { reason: "held" },
  });
  await second.close();
});
