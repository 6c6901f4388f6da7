import { buildPages, isBuilt } from "./build-pages.mjs";
import { checkNode } from "./check-node.mjs";
import { getChromium } from "./get-chromium.mjs";
import { installMissing } from "./install-missing.mjs";
import { packageProgram } from "./package-program.mjs";
import { PROJECT_ROOT } from "./project-root.mjs";
import { runNode } from "./run-node.mjs";
import { startPostgres } from "./start-postgres.mjs";
import { stopWithNpm } from "./stop-with-npm.mjs";

/** Random cases of each seeded test when nothing else is asked: what `npm test` has no time for. */
const FULL_RUN = "1000";
const SEEDED = ["properties", "tests/generator", "independent-cameras", "every-point", "accuracy"];

/** How often a server is killed during hand-ins; `npm test` does it ten times. */
const KILLS = "50";

/** The word after which the built pages alone are measured, all or those named after it. */
const PAGES = "pages";

stopWithNpm();
const complaint = checkNode(process.versions.node) ?? (await installMissing(PROJECT_ROOT));
if (complaint) {
  console.error(complaint);
  process.exitCode = 1;
} else if (process.argv[2] === PAGES) {
  process.exitCode = (await measurePages(process.argv.slice(3))).code;
} else {
  const words = [packageProgram(PROJECT_ROOT, "vitest"), "bench", "--run", ...process.argv.slice(2)];
  const server = await startPostgres("durable");
  if ("sentence" in server) console.log(server.sentence);
  const env = "url" in server ? { PLASTERLINE_TEST_POSTGRES: server.url } : {};
  const engine = await runNode(words, { cwd: PROJECT_ROOT, env });
  const killed = process.argv.length > 2 ? { code: 0 } : await runKills(env);
  if ("stop" in server) await server.stop();
  const seeded = process.argv.length > 2 ? { code: 0 } : await runSeededInFull();
  // The page's cost is measured on the built app; words on the command line narrow the engine's benchmarks only.
  const pages = process.argv.length > 2 ? { code: 0 } : await measurePages([]);
  process.exitCode = engine.code || killed.code || seeded.code || pages.code;
}

/** Servers killed during hand-ins, in full. @param {Record<string, string>} env */
async function runKills(env) {
  const words = [packageProgram(PROJECT_ROOT, "vitest"), "run", "tests/classroom/store/start-together"];
  return runNode(words, { cwd: PROJECT_ROOT, env: { ...env, PLASTERLINE_KILLS: KILLS } });
}

/** The long seeded runs, in full. */
async function runSeededInFull() {
  const words = [packageProgram(PROJECT_ROOT, "vitest"), "run", "--reporter=dot", ...SEEDED];
  return runNode(words, { cwd: PROJECT_ROOT, env: { SEEDS: process.env.SEEDS ?? FULL_RUN } });
}

/** The built pages' own costs, in a real browser. @param {readonly string[]} pages */
async function measurePages(pages) {
  const built = isBuilt(PROJECT_ROOT) ? { code: 0 } : await buildPages(PROJECT_ROOT, "show");
  if (built.code !== 0) return built;
  const browser = await getChromium(PROJECT_ROOT);
  if ("sentence" in browser) {
    console.error(browser.sentence);
    return { code: 1 };
  }
  const words = [packageProgram(PROJECT_ROOT, "tsx"), "tests/bench/browser/measure-pages.ts", ...pages];
  return runNode(words, { cwd: PROJECT_ROOT, env: { PLASTERLINE_CHROMIUM: browser.path } });
}
