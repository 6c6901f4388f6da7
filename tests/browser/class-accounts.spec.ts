import AxeBuilder from "@axe-core/playwright";
import { type Browser, expect, type Page, test } from "@playwright/test";
import { type ClassServer, serveClass, TEACHER } from "./class-server";

const PHONE = { width: 390, height: 844 };
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

let server: ClassServer;
test.beforeAll(async () => {
  server = await serveClass();
});
test.afterAll(async () => server.close());

async function expectNothingFound(page: Page) {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(
    violations.map(({ id, nodes }) => `${page.url()}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`),
  ).toEqual([]);
}

async function joinByPhone(browser: Browser, code: string, name: string) {
  const page = await (await browser.newContext({ viewport: PHONE })).newPage();
  await page.goto(`${server.address}/class/join?code=${code}`);
  await expect(page.getByLabel("Class code")).toHaveValue(code);
  await page.getByLabel("Your name").fill(name);
  await page.getByRole("button", { name: "Join" }).click();
  const words = page.locator("[data-passphrase]");
  await expect(words).toHaveText(/^[a-z]+ [a-z]+ [a-z]+ [a-z]+$/);
  const passphrase = (await words.textContent()) ?? "";
  const link = (await page.getByRole("link", { name: "private link" }).getAttribute("href")) ?? "";
  return { page, passphrase, link };
}

test("a teacher begins, makes a class, and three students join, leave and come back", async ({ browser }) => {
  test.slow();
  const teacher = await (await browser.newContext()).newPage();
  await teacher.goto(`${server.address}/class`);
  await expect(teacher.getByRole("heading", { name: "You are the first" })).toBeVisible();
  await expectNothingFound(teacher);

  // What cannot be taken is told, and nothing that was written is lost.
  await teacher.getByLabel("Your name").fill(TEACHER.name);
  await teacher.getByLabel("E-mail address").fill(TEACHER.email);
  await teacher.getByLabel("Password").fill("short");
  await teacher.getByRole("button", { name: "Begin to teach here" }).click();
  await expect(teacher.locator(".complaint")).toContainText("A password needs at least 10 letters");
  await expect(teacher.getByLabel("E-mail address")).toHaveValue(TEACHER.email);
  await teacher.getByLabel("Password").fill(TEACHER.password);
  await teacher.context().setOffline(true);
  await teacher.getByRole("button", { name: "Begin to teach here" }).click();
  await expect(teacher.locator(".complaint")).toContainText(
    "The server cannot be reached. What you wrote is still here",
  );
  await teacher.context().setOffline(false);
  await teacher.getByRole("button", { name: "Begin to teach here" }).click();

  await expect(teacher.getByRole("heading", { name: "Your classes" })).toBeVisible();
  await teacher.getByLabel("Name of the class").fill("First year, Thursday");
  await teacher.getByRole("button", { name: "Make the class" }).click();
  await expect(teacher.getByRole("heading", { name: "First year, Thursday" })).toBeVisible();
  const code = (await teacher.locator(".class-code").textContent()) ?? "";
  expect(code).toMatch(/^[A-Z]{6}$/);

  const wim = await joinByPhone(browser, code, "Wim");
  const tess = await joinByPhone(browser, code, "Tess");
  const noor = await joinByPhone(browser, code, "Noor");
  await expectNothingFound(wim.page);
  await wim.page.getByRole("link", { name: "I have it: go on to your class" }).click();
  await expect(wim.page.getByText("First year, Thursday")).toBeVisible();
  await expectNothingFound(wim.page);
  expect(await wim.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
    0,
  );

  // No student sees the teacher's sheet, nor what is kept of anyone.
  const own = await wim.page.goto(teacher.url());
  expect(own?.status()).toBe(404);
  const classId = teacher.url().split("/").at(-1);
  expect((await wim.page.request.get(`${server.address}/api/class/export?classId=${classId}`)).status()).toBe(403);

  await wim.page.goto(`${server.address}/class`);
  await wim.page.getByRole("button", { name: "Sign out" }).click();
  await expect(wim.page.getByRole("heading", { name: "Students" })).toBeVisible();
  await wim.page.getByRole("link", { name: "Come back to your class" }).click();
  await wim.page.getByLabel("Class code").fill(code.toLowerCase());
  await wim.page.getByLabel("Your name").fill("wim");
  await wim.page.getByLabel("Passphrase").fill("oat oat oat oat");
  await wim.page.getByRole("button", { name: "Come back" }).click();
  await expect(wim.page.locator(".complaint")).toContainText("is not right");
  await expect(wim.page.getByLabel("Your name")).toHaveValue("wim");
  await wim.page.getByLabel("Passphrase").fill(wim.passphrase);
  await wim.page.getByRole("button", { name: "Come back" }).click();
  await expect(wim.page.getByText("First year, Thursday")).toBeVisible();

  // Another device follows the private link, whose secret never reaches the server nor stays in the address.
  const other = await (await browser.newContext({ viewport: PHONE })).newPage();
  const asked: string[] = [];
  other.on("request", (request) => asked.push(request.url()));
  await other.goto(tess.link);
  await expect(other.getByLabel("Your name")).toHaveValue("Tess");
  expect(other.url()).toBe(`${server.address}/class/back`);
  await expectNothingFound(other);
  await other.getByRole("button", { name: "Come back" }).click();
  await expect(other.getByText("as Tess")).toBeVisible();
  expect(asked.filter((url) => url.includes(tess.passphrase.replaceAll(" ", "-")))).toEqual([]);

  await teacher.reload();
  await expect(teacher.locator(".class-row")).toContainText(["Noor", "Tess", "Wim"]);
  await expectNothingFound(teacher);
  await teacher.getByRole("button", { name: "New passphrase for Wim" }).click();
  await expect(teacher.locator("[data-passphrase]")).not.toHaveText(wim.passphrase);
  await wim.page.reload();
  await expect(wim.page.getByRole("heading", { name: "Students" })).toBeVisible();
  await teacher.getByRole("button", { name: "Erase Noor" }).click();
  await teacher.getByRole("button", { name: "Yes, erase Noor" }).click();
  await expect(teacher.getByText("2 places")).toBeVisible();
  await noor.page.goto(`${server.address}/class`);
  await expect(noor.page.getByRole("heading", { name: "Students" })).toBeVisible();

  await teacher.getByRole("button", { name: "Sign out" }).click();
  await expect(teacher.getByRole("heading", { name: "Teachers" })).toBeVisible();
  await expectNothingFound(teacher);
  await teacher.getByLabel("E-mail address").fill(TEACHER.email);
  await teacher.getByLabel("Password").fill(TEACHER.password);
  await teacher.getByRole("button", { name: "Sign in" }).click();
  await expect(teacher.getByText("2 students")).toBeVisible();
  // No log holds a name, a code or a word.
  expect(server.said()).not.toMatch(
    new RegExp(`Wim|Tess|Noor|Brandt|tidemill|${code}|${wim.passphrase.split(" ")[0]}`),
  );
});
