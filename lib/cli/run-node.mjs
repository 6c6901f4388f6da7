import { spawn } from "node:child_process";

/** The signals that ask a program to stop. */
const STOP_SIGNALS = /** @type {const} */ (["SIGINT", "SIGTERM", "SIGHUP"]);

/** Enough for a builder or a test runner to put things away, in milliseconds. */
const PATIENCE_MS = 5000;

/**
 * @typedef {{ cwd: string, env?: Record<string, string>, output?: "show" | "keep" }} RunOptions
 * @typedef {{ code: number, output: string, stopped: boolean }} RunResult
 */

/**
 * Passes every request to stop on to `child`, so that none is left running when this program ends.
 *
 * @param {import("node:child_process").ChildProcess} child
 * @param {number} [patienceMs] how long the child may take to end when asked, before it is ended the hard way
 * @returns {() => boolean} whether a stop was asked for
 */
export function stopTogether(child, patienceMs = PATIENCE_MS) {
  let asked = false;
  const stop = () => {
    asked = true;
    // As a key press would: the browser tests' runner leaves its server behind on any other signal.
    child.kill("SIGINT");
    setTimeout(() => child.kill("SIGKILL"), patienceMs).unref();
  };
  for (const signal of STOP_SIGNALS) process.on(signal, stop);
  child.once("close", () => {
    for (const signal of STOP_SIGNALS) process.off(signal, stop);
  });
  return () => asked;
}

/**
 * Starts a program of this project, or of a package, with the Node that runs this one.
 *
 * @param {readonly string[]} words the program's file and its arguments; no shell reads them
 * @param {RunOptions} options
 */
export function startNode(words, { cwd, env = {}, output = "show" }) {
  const end = output === "show" ? "inherit" : "pipe";
  return spawn(process.execPath, [...words], {
    cwd,
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", ...env },
    stdio: ["ignore", end, end],
    windowsHide: true,
  });
}

/**
 * Runs a program to its end.
 *
 * @param {readonly string[]} words the program's file and its arguments
 * @param {RunOptions} options `output: "keep"` returns what it printed instead of showing it
 * @returns {Promise<RunResult>} never rejects: a program that could not start has code 1 and says why in `output`
 */
export function runNode(words, options) {
  return new Promise((resolve) => {
    const child = startNode(words, options);
    const wasStopped = stopTogether(child);
    let output = "";
    const keep = (/** @type {Buffer} */ chunk) => {
      output += chunk;
    };
    child.stdout?.on("data", keep);
    child.stderr?.on("data", keep);
    child.once("error", (error) => resolve({ code: 1, output: `${output}${error.message}\n`, stopped: wasStopped() }));
    child.once("close", (code) => resolve({ code: code ?? 1, output, stopped: wasStopped() }));
  });
}
