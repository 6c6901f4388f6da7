/**
 * Runs some work soon after each call, at once when it has rested, and never twice within the pause however many call. A call
 * that comes while the work runs has it run once more.
 *
 * @returns how to call it, and how to stop a run that is still to come
 */
export function coalesce(
  work: () => Promise<void>,
  pauseMs: number,
): { readonly call: () => void; readonly stop: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last = Number.NEGATIVE_INFINITY;
  let running = false;
  let again = false;
  let stopped = false;
  const run = async () => {
    timer = undefined;
    running = true;
    last = performance.now();
    try {
      await work();
    } finally {
      running = false;
      if (again) {
        again = false;
        call();
      }
    }
  };
  const call = () => {
    if (stopped || timer) return;
    if (running) {
      again = true;
      return;
    }
    timer = setTimeout(() => void run(), Math.max(0, last + pauseMs - performance.now()));
  };
  return {
    call,
    stop: () => {
      stopped = true;
      clearTimeout(timer);
    },
  };
}
