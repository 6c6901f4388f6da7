import { packageProgram } from "./package-program.mjs";
import { startNode, stopTogether } from "./run-node.mjs";
import { waitForAnswer } from "./wait-for-answer.mjs";

/** The server waits for answers that are still under way, and a sleeping tablet never takes the rest of its own. */
const GOODBYE_MS = 1000;

/** An answer from here up is the server's own failure, not a page. */
const FIRST_FAILURE_STATUS = 500;

/**
 * Serves the built pages until asked to stop.
 *
 * @param {{ root: string, host: string, port: number, announce: () => Promise<void> | void }} how `announce` is called once, when the first page really comes
 * @returns {Promise<string | undefined>} a sentence for the reader when it ended without being asked to
 */
export async function servePages({ root, host, port, announce }) {
  const words = [packageProgram(root, "next"), "start", "-H", host, "-p", String(port)];
  const child = startNode(words, { cwd: root, output: "keep" });
  const wasStopped = stopTogether(child, GOODBYE_MS);
  let ended = false;
  let announced = false;
  let greeting = "";
  const end = new Promise((resolve) => {
    child.once("error", resolve);
    child.once("close", resolve);
  }).then((error) => {
    ended = true;
    if (error instanceof Error) greeting += `${error.message}\n`;
  });
  // The server's greeting names addresses of its own; ours come from `announce`. What it says later is shown.
  child.stdout?.on("data", (/** @type {Buffer} */ chunk) => {
    if (announced) process.stdout.write(chunk);
    else greeting += chunk;
  });
  child.stderr?.on("data", (/** @type {Buffer} */ chunk) => process.stderr.write(chunk));

  const status = await waitForAnswer(`http://127.0.0.1:${port}/`, () => !ended && !wasStopped());
  if (status !== undefined) {
    announced = true;
    await announce();
    if (status >= FIRST_FAILURE_STATUS) console.log(`The first page fails, though (status ${status}).`);
  }
  await end;
  if (wasStopped()) return undefined;
  return `${announced ? "" : greeting}Plasterline stopped by itself; what it said is above, and npm start tries again.`;
}
