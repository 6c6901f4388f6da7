/** What `timeFrames` leaves in a page. */
export type Frames = { readonly frames: readonly number[] };

/**
 * In the page: the work of each frame in which the pointer moves, milliseconds: its handlers, then from the frame's
 * start to the end of its style, layout and paint. The wait for the frame between the two is not work.
 */
export function timeFrames(): void {
  const frames: number[] = [];
  Object.assign(window, { frames });
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
    requestAnimationFrame(() => {
      began = performance.now();
      after.port2.postMessage(null);
    });
  });
}

/** The frames' work in a line, milliseconds. */
export function sayFrames(frames: readonly number[]): string {
  const sorted = [...frames].sort((a, b) => a - b);
  const at = (share: number) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0).toFixed(1);
  return `main-thread ms a frame over ${sorted.length} frames: median ${at(0.5)}, p95 ${at(0.95)}, most ${at(1)}`;
}
