import { readFileSync } from "node:fs";

/** @typedef {{ passed: number, failed: number, skipped: number }} Tally */

/**
 * @param {readonly Tally[]} tallies
 * @returns {Tally}
 */
export function addTallies(tallies) {
  return tallies.reduce(
    (sum, one) => ({
      passed: sum.passed + one.passed,
      failed: sum.failed + one.failed,
      skipped: sum.skipped + one.skipped,
    }),
    { passed: 0, failed: 0, skipped: 0 },
  );
}

/**
 * What a test runner's report and exit code say together. A runner that ended badly without naming a failed test (a file
 * that would not load, an error outside a test), that ran no test, or that left no report has failed once itself.
 *
 * @param {Tally | undefined} reported
 * @param {number} code the runner's exit code
 * @returns {Tally}
 */
export function judgeRun(reported, code) {
  const tally = reported ?? { passed: 0, failed: 0, skipped: 0 };
  const ranNothing = tally.passed + tally.failed === 0;
  if (tally.failed > 0 || (code === 0 && !ranNothing)) return tally;
  return { ...tally, failed: tally.failed + 1 };
}

/**
 * @param {string} path a report in the unit tests' JSON format
 * @returns {Tally | undefined} nothing when there is no such report
 */
export function countUnitTests(path) {
  const report = readReport(path);
  if (!report) return undefined;
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/**
 * @param {string} path a report in the browser tests' JSON format
 * @returns {Tally | undefined} nothing when there is no such report; a test that passed only when tried again has failed
 */
export function countBrowserTests(path) {
  const report = readReport(path);
  if (!report) return undefined;
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky, skipped };
}

/** @param {string} path */
function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return undefined;
  }
}
