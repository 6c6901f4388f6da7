import { join } from "node:path";
import { buildPages, isBuilt } from "./build-pages.mjs";
import { countBrowserTests, countUnitTests, judgeRun } from "./count-tests.mjs";
import { getChromium } from "./get-chromium.mjs";
import { getPoppler } from "./get-poppler.mjs";
import { packageProgram } from "./package-program.mjs";
import { runNode } from "./run-node.mjs";
import { startPostgres } from "./start-postgres.mjs";

/**
 * @typedef {import("./count-tests.mjs").Tally} Tally
 * @typedef {{ root: string, scratch: string }} Place the project's folder, and one for reports that is cleared afterwards
 * @typedef {{ name: string, what: string, run: (place: Place) => Promise<Tally> }} Stage
 */

const PASSED_ONCE = { passed: 1, failed: 0, skipped: 0 };
const FAILED_ONCE = { passed: 0, failed: 1, skipped: 0 };

/**
 * A stage that counts as one test: every program in it ends well.
 *
 * @param {string} name
 * @param {string} what
 * @param {(root: string) => readonly (readonly string[])[]} programs run one after another up to the first that fails
 * @returns {Stage}
 */
function check(name, what, programs) {
  return {
    name,
    what,
    run: async ({ root }) => {
      for (const words of programs(root)) {
        const { code } = await runNode(words, { cwd: root });
        if (code !== 0) return FAILED_ONCE;
      }
      return PASSED_ONCE;
    },
  };
}

/** @param {Place} place @returns {Promise<Tally>} */
async function runUnits({ root, scratch }) {
  const noPoppler = await getPoppler();
  const server = await startPostgres("quick");
  const report = join(scratch, "units.json");
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const env = "url" in server ? { PLASTERLINE_TEST_POSTGRES: server.url } : {};
  const { code } = await runNode([packageProgram(root, "vitest"), "run", ...reporters], { cwd: root, env });
  if ("stop" in server) await server.stop();
  // Said where it is still seen: after the runner's many lines.
  if (noPoppler) console.log(noPoppler);
  if ("sentence" in server) console.log(server.sentence);
  return judgeRun(countUnitTests(report), code);
}

/** @param {Place} place @returns {Promise<Tally>} */
async function runBuild({ root }) {
  if (isBuilt(root)) {
    console.log("The pages stand built from these very sources.");
    return PASSED_ONCE;
  }
  const { code } = await buildPages(root, "show");
  return code === 0 ? PASSED_ONCE : FAILED_ONCE;
}

/** @param {Place} place @returns {Promise<Tally>} */
async function runBrowser({ root, scratch }) {
  if (!isBuilt(root)) {
    console.log("The pages are not built from these sources, so there is nothing to open.");
    return FAILED_ONCE;
  }
  const browser = await getChromium(root);
  if ("sentence" in browser) {
    console.log(browser.sentence);
    return FAILED_ONCE;
  }
  const report = join(scratch, "browser.json");
  const program = packageProgram(root, "@playwright/test", "playwright");
  const env = { PLASTERLINE_CHROMIUM: browser.path, PLAYWRIGHT_JSON_OUTPUT_FILE: report };
  const { code } = await runNode([program, "test", "--reporter=list,json"], { cwd: root, env });
  return judgeRun(countBrowserTests(report), code);
}

/** All that `npm test` looks at, in the order in which it does. @type {readonly Stage[]} */
export const STAGES = [
  check("types", "the types agree", (root) => [
    [packageProgram(root, "next"), "typegen"],
    [packageProgram(root, "typescript", "tsc"), "--noEmit"],
  ]),
  check("lint", "the code is laid out and written as agreed", (root) => [
    [packageProgram(root, "@biomejs/biome", "biome"), "check", "--error-on-warnings", "."],
  ]),
  check("arrows", "imports point one way", (root) => [[join(root, "lib", "cli", "arrows.mjs")]]),
  check("unused", "nothing stands about unused", (root) => [[packageProgram(root, "knip")]]),
  check("schema", "the exercise format's schema is up to date", (root) => [
    [packageProgram(root, "tsx"), join(root, "lib", "cli", "write-schema.ts"), "--check"],
  ]),
  { name: "units", what: "tests of lib, and of the pages' parts", run: runUnits },
  { name: "build", what: "the pages can be built", run: runBuild },
  { name: "browser", what: "tests in a real browser", run: runBrowser },
];
