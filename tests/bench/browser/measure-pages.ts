import { loadavg } from "node:os";
import { type Browser, chromium } from "@playwright/test";
import { findChromium } from "@/lib/cli/find-chromium.mjs";
import { toPage } from "../../browser/drive";
import { exerciseText, manyWalls, serveCourse } from "../../browser/other-course";
import { measureDraft } from "./measure-draft";
import { measureScripts } from "./measure-scripts";
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

/** Which pages to measure; all of them when none is named. */
const wanted = process.argv.slice(2);

const found = findChromium(process);
if (found.kind !== "found")
  throw new Error("The page benchmarks need a Chromium: run npm test once, or set PLASTERLINE_CHROMIUM.");
const browser = await chromium.launch({
  executablePath: found.path,
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"],
});
const course = await serveCourse({ "walls/many.json": exerciseText("many", manyWalls(WALLS)) });
console.log(`load of the machine over the last minute: ${(loadavg()[0] ?? 0).toFixed(2)}`);
try {
  const wants = (page: string) => wanted.length === 0 || wanted.includes(page);
  if (wants("practise")) {
    await measureDrag(browser, `${course.address}/practise/many`);
    await measureScripts(browser, `${course.address}/practise/many`, "the practise page");
  }
  if (wants("draft")) await measureDraft(browser, course.address);
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
  const frames = await page.evaluate(() => {
    const { frames, waits } = window as unknown as Frames;
    return { frames, waits };
  });
  console.log(`dragging a mark, ${WALLS} walls, processor slowed ${SLOWDOWN} times: ${sayFrames(frames)}`);
  await page.close();
}
