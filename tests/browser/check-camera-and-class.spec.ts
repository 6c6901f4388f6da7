import { writeFileSync } from "node:fs";
import { expect, test } from "@playwright/test";
import sharp from "sharp";
import { confirmAll, exercise, giveFile, PHONE, photograph } from "./check-page";
import { type ClassServer, serveClass, TEACHER } from "./class-server";

test("the live view says what is wanted, presses its own shutter, and the photograph is read", async ({
  playwright,
  baseURL,
}, info) => {
  test.setTimeout(180_000);
  // A camera that shows the same photograph again and again.
  const frame = await sharp((await photograph(exercise, "good")).jpeg)
    .resize(1080)
    .jpeg({ quality: 88 })
    .toBuffer();
  const film = info.outputPath("camera.mjpeg");
  writeFileSync(film, Buffer.concat([frame, frame, frame, frame]));
  const { launchOptions } = info.project.use;
  const browser = await playwright.chromium.launch({
    ...launchOptions,
    args: [
      ...(launchOptions?.args ?? []),
      "--use-fake-ui-for-media-stream",
      "--use-fake-device-for-media-stream",
      `--use-file-for-fake-video-capture=${film}`,
    ],
  });
  const context = await browser.newContext({
    viewport: PHONE,
    hasTouch: true,
    isMobile: true,
    permissions: ["camera"],
  });
  const page = await context.newPage();
  await page.goto(`${baseURL}/check`);
  // The words change faster than a test looks: the page itself notes them.
  await page.evaluate(() => {
    new MutationObserver(() => {
      const words = document.querySelector(".check-live-words")?.textContent ?? "";
      document.documentElement.dataset.said = `${document.documentElement.dataset.said ?? ""}|${words}`;
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  });
  await page.getByRole("button", { name: "Open the camera" }).click();
  await expect(page.getByRole("heading", { name: "Is this what you drew?" })).toBeVisible({ timeout: 90_000 });
  await expect(page.locator("html")).toHaveAttribute("data-said", /8 of 8 marks seen: hold still\..*That is it\./);
  await expect(page.locator(".check-title")).toHaveText(exercise.title);
  await browser.close();
});

test.describe("in a class", () => {
  let server: ClassServer;
  test.beforeAll(async () => {
    server = await serveClass();
  });
  test.afterAll(async () => server.close());

  test("a drawing is handed in from its photograph, and the teacher finds its marks", async ({ browser }) => {
    test.setTimeout(240_000);
    const teacher = await (await browser.newContext()).newPage();
    await teacher.goto(`${server.address}/class`);
    await teacher.getByLabel("Your name").fill(TEACHER.name);
    await teacher.getByLabel("E-mail address").fill(TEACHER.email);
    await teacher.getByLabel("Password").fill(TEACHER.password);
    await teacher.getByRole("button", { name: "Begin to teach here" }).click();
    await teacher.getByLabel("Name of the class").fill("First year, Friday");
    await teacher.getByRole("button", { name: "Make the class" }).click();
    const code = (await teacher.locator(".class-code").textContent()) ?? "";
    const student = await (await browser.newContext({ viewport: PHONE })).newPage();
    await student.goto(`${server.address}/class/join?code=${code}`);
    await student.getByLabel("Your name").fill("Wim");
    await student.getByRole("button", { name: "Join" }).click();
    await student.getByRole("link", { name: "I have it: go on to your class" }).click();
    await teacher.getByRole("link", { name: "Set homework" }).click();
    await teacher.getByLabel("Title").fill("On paper");
    await teacher.locator("summary", { hasText: /^Whole sets/ }).click();
    await teacher.getByRole("checkbox", { name: exercise.title }).check();
    await teacher.getByRole("button", { name: "Set it", exact: true }).click();
    await expect(teacher.getByRole("heading", { name: "On paper" })).toBeVisible();

    await student.reload();
    await student.getByRole("link", { name: "From a photograph" }).click();
    await expect(student.getByText("For “On paper”")).toBeVisible();
    await giveFile(student, (await photograph(exercise, "good")).jpeg);
    await expect(student.getByRole("heading", { name: "Is this what you drew?" })).toBeVisible({ timeout: 90_000 });
    await confirmAll(student);
    await student.getByRole("button", { name: "Hand it in for “On paper”" }).click();
    await expect(student.locator("[data-handed-in]")).toContainText("Handed in");
    await teacher.reload();
    await expect(teacher.locator("[data-handed-in]")).toHaveText([/^1 of 1/]);
  });
});
