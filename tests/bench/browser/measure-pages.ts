import { gzipSync } from "node:zlib";
import { type Browser, chromium } from "@playwright/test";
import { findChromium } from "@/lib/cli/find-chromium.mjs";
import { toPage } from "../../browser/drive";
import { exerciseText, manyWalls, serveCourse } from "../../browser/other-course";
import { measureDraft } from "./measure-draft";
import { type Frames, sayFrames, timeFrames } from "./time-frames";

/**
 * What the built pages cost: main-thread time a frame while a mark is dragged over a plan of 200 walls with the
 * processor slowed four times (aim: under 16 ms at the 95th percentile), the JavaScript of the practise page
 * (aim: at most 60 kB gzipped over the 148 kB of a blank page of this stack), and the drafting desk. Prints; asserts nothing.
 */
const WALLS = 200;
const SLOWDOWN = 4;
const MOVES = 240;
/** Between two moves, about a frame of a screen. */
const FRAME_MS = 16;
const BLANK_PAGE_KB = 148;

const found = findChromium(process);
if (found.kind !== "found")
  throw new Error("The page benchmarks need a Chromium: run npm test once, or set PLASTERLINE_CHROMIUM.");
const browser = await chromium.launch({
  executablePath: found.path,
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"],
});
const course = await serveCourse({ "walls/many.json": exerciseText("many", manyWalls(WALLS)) });
try {
  await measureDrag(browser, `${course.address}/practise/many`);
  await measureScripts(browser, `${course.address}/practise/many`);
  await measureDraft(browser, course.address);
} finally {
  await course.close();
  await browser.close();
}

async function measureDrag(within: Browser, address: string): Promise<void> {
  const page = await within.newPage({ viewport: { width: 1366, height: 768 } });
  await page.goto(address);
  await page.locator(".sheet[data-opened=true]").waitFor();
  const start = await toPage(page, [1, 1]);
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWDOWN });
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.evaluate(timeFrames);
  for (let i = 0; i < MOVES; i++) {
    await page.mouse.move(start.x + Math.sin(i / 9) * 160, start.y - (i % 80));
    await page.waitForTimeout(FRAME_MS);
  }
  await page.mouse.up();
  const frames = await page.evaluate(() => (window as unknown as Frames).frames);
  console.log(`dragging a mark, ${WALLS} walls, processor slowed ${SLOWDOWN} times: ${sayFrames(frames)}`);
  await page.close();
}

async function measureScripts(within: Browser, address: string): Promise<void> {
  const page = await within.newPage();
  const sizes: number[] = [];
  page.on("response", async (response) => {
    if (response.request().resourceType() === "script") sizes.push(gzipSync(await response.body()).length);
  });
  await page.goto(address);
  await page.waitForLoadState("networkidle");
  const total = sizes.reduce((sum, size) => sum + size, 0) / 1000;
  console.log(
    `JavaScript of the practise page: ${total.toFixed(0)} kB gzipped in ${sizes.length} files, ${(total - BLANK_PAGE_KB).toFixed(0)} over a blank page`,
  );
  await page.close();
}
