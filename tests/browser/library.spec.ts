import AxeBuilder from "@axe-core/playwright";
import { type Browser, type BrowserContextOptions, expect, type Page, test } from "@playwright/test";
import { FOOT_M } from "@/lib/measure/length";
import { type ClassServer, serveClass, TEACHER } from "./class-server";
import { toPage } from "./drive";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const COLLEAGUE = { name: "Bo Lind", email: "bo@tidemill.example", password: "eight slow herons" };
const LAPTOP = { width: 1366, height: 768 };
const PHONE = { width: 390, height: 844 };
/** Where pictures of the screens go, for whoever looks at them. */
const SHOTS = process.env.PLASTERLINE_SHOTS;
const SIZES = { phone: PHONE, laptop: LAPTOP, projector: { width: 1920, height: 1080 } } as const;

type Feet = readonly [x: number, y: number];
const WALLS: readonly Feet[] = [
  [-10, 2],
  [-7, 14],
  [7, 14],
  [10, 2],
];

// What one test made, the next one uses.
test.describe.configure({ mode: "serial" });

let server: ClassServer;
test.beforeAll(async () => {
  server = await serveClass();
});
test.afterAll(async () => server.close());

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const link = (page: Page, name: string) => page.getByRole("link", { name, exact: true });

/** A browser of its own; what it says against a page fails the test. */
async function openBrowser(browser: Browser, options: BrowserContextOptions = { viewport: LAPTOP }): Promise<Page> {
  const page = await (await browser.newContext(options)).newPage();
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  return page;
}
const complaints: string[] = [];
test.afterEach(() => {
  expect(complaints.splice(0)).toEqual([]);
});

/** In both lights: axe finds nothing, and the page is no wider than its window. In every size a picture, where one is wanted. */
async function expectSound(page: Page, name: string) {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
    const found = violations.map(
      ({ id, nodes }) => `${name}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`,
    );
    expect(found).toEqual([]);
    if (!SHOTS) continue;
    const before = page.viewportSize() ?? LAPTOP;
    for (const [size, viewport] of Object.entries(SIZES)) {
      await page.setViewportSize(viewport);
      await page.screenshot({ path: `${SHOTS}/${name}-${size}-${colorScheme}.png`, fullPage: true });
    }
    await page.setViewportSize(before);
  }
  await page.emulateMedia({ colorScheme: null });
  const tooWide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(tooWide).toBeLessThanOrEqual(0);
}

async function signIn(page: Page, { email, password }: typeof COLLEAGUE) {
  await page.getByLabel("E-mail address").fill(email);
  await page.getByLabel("Password").fill(password);
  await button(page, "Sign in").click();
}

async function openDesk(page: Page) {
  await page.goto(`${server.address}/draft`);
  await deskOpened(page);
}

async function deskOpened(page: Page) {
  await page.waitForURL(/\/draft$/);
  await page.locator(".draft-board[data-state=keeping]").waitFor();
  // The magnification that keeps lettering legible comes after the first paint.
  await page.locator("#plan-drawing[transform]").waitFor();
}

async function drawWalls(page: Page) {
  await button(page, "Draw").click();
  await button(page, "Draw walls").click();
  for (const [x, y] of WALLS) {
    const at = await toPage(page, [x * FOOT_M, y * FOOT_M], "plan");
    await page.mouse.click(at.x, at.y);
  }
  await button(page, "End the run").click();
  await button(page, "Put the pencil down").click();
}

/** Gives the plan another title, and waits until the browser has it. */
async function retitle(page: Page, title: string) {
  await button(page, "Make it an exercise").click();
  const field = page.getByLabel("Title", { exact: true });
  await field.fill(title);
  await field.press("Tab");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
}

const openFold = (page: Page) => page.locator("summary", { hasText: "Plans" }).click();
const inLibrary = (page: Page) => page.locator(".library-part");

/** The titles of what the library has of a plan: itself, and its versions. */
async function kept(page: Page): Promise<string[]> {
  const files = await page
    .locator("a[download]")
    .evaluateAll((links) => links.map((each) => each.getAttribute("href")));
  const texts = await Promise.all(
    files.map(async (file) => (await page.request.get(`${server.address}${file}`)).json()),
  );
  return texts.map(({ title }) => title).sort();
}

test("a desk without anyone signed in says and asks nothing of a library", async ({ browser }) => {
  const page = await openBrowser(browser);
  const asked: string[] = [];
  page.on("request", (request) => {
    if (request.url().includes("/api/")) asked.push(request.url());
  });
  await openDesk(page);
  await openFold(page);
  await expect(button(page, "New plan in feet")).toBeVisible();
  await expect(inLibrary(page)).toHaveCount(0);
  expect(asked).toEqual([]);
  await page.context().close();
});

let sharedLink = "";
let teacher: Page;

test("a teacher keeps a plan, opens it on another computer, and where both change it nothing is lost", async ({
  browser,
}) => {
  test.setTimeout(300_000);
  teacher = await openBrowser(browser);
  await teacher.goto(`${server.address}/class`);
  await teacher.getByLabel("Your name").fill(TEACHER.name);
  await teacher.getByLabel("E-mail address").fill(TEACHER.email);
  await teacher.getByLabel("Password").fill(TEACHER.password);
  await button(teacher, "Begin to teach here").click();
  await teacher.getByLabel("Name of the class").fill("First year, Thursday");
  await button(teacher, "Make the class").click();
  await teacher.locator(".class-code").waitFor();
  await teacher.goto(`${server.address}/class/plans`);
  await expect(teacher.getByText("There is none in it just now.")).toBeVisible();

  await openDesk(teacher);
  await drawWalls(teacher);
  await retitle(teacher, "The ferry house");
  await openFold(teacher);
  await expect(inLibrary(teacher)).toContainText("This plan is in this browser only.");
  await teacher.getByLabel("What is new in it, if you like").fill("Walls only");
  await expectSound(teacher, "desk-not-kept");
  await button(teacher, "Keep it in your library").click();
  await expect(inLibrary(teacher)).toContainText("It is in your library as it is here");
  await expect(button(teacher, "Keep the changes in your library")).toHaveCount(0);

  // Another computer, which knows nothing of it.
  const home = await openBrowser(browser);
  await home.goto(`${server.address}/class`);
  await signIn(home, TEACHER);
  await link(home, "1 plan in your library").click();
  await expect(home.getByText("Walls only")).toBeVisible();
  await expectSound(home, "plans");
  await link(home, "Open in Draft").click();
  await deskOpened(home);
  await expect(home.getByRole("heading", { level: 1 })).toHaveText("The ferry house");
  await openFold(home);
  await expect(inLibrary(home)).toContainText("It is in your library as it is here");
  await openFold(home);
  await retitle(home, "The ferry house, at home");
  await openFold(home);
  await expect(inLibrary(home)).toContainText("Changed here since it was kept in your library");
  await button(home, "Keep the changes in your library").click();
  await expect(inLibrary(home)).toContainText("It is in your library as it is here");

  // The first computer changed the same plan meanwhile.
  await openFold(teacher);
  await retitle(teacher, "The ferry house, at school");
  await openFold(teacher);
  await button(teacher, "Keep the changes in your library").click();
  await expect(inLibrary(teacher)).toContainText("Another browser kept a change of this plan first");
  await expect(inLibrary(teacher)).toContainText("nothing is lost");
  await expectSound(teacher, "desk-beside");
  const look = await teacher.context().newPage();
  await look.goto(`${server.address}/class/plans`);
  await link(look, "The ferry house, at home").click();
  await expect(look.getByText("kept from another browser beside the plan")).toBeVisible();
  expect(await kept(look)).toEqual(["The ferry house", "The ferry house, at home", "The ferry house, at school"]);
  await look.close();
  await button(teacher, "Put mine in its place").click();
  await expect(inLibrary(teacher)).toContainText("It is in your library as it is here");

  // The other one is told when it opens its desk again, and takes the newer one.
  await openDesk(home);
  await openFold(home);
  await expect(inLibrary(home)).toContainText("Your library has a newer one");
  await button(home, "Open the one in the library").click();
  await deskOpened(home);
  await expect(home.getByRole("heading", { level: 1 })).toHaveText("The ferry house, at school");

  // Where it has changed here as well, whoever opens it says which, and the other one stays.
  await retitle(home, "The ferry house, late at home");
  await openFold(teacher);
  await retitle(teacher, "The ferry house in the morning");
  await openFold(teacher);
  await button(teacher, "Keep the changes in your library").click();
  await expect(inLibrary(teacher)).toContainText("It is in your library as it is here");
  await home.goto(`${server.address}/class/plans`);
  await link(home, "Open in Draft").click();
  await expect(home.getByText("This plan has changed in two places")).toBeVisible();
  await expectSound(home, "either");
  await button(home, "Open the one in the library").click();
  await deskOpened(home);
  await expect(home.getByRole("heading", { level: 1 })).toHaveText("The ferry house in the morning");
  await openFold(home);
  await button(home, "The ferry house, late at home").click();
  await expect(home.getByRole("heading", { level: 1 })).toHaveText("The ferry house, late at home");
  await expect(inLibrary(home)).toContainText("Your library has a newer one");

  await teacher.goto(`${server.address}/class/plans`);
  await link(teacher, "The ferry house in the morning").click();
  await teacher.getByRole("heading", { name: "Earlier versions" }).waitFor();
  expect(await kept(teacher)).toEqual([
    "The ferry house",
    "The ferry house in the morning",
    "The ferry house, at home",
    "The ferry house, at school",
  ]);
  await expectSound(teacher, "plan");
  await home.context().close();
});

test("without the network a plan is still kept in the browser, and says so", async () => {
  await openDesk(teacher);
  await retitle(teacher, "The ferry house by night");
  await teacher.context().setOffline(true);
  await openFold(teacher);
  await button(teacher, "Keep the changes in your library").click();
  await expect(inLibrary(teacher)).toContainText("The class server could not be reached. Your plan is still kept");
  // The browser itself tells its console of a request that went nowhere.
  expect(complaints.splice(0).every((each) => each.includes("ERR_INTERNET_DISCONNECTED"))).toBe(true);
  await teacher.context().setOffline(false);
  await button(teacher, "Keep the changes in your library").click();
  await expect(inLibrary(teacher)).toContainText("It is in your library as it is here");
});

test("a colleague takes a copy by the link and changes it; the owner's stays, and the link can be ended", async ({
  browser,
}) => {
  test.setTimeout(300_000);
  await teacher.goto(`${server.address}/class/plans`);
  await link(teacher, "The ferry house by night").click();
  await button(teacher, "Make a link").click();
  sharedLink = (await teacher.getByLabel("Link for a colleague").inputValue()).replace(/^https?:\/\/[^/]+/, "");
  expect(sharedLink).toMatch(/^\/class\/shared#[A-Z]{4}(-[A-Z]{4}){4}$/);
  await expectSound(teacher, "plan-shared");
  await teacher.goto(`${server.address}/class/teachers`);
  await button(teacher, "Make an invitation").click();
  const word = (await teacher.locator("[data-word]").textContent()) ?? "";

  const colleague = await openBrowser(browser);
  await colleague.goto(`${server.address}${sharedLink}`);
  await expect(colleague.getByRole("heading", { level: 1 })).toHaveText("A plan for a teacher");
  await expect(colleague.getByText("If you teach here, sign in")).toBeVisible();
  await expect(colleague.getByText("The ferry house by night")).toHaveCount(0);
  await expectSound(colleague, "shared-nobody");
  await colleague.goto(`${server.address}/class/invited#${word}`);
  await colleague.getByLabel("Your name").fill(COLLEAGUE.name);
  await colleague.getByLabel("E-mail address").fill(COLLEAGUE.email);
  await colleague.getByLabel("Password").fill(COLLEAGUE.password);
  await colleague.locator("form button[type=submit]").click();
  await colleague.getByRole("heading", { name: "Your classes" }).waitFor();
  await button(colleague, "Sign out").click();
  await button(colleague, "Sign in").waitFor();
  // Signed out, the link waits for the sign-in and then shows the plan.
  await colleague.goto(`${server.address}${sharedLink}`);
  await signIn(colleague, COLLEAGUE);
  await expect(colleague.getByRole("heading", { name: "The ferry house by night" })).toBeVisible();
  await expect(colleague.getByText(`${TEACHER.name} shares it`)).toBeVisible();
  await expect(colleague.getByRole("img", { name: /seen through its proscenium/ })).toBeVisible();
  await expectSound(colleague, "shared");
  await button(colleague, "Take a copy").click();
  await expect(colleague.getByText("The copy is in your library.")).toBeVisible();
  await link(colleague, "Open it in Draft").click();
  await deskOpened(colleague);
  await retitle(colleague, "Bo's ferry house");
  await openFold(colleague);
  await button(colleague, "Keep the changes in your library").click();
  await expect(inLibrary(colleague)).toContainText("It is in your library as it is here");

  await teacher.goto(`${server.address}/class/plans`);
  await expect(teacher.locator(".class-row")).toHaveCount(1);
  await link(teacher, "The ferry house by night").click();
  await button(teacher, "End the link").click();
  await expect(teacher.getByText("The link leads nowhere now.")).toBeVisible();
  await colleague.goto(`${server.address}/class`);
  await colleague.goto(`${server.address}${sharedLink}`);
  await expect(colleague.getByText("This link leads to no plan.")).toBeVisible();
  await expectSound(colleague, "shared-ended");
  expect(complaints.splice(0).every((each) => each.includes("422"))).toBe(true);
  await colleague.goto(`${server.address}/class/plans`);
  await expect(link(colleague, "Bo's ferry house")).toBeVisible();
  await colleague.context().close();
});

test("a plan of the library is set as homework, and a student solves its first mark", async ({ browser }) => {
  test.setTimeout(300_000);
  await teacher.goto(`${server.address}/class`);
  await link(teacher, "First year, Thursday").click();
  const code = (await teacher.locator(".class-code").textContent()) ?? "";
  await teacher.goto(`${server.address}/class/plans`);
  await link(teacher, "The ferry house by night").click();
  await link(teacher, "First year, Thursday").click();
  await expect(teacher.getByLabel("Title")).toHaveValue("The ferry house by night");
  await expect(teacher.locator(".homework-chosen")).toContainText("The ferry house by night");
  await expectSound(teacher, "set-homework");
  await button(teacher, "Set it").click();
  await expect(teacher.getByRole("heading", { level: 1 })).toHaveText("The ferry house by night");

  const student = await openBrowser(browser, { viewport: PHONE });
  await student.goto(`${server.address}/class/join?code=${code}`);
  await student.getByLabel("Your name").fill("Wim");
  await button(student, "Join").click();
  await link(student, "I have it: go on to your class").click();
  // The link that teachers share is no student's.
  await student.goto(`${server.address}${sharedLink}`);
  await expect(student.getByText("It is no homework of yours.")).toBeVisible();
  await expectSound(student, "shared-student");
  await link(student, "To your class").click();
  await student.locator(".class-work").getByRole("link").first().click();
  await student.locator(".sheet[data-opened=true]").waitFor();
  await expect(student.locator(".notes-step")).toHaveText(/^Step 1 of \d+$/);
  const pane = (await student.locator("#picture-drawing").boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  await student.mouse.click(pane.x + pane.width / 3, pane.y + pane.height / 2);
  await button(student, "Set it down").click();
  await expect(student.locator(".notes-presses .press[data-weight=main]")).toBeVisible();
  await student.context().close();
});

test("a plan from the desk is set without being kept first, and one thrown away is taken back or erased", async () => {
  test.setTimeout(120_000);
  await openDesk(teacher);
  await button(teacher, "Make it an exercise").click();
  await button(teacher, "Set it as homework").click();
  await expect(teacher.getByText("is to be set as homework. To which class?")).toBeVisible();
  await expectSound(teacher, "from-desk");
  await teacher.locator("section", { hasText: "From the drafting desk" }).getByRole("link").click();
  await expect(teacher.locator(".homework-chosen")).toContainText("The ferry house by night");
  await teacher.getByLabel("Title").fill("Straight from the desk");
  await button(teacher, "Set it").click();
  await expect(teacher.getByRole("heading", { level: 1 })).toHaveText("Straight from the desk");
  await teacher.goto(`${server.address}/class`);
  await expect(teacher.getByText("To which class?")).toHaveCount(0);

  await teacher.goto(`${server.address}/class/plans`);
  await link(teacher, "The ferry house by night").click();
  await button(teacher, "Go back to it").last().click();
  await expect(teacher.getByText("That version is the plan again.")).toBeVisible();
  await expect(teacher.getByRole("heading", { level: 1 })).toHaveText("The ferry house");
  await button(teacher, "Throw “The ferry house” away").click();
  await expect(teacher.getByRole("heading", { name: "Thrown away" })).toBeVisible();
  await expectSound(teacher, "thrown-away");
  await button(teacher, "Take The ferry house back").click();
  await expect(teacher.getByRole("heading", { name: "Thrown away" })).toHaveCount(0);
  await link(teacher, "The ferry house").click();
  await button(teacher, "Throw “The ferry house” away").click();
  await button(teacher, "Erase The ferry house for good").click();
  await button(teacher, "Really erase The ferry house for good").click();
  await expect(teacher.getByText("There is none in it just now.")).toBeVisible();

  // In the browser it is still there, and can be kept anew.
  await openDesk(teacher);
  await retitle(teacher, "The ferry house once more");
  await openFold(teacher);
  await button(teacher, "Keep the changes in your library").click();
  await expect(inLibrary(teacher)).toContainText("This plan is in your library no more.");
  expect(complaints.splice(0).every((each) => each.includes("422"))).toBe(true);
  await button(teacher, "Make it a new one").click();
  await button(teacher, "Keep it in your library").click();
  await expect(inLibrary(teacher)).toContainText("It is in your library as it is here");
  await teacher.context().close();
});
