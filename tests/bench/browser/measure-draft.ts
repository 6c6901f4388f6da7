import { loadavg } from "node:os";
import type { Browser, CDPSession, Page } from "@playwright/test";
import { project } from "@/lib/perspective/project";
import type { PlanPoint } from "@/lib/stage/frame";
import { floorHeight } from "@/lib/stage/stage";
import { type Place, toPage } from "../../browser/drive";
import { frameProcessorTimes } from "./frame-processor-time";
import { cornerOf, keptPlan, middleOf, WALLS } from "./many-walls-plan";
import { measureScripts } from "./measure-scripts";
import { type Frames, sayFrames, sayShares, timeFrames } from "./time-frames";

const GROUP = 20;
const SLOWDOWN = 4;
const MOVES = 240;
/** How often the desk is opened: it stands when the last wall is drawn in both drawings. */
const OPENINGS = 5;
/** Between two moves, about a frame of a screen. */
const FRAME_MS = 16;
/** After this the page is at rest, milliseconds. */
const REST_MS = 1200;
/** Pointers move so far out from where they began, across and up, pixels. */
const SWING_PX = { across: 60, up: 40 } as const;
/** The run and the wall of it that are taken hold of. */
const [RUN, NTH] = [7, 10];

/** The drafting desk with a plan of 300 walls: its scripts, how soon it stands there, and what each frame costs while things are dragged. */
export async function measureDraft(within: Browser, address: string): Promise<void> {
  await measureScripts(within, `${address}/draft`, "the drafting desk");
  const { text, exercise } = keptPlan();
  const opened: number[] = [];
  for (let i = 0; i < OPENINGS; i++) {
    const page = await openDesk(within, address, text);
    opened.push(await page.evaluate(() => performance.now()));
    await page.context().close();
  }
  console.log(
    `a plan of ${WALLS} walls stands on the desk, in a browser that keeps nothing but the plan, so many ms after its address ` +
      `was asked for: ${opened.map((ms) => ms.toFixed(0)).join(", ")}`,
  );
  const page = await openDesk(within, address, text);
  const session = await page.context().newCDPSession(page);
  await page.evaluate(timeFrames);
  const desk = { within, page, session };
  await measureDrag(desk, await toPage(page, place(cornerOf(RUN, NTH)), "plan"), "a corner");
  await measureDrag(desk, await toPage(page, place(middleOf(RUN, NTH + 1)), "plan"), "a wall");
  await measureDrag(desk, await toPage(page, place(middleOf(RUN, NTH)), "plan"), "an opening");
  await chooseGroup(page);
  await measureDrag(desk, await toPage(page, place(middleOf(RUN + 2, 1)), "plan"), `a chosen group of ${GROUP}`);
  const { stage, viewer } = exercise;
  const foot = project(viewer, [0, stage.depth, floorHeight(stage, stage.depth)]);
  if (!foot.seen) throw new Error("The back wall of the draft is not seen.");
  const grip = await toPage(page, [stage.opening.width * 0.4, foot.at[1]], "picture");
  await measureDrag(desk, grip, "the back wall's line");
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  await page.getByRole("button", { name: "Draw walls", exact: true }).click();
  const begin = await toPage(page, [-4, -0.5], "plan");
  await page.mouse.click(begin.x, begin.y);
  await measureDrag(desk, await toPage(page, [0, -0.6], "plan"), "the next wall");
  await page.context().close();
}

/** A browser of its own each time, so that no script and no compiled code is at hand from before. */
async function openDesk(within: Browser, address: string, text: string): Promise<Page> {
  const context = await within.newContext({ viewport: { width: 1366, height: 768 } });
  await context.addInitScript((kept) => {
    if (localStorage.getItem("plasterline.draft.open")) return;
    localStorage.setItem("plasterline.draft.plan.1", kept);
    localStorage.setItem("plasterline.draft.open", '"1"');
  }, text);
  const page = await context.newPage();
  await page.goto(`${address}/draft`);
  await page.locator(`#plan-drawing [data-stroke^="plan.wall.W${WALLS}."]`).first().waitFor({ state: "attached" });
  await page.locator(".draft-board[data-state=keeping]").waitFor();
  return page;
}

async function chooseGroup(page: Page): Promise<void> {
  await page.keyboard.down("Control");
  for (let i = 0; i < GROUP; i++) {
    const { x, y } = await toPage(page, place(middleOf(RUN + 2, i)), "plan");
    await page.mouse.click(x, y);
  }
  await page.keyboard.up("Control");
}

type Desk = { readonly within: Browser; readonly page: Page; readonly session: CDPSession };

/**
 * One drag twice: at full speed by the processor time of the page's main thread, times the slowdown; and with the processor
 * slowed, timed by the clock, which on a machine at other work tells of that as well.
 */
async function measureDrag(
  { within, page, session }: Desk,
  start: { readonly x: number; readonly y: number },
  what: string,
): Promise<void> {
  const slowed = (rate: number) => session.send("Emulation.setCPUThrottlingRate", { rate });
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await moveAbout(session, start, 4);
  await page.waitForTimeout(REST_MS);
  const work = await frameProcessorTimes(within, page, () => moveAbout(session, start, MOVES));
  await slowed(SLOWDOWN);
  await page.evaluate(() => {
    const { frames, waits } = window as unknown as { frames: number[]; waits: number[] };
    frames.length = 0;
    waits.length = 0;
  });
  await moveAbout(session, start, MOVES);
  const frames = await page.evaluate(() => {
    const { frames, waits } = window as unknown as Frames;
    return { frames: [...frames], waits: [...waits] };
  });
  await slowed(1);
  await page.mouse.up();
  await page.waitForTimeout(REST_MS);
  const processor = work.map((ms) => ms * SLOWDOWN);
  console.log(
    `dragging ${what}, ${WALLS} walls, processor slowed ${SLOWDOWN} times (load ${(loadavg()[0] ?? 0).toFixed(1)}):\n` +
      `  processor time of the main thread a frame, times ${SLOWDOWN}: ${sayShares(processor)}\n` +
      `  by the clock: ${sayFrames(frames)}`,
  );
}

/** Moves the pointer that is held down about where it began. Not by the test's own mouse, which has the page work for it at every move. */
async function moveAbout(session: CDPSession, start: { readonly x: number; readonly y: number }, moves: number) {
  for (let i = 1; i <= moves; i++) {
    const x = start.x + Math.sin(i / 9) * SWING_PX.across;
    const y = start.y - (i % SWING_PX.up);
    await session.send("Input.dispatchMouseEvent", { type: "mouseMoved", x, y, button: "left", buttons: 1 });
    await new Promise((resolve) => setTimeout(resolve, FRAME_MS));
  }
}

function place([x, y]: PlanPoint): Place {
  return [x, y];
}
