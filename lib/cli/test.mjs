import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { checkNode } from "./check-node.mjs";
import { addTallies } from "./count-tests.mjs";
import { installMissing } from "./install-missing.mjs";
import { PROJECT_ROOT } from "./project-root.mjs";
import { STAGES } from "./stages.mjs";
import { stopWithNpm } from "./stop-with-npm.mjs";

const NAME_WIDTH = Math.max(...STAGES.map(({ name }) => name.length));

const HELP = `Plasterline's tests.

  npm test                    everything, in this order:
${STAGES.map(({ name, what }) => `    ${name.padEnd(NAME_WIDTH)}  ${what}`).join("\n")}

  npm test -- types units     only the stages named
  npm test -- --help          show this

Set PLASTERLINE_CHROMIUM to the browser to test with, if it is not found by itself.`;

/** @typedef {import("./count-tests.mjs").Tally & { name: string, seconds: number }} Outcome */

/** @param {Outcome} outcome */
function tellOutcome({ name, passed, failed, skipped, seconds }) {
  const tests = passed + failed + skipped > 1 ? `${passed} passed, ${failed} failed` : failed > 0 ? "failed" : "passed";
  return `${name.padEnd(NAME_WIDTH)}  ${tests} (${seconds.toFixed(1)} s)`;
}

/**
 * Runs every stage asked for, also after one has failed, so that the reader sees all there is to mend.
 *
 * @param {readonly import("./stages.mjs").Stage[]} stages
 * @returns {Promise<readonly Outcome[]>}
 */
async function runStages(stages) {
  const scratch = mkdtempSync(join(tmpdir(), "plasterline-test-"));
  /** @type {Outcome[]} */
  const outcomes = [];
  for (const { name, what, run } of stages) {
    if (process.exitCode !== undefined) break;
    console.log(`\n=== ${name}: ${what}`);
    const begun = performance.now();
    const tally = await run({ root: PROJECT_ROOT, scratch });
    const outcome = { name, ...tally, seconds: (performance.now() - begun) / 1000 };
    console.log(`=== ${tellOutcome(outcome)}`);
    outcomes.push(outcome);
  }
  rmSync(scratch, { recursive: true, force: true });
  return outcomes;
}

/** @returns {Promise<string | undefined>} a sentence for the reader when the tests could not be run */
async function test() {
  const words = process.argv.slice(2);
  if (words.includes("--help") || words.includes("-h")) {
    console.log(HELP);
    return undefined;
  }
  const stranger = words.find((word) => !STAGES.some(({ name }) => name === word));
  if (stranger) return `${JSON.stringify(stranger)} is no stage of npm test; npm test -- --help lists them.`;

  const tooOld = checkNode(process.versions.node);
  if (tooOld) return tooOld;
  const notInstalled = await installMissing(PROJECT_ROOT);
  if (notInstalled) return notInstalled;

  const outcomes = await runStages(STAGES.filter(({ name }) => words.length === 0 || words.includes(name)));
  const { passed, failed, skipped } = addTallies(outcomes);
  console.log(`\n${outcomes.map(tellOutcome).join("\n")}\n`);
  console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
  if (failed > 0 || passed === 0) process.exitCode = 1;
  return undefined;
}

stopWithNpm();
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) {
  process.on(signal, () => {
    process.exitCode = 1;
  });
}
const complaint = await test();
if (complaint) {
  console.error(complaint);
  process.exitCode = 1;
}
