import type { Browser, Page } from "@playwright/test";

/** Of a browser's own record of what its threads did, what is read here; times are microseconds. */
type Entry = {
  readonly ph: string;
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  /** The processor's own time, without what a thread waited for others. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
};

const TASK = "ThreadControllerImpl::RunTask";
const FRAME = "ProxyMain::BeginMainFrame";
const MOVED = "EventDispatch";
const CATEGORIES = ["toplevel", "cc", "devtools.timeline"];

/**
 * The processor time of a page's main thread for each frame in which something was pointed at, milliseconds: all its tasks from
 * the beginning of that frame to the beginning of the next. What other programs do at the same time on a busy machine does not count.
 */
export async function frameProcessorTimes(
  within: Browser,
  page: Page,
  act: () => Promise<void>,
): Promise<readonly number[]> {
  await within.startTracing(page, { categories: CATEGORIES });
  await act();
  const record = JSON.parse((await within.stopTracing()).toString()) as { readonly traceEvents: readonly Entry[] };
  const entries = record.traceEvents;
  const threads = entries.filter(
    ({ ph, name, args }) => ph === "M" && name === "thread_name" && args?.name === "CrRendererMain",
  );
  const each = threads.map(({ pid, tid }) =>
    timesOfThread(entries.filter((entry) => entry.pid === pid && entry.tid === tid)),
  );
  // Other pages of the browser stand still.
  return each.sort((a, b) => b.length - a.length)[0] ?? [];
}

function timesOfThread(entries: readonly Entry[]): readonly number[] {
  const done = entries.filter(({ ph }) => ph === "X").sort((a, b) => a.ts - b.ts);
  const frames = done.filter(({ name }) => name === FRAME).map(({ ts }) => ({ ts, time: 0, pointed: false }));
  let at = -1;
  for (const { name, ts, dur = 0, tdur = 0 } of done) {
    if (name !== TASK && name !== MOVED) continue;
    // The task that a frame's own work is in begins just before the frame.
    while ((frames[at + 1]?.ts ?? Number.POSITIVE_INFINITY) <= ts + dur) at++;
    const frame = frames[at];
    if (!frame) continue;
    if (name === MOVED) frame.pointed = true;
    else frame.time += tdur / 1000;
  }
  return frames.filter(({ pointed }) => pointed).map(({ time }) => time);
}
