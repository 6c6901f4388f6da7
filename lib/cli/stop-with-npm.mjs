const LOOK_EVERY_MS = 300;

/**
 * Asks this program to stop when the npm that started it has gone.
 *
 * npm passes a request to stop to the shell between the two, and that shell keeps it to itself: without this, a stopped
 * `npm start` would leave the server running and its port taken. A program started without npm is left alone.
 */
export function stopWithNpm() {
  if (process.env.npm_lifecycle_event === undefined) return;
  const starter = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === starter) return;
    clearInterval(watch);
    process.kill(process.pid, "SIGTERM");
  }, LOOK_EVERY_MS);
  watch.unref();
}
