import { spawnSync } from "node:child_process";
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { type Browser, expect, type Page, test } from "@playwright/test";
import { packageProgram } from "@/lib/cli/package-program.mjs";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";
import { type ClassServer, serveClass, TEACHER } from "./class-server";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const PHONE = { width: 390, height: 844 };
const BO = { name: "Bo Lind", email: "bo@tidemill.example", password: "eight slow herons" };
const WORD = /^[A-Z]{4}(-[A-Z]{4}){4}$/;

// What one test made, the next one uses.
test.describe.configure({ mode: "serial" });

let server: ClassServer;
test.beforeAll(async () => {
  server = await serveClass();
});
test.afterAll(async () => server.close());

async function expectWellMade(page: Page) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(
    violations.map(({ id, nodes }) => `${page.url()}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`),
  ).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
}

async function newPage(browser: Browser, viewport = PHONE): Promise<{ page: Page; asked: string[] }> {
  const page = await (await browser.newContext({ viewport })).newPage();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(`${request.url()} ${request.headers().referer ?? ""}`));
  return { page, asked };
}

async function signIn(page: Page, { email, password }: { readonly email: string; readonly password: string }) {
  await page.goto(`${server.address}/class`);
  await page.getByLabel("E-mail address").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
}

/** Where the link leads here: what is shown to be sent on has the address that others in the room have. */
async function linkShown(page: Page): Promise<string> {
  const link = page.locator("[data-word-link]");
  const path = (await link.getAttribute("href")) ?? "";
  await expect(link).toHaveText(new RegExp(`^http://[^/]+${path}$`));
  return `${server.address}${path}`;
}

async function makeClass(page: Page, title: string) {
  await page.goto(`${server.address}/class`);
  await page.getByLabel("Name of the class").fill(title);
  await page.getByRole("button", { name: "Make the class" }).click();
  await expect(page.getByRole("heading", { name: title })).toBeVisible();
  return page.url();
}

test("a second teacher is invited, and has classes of their own", async ({ browser }) => {
  test.slow();
  const { page: ida } = await newPage(browser, { width: 1366, height: 768 });
  await ida.goto(`${server.address}/class`);
  await ida.getByLabel("Your name").fill(TEACHER.name);
  await ida.getByLabel("E-mail address").fill(TEACHER.email);
  await ida.getByLabel("Password").fill(TEACHER.password);
  await ida.getByRole("button", { name: "Begin to teach here" }).click();
  await expect(ida.getByRole("heading", { name: "Your classes" })).toBeVisible();
  const first = await makeClass(ida, "Tuesday drawing");

  await ida.goto(`${server.address}/class`);
  await ida.getByRole("link", { name: "Teachers and your password" }).click();
  await ida.getByLabel("For whom").fill("Bo, evenings");
  await ida.getByRole("button", { name: "Make an invitation" }).click();
  await expect(ida.locator("[data-word]")).toHaveText(WORD);
  const link = await linkShown(ida);
  await expect(ida.getByText("open until")).toBeVisible();
  await expectWellMade(ida);

  // One that was withdrawn lets nobody in.
  await ida.getByLabel("For whom").fill("A mistake");
  await ida.getByRole("button", { name: "Make an invitation" }).click();
  await expect(ida.locator("[data-word-link]")).not.toHaveText(new RegExp(link.split("#")[1] ?? ""));
  const withdrawn = (await ida.locator("[data-word]").textContent()) ?? "";
  await ida.getByRole("button", { name: "Withdraw: A mistake" }).click();
  await expect(ida.getByRole("button", { name: "Withdraw: A mistake" })).toHaveCount(0);

  const { page: bo, asked } = await newPage(browser);
  await bo.goto(`${server.address}/class`);
  await bo.getByRole("link", { name: "I was invited to teach here" }).click();
  await bo.getByLabel("Word of the invitation").fill(withdrawn.toLowerCase());
  await bo.getByLabel("Your name").fill(BO.name);
  await bo.getByLabel("E-mail address").fill(BO.email);
  await bo.getByLabel("Password").fill(BO.password);
  await bo.getByRole("button", { name: "Begin to teach here" }).click();
  await expect(bo.locator(".complaint")).toContainText("That is no word that works.");
  await expect(bo.getByLabel("Your name")).toHaveValue(BO.name);
  await expectWellMade(bo);

  // The link fills the word in, and leaves it neither in the address nor in anything the server is asked.
  await bo.goto("about:blank");
  await bo.goto(link);
  await expect(bo.getByLabel("Word of the invitation")).toHaveValue(WORD);
  expect(bo.url()).toBe(`${server.address}/class/invited`);
  await bo.getByLabel("Your name").fill(BO.name);
  await bo.getByLabel("E-mail address").fill(BO.email);
  await bo.getByLabel("Password").fill(BO.password);
  await bo.getByRole("button", { name: "Begin to teach here" }).click();
  await expect(bo.getByRole("heading", { name: "Your classes" })).toBeVisible();
  expect(asked.filter((line) => line.includes(link.split("#")[1] ?? link))).toEqual([]);
  await expect(bo.getByText("Tuesday drawing")).toHaveCount(0);
  expect((await bo.goto(first))?.status()).toBe(404);
  const second = await makeClass(bo, "Evening class");
  expect((await ida.goto(second))?.status()).toBe(404);
  await ida.goto(`${server.address}/class`);
  await expect(ida.getByText("Tuesday drawing")).toBeVisible();
  await expect(ida.getByText("Evening class")).toHaveCount(0);

  await ida.goto(`${server.address}/class/teachers`);
  await expect(ida.locator(".class-row").filter({ hasText: "Bo Lind" }).filter({ hasText: "used" })).toBeVisible();
  const { page: late } = await newPage(browser);
  await late.goto(link);
  await late.getByLabel("Your name").fill("Eve");
  await late.getByLabel("E-mail address").fill("eve@elsewhere.example");
  await late.getByLabel("Password").fill("seven tidy gulls");
  await late.getByRole("button", { name: "Begin to teach here" }).click();
  await expect(late.locator(".complaint")).toContainText("It may have been used");
});

test("a teacher who lost the password comes back by a colleague's word, and by the server's", async ({ browser }) => {
  test.slow();
  const { page: elsewhere } = await newPage(browser);
  await signIn(elsewhere, TEACHER);
  await expect(elsewhere.getByRole("heading", { name: "Your classes" })).toBeVisible();

  const { page: bo } = await newPage(browser);
  await signIn(bo, BO);
  await expect(bo.getByRole("heading", { name: "Your classes" })).toBeVisible();
  await bo.goto(`${server.address}/class/teachers`);
  await bo.getByLabel("Your colleague's e-mail address").fill(BO.email);
  await bo.getByRole("button", { name: "Make a way back" }).click();
  await expect(bo.locator(".complaint").filter({ hasText: "your own address" })).toBeVisible();
  await bo.getByLabel("Your colleague's e-mail address").fill(TEACHER.email);
  await bo.getByRole("button", { name: "Make a way back" }).click();
  await expect(bo.getByText("The word for Ida Brandt.")).toBeVisible();
  const link = await linkShown(bo);
  await expectWellMade(bo);

  const { page: ida } = await newPage(browser);
  await ida.goto(`${server.address}/class`);
  await ida.getByRole("link", { name: "I lost my password" }).click();
  await expect(ida.getByRole("heading", { name: "How to get the word" })).toBeVisible();
  await expectWellMade(ida);
  await ida.goto("about:blank");
  await ida.goto(link);
  await ida.getByRole("textbox", { name: "New password" }).fill("nine new brooms");
  await ida.getByRole("button", { name: "Take this password" }).click();
  await expect(ida.getByRole("heading", { name: "Your classes" })).toBeVisible();
  await expect(ida.getByText("Tuesday drawing")).toBeVisible();
  await elsewhere.reload();
  await expect(elsewhere.getByRole("heading", { name: "Students" })).toBeVisible();
  await ida.goto(`${server.address}/class/teachers`);
  await expect(ida.getByText("For you, made by Bo Lind")).toBeVisible();

  // She changes it once more herself, and is signed out everywhere but here.
  await signIn(elsewhere, { ...TEACHER, password: "nine new brooms" });
  await expect(elsewhere.getByRole("heading", { name: "Your classes" })).toBeVisible();
  await ida.getByLabel("Old password").fill("not the old one");
  await ida.getByRole("textbox", { name: "New password" }).fill("ten tall towers");
  await ida.getByRole("button", { name: "Change the password" }).click();
  await expect(ida.locator(".complaint").filter({ hasText: "The old password is not right." })).toBeVisible();
  await ida.getByLabel("Old password").fill("nine new brooms");
  await ida.getByRole("button", { name: "Change the password" }).click();
  await expect(ida.getByText("Your password is changed.")).toBeVisible();
  await ida.reload();
  await expect(ida.getByRole("heading", { name: "Your password" })).toBeVisible();
  await elsewhere.reload();
  await expect(elsewhere.getByRole("heading", { name: "Students" })).toBeVisible();

  // Nobody else is there to ask: whoever runs the server makes one beside it.
  const program = [packageProgram(PROJECT_ROOT, "tsx"), join(PROJECT_ROOT, "lib", "cli", "way-back.ts"), TEACHER.email];
  const env = { ...process.env, PLASTERLINE_DATA: server.folder, DATABASE_URL: "" };
  const { stdout } = spawnSync(process.execPath, program, { env, encoding: "utf8" });
  const word = /^ {2}([A-Z]{4}(?:-[A-Z]{4}){4})$/m.exec(stdout)?.[1] ?? stdout;
  await elsewhere.goto(`${server.address}/class/way-back`);
  await elsewhere.getByLabel("Word of the way back").fill(word);
  await elsewhere.getByRole("textbox", { name: "New password" }).fill("eleven elms");
  await elsewhere.getByRole("button", { name: "Take this password" }).click();
  await expect(elsewhere.getByRole("heading", { name: "Your classes" })).toBeVisible();
  await ida.goto(`${server.address}/class`);
  await expect(ida.getByRole("heading", { name: "Students" })).toBeVisible();
  // No log holds a name, an address or a word.
  expect(server.said()).not.toMatch(new RegExp(`Brandt|Lind|tidemill|${word}|${link.split("#")[1]}`));
});
