import type { Browser, Page } from "@playwright/test";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { newDraft } from "@/lib/draft/new-draft";
import { writeDraft } from "@/lib/draft/write-draft";
import type { PlanPoint } from "@/lib/stage/frame";
import { toPage } from "../../browser/drive";
import { type Frames, sayFrames, timeFrames } from "./time-frames";

const RUNS = 15;
const WALLS_A_RUN = 20;
const SLOWDOWN = 4;
const MOVES = 240;
/** Between two moves, about a frame of a screen. */
const FRAME_MS = 16;

/** The corner of a run of walls that zigzags across the stage, metres. */
function cornerOf(run: number, i: number): PlanPoint {
  return [-4.4 + i * 0.44, 0.6 + run * 0.42 + (i % 2) * 0.2];
}

/** A kept plan of three hundred walls, as the browser has it. */
function keptPlan(): string {
  let draft = newDraft("m");
  for (let run = 0; run < RUNS; run++) {
    const corners = Array.from({ length: WALLS_A_RUN + 1 }, (_, i) => cornerOf(run, i));
    const edited = applyEdit(draft, { edit: "add-walls", corners, closed: false, height: 2.4, thickness: 0.03 });
    if (!edited.ok) throw new Error(edited.say);
    draft = edited.draft;
  }
  const file = writeDraft(draft);
  const begun = { hand: { kind: "choose" }, measures: null, done: [], undone: [] };
  return JSON.stringify({ format: "plasterline.draft/1", title: "Many", changed: "", now: file, base: file, ...begun });
}

/** The drafting desk with a plan of 300 walls: how soon it stands there, and what each frame costs while things are dragged. */
export async function measureDraft(within: Browser, address: string): Promise<void> {
  const page = await within.newPage({ viewport: { width: 1366, height: 768 } });
  await page.goto(`${address}/draft`);
  await page.evaluate((kept) => {
    localStorage.setItem("plasterline.draft.plan.1", kept);
    localStorage.setItem("plasterline.draft.open", '"1"');
  }, keptPlan());
  await page.reload();
  await page.locator('#plan-drawing [data-stroke^="plan.wall.W300."]').first().waitFor({ state: "attached" });
  const opened = await page.evaluate(() => performance.now());
  console.log(
    `a plan of ${RUNS * WALLS_A_RUN} walls stands on the desk ${opened.toFixed(0)} ms after its address was opened`,
  );
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWDOWN });
  await page.evaluate(timeFrames);
  const middle = cornerOf(7, 10);
  await measureDrag(page, middle, "a corner");
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  await page.getByRole("button", { name: "Draw walls", exact: true }).click();
  const begin = await toPage(page, [-4, -0.5], "plan");
  await page.mouse.click(begin.x, begin.y);
  await measureDrag(page, [0, -0.6], "the next wall");
  await page.close();
}

async function measureDrag(page: Page, from: PlanPoint, what: string): Promise<void> {
  const start = await toPage(page, [from[0], from[1]], "plan");
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.evaluate(() => {
    (window as unknown as { frames: number[] }).frames.length = 0;
  });
  for (let i = 0; i < MOVES; i++) {
    await page.mouse.move(start.x + Math.sin(i / 9) * 60, start.y - (i % 40));
    await page.waitForTimeout(FRAME_MS);
  }
  await page.mouse.up();
  const frames = await page.evaluate(() => (window as unknown as Frames).frames);
  console.log(
    `dragging ${what}, ${RUNS * WALLS_A_RUN} walls, processor slowed ${SLOWDOWN} times: ${sayFrames(frames)}`,
  );
}
