/** What `timeFrames` leaves in a page. */
export type Frames = {
  /** The work of each frame in which the pointer moved, milliseconds. */
  readonly frames: readonly number[];
  /** From each frame's beginning to the next one's, milliseconds. */
  readonly waits: readonly number[];
};

/** A pause this long is no slow frame: nothing moved, milliseconds. */
const PAUSE_MS = 1000;

/**
 * In the page: the work of each frame in which the pointer moves, milliseconds: its handlers, then from the frame's
 * start to the end of its style, layout and paint. The wait for the frame between the two is not work. And how long each frame
 * began after the one before it, which also tells of a screen that cannot keep up.
 */
export function timeFrames(): void {
  const frames: number[] = [];
  const waits: number[] = [];
  Object.assign(window, { frames, waits });
  let handled = 0;
  let entered = 0;
  let asked = false;
  let began = 0;
  const after = new MessageChannel();
  after.port1.onmessage = () => {
    frames.push(handled + performance.now() - began);
    handled = 0;
    asked = false;
  };
  // Written in place: a named function would carry a helper of the compiler's that the page does not have.
  window.addEventListener(
    "pointermove",
    () => {
      entered = performance.now();
    },
    { capture: true },
  );
  window.addEventListener("pointermove", () => {
    handled += performance.now() - entered;
    if (asked) return;
    asked = true;
    requestAnimationFrame((now) => {
      if (began > 0) waits.push(now - began);
      began = performance.now();
      after.port2.postMessage(null);
    });
  });
}

/** The frames in a line, milliseconds. */
export function sayFrames({ frames, waits }: Frames): string {
  const moving = waits.filter((ms) => ms < PAUSE_MS);
  return `main-thread ms a frame: ${sayShares(frames)}; from frame to frame: ${sayShares(moving)}`;
}

/** Median, 95th percentile and most of some times, milliseconds. */
export function sayShares(times: readonly number[]): string {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0).toFixed(1);
  return `median ${at(0.5)}, p95 ${at(0.95)}, most ${at(1)} of ${sorted.length}`;
}
