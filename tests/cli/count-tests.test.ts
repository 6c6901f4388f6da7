import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { addTallies, countBrowserTests, countUnitTests, judgeRun } from "@/lib/cli/count-tests.mjs";

const folder = mkdtempSync(join(tmpdir(), "plasterline-count-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function report(content: string) {
  const path = join(folder, "report.json");
  writeFileSync(path, content);
  return path;
}

describe("judgeRun", () => {
  it.each([
    { what: "all passed", reported: { passed: 3, failed: 0, skipped: 0 }, code: 0, passed: 3, failed: 0 },
    { what: "one failed", reported: { passed: 2, failed: 1, skipped: 0 }, code: 1, passed: 2, failed: 1 },
    {
      what: "one failed, with a good exit code",
      reported: { passed: 2, failed: 1, skipped: 0 },
      code: 0,
      passed: 2,
      failed: 1,
    },
    { what: "a file did not load", reported: { passed: 3, failed: 0, skipped: 0 }, code: 1, passed: 3, failed: 1 },
    { what: "no test ran", reported: { passed: 0, failed: 0, skipped: 0 }, code: 0, passed: 0, failed: 1 },
    { what: "all were skipped", reported: { passed: 0, failed: 0, skipped: 4 }, code: 0, passed: 0, failed: 1 },
    { what: "there is no report", reported: undefined, code: 0, passed: 0, failed: 1 },
    { what: "the runner broke", reported: undefined, code: 1, passed: 0, failed: 1 },
  ])("$what: $passed passed, $failed failed", ({ reported, code, passed, failed }) => {
    expect(judgeRun(reported, code)).toMatchObject({ passed, failed });
  });
});

describe("the reports", () => {
  it("of unit tests are counted", () => {
    const path = report('{"numPassedTests":41,"numFailedTests":2,"numPendingTests":1,"numTodoTests":3}');
    expect(countUnitTests(path)).toEqual({ passed: 41, failed: 2, skipped: 4 });
  });

  it("of browser tests are counted, and a test that needed a second try failed", () => {
    const path = report('{"stats":{"expected":7,"unexpected":1,"flaky":2,"skipped":1}}');
    expect(countBrowserTests(path)).toEqual({ passed: 7, failed: 3, skipped: 1 });
  });

  it.each([countUnitTests, countBrowserTests])("that are missing or broken count as none (%o)", (count) => {
    expect(count(join(folder, "never-written.json"))).toBeUndefined();
    expect(count(report('{"numPassed'))).toBeUndefined();
  });
});

describe("addTallies", () => {
  it("adds up", () => {
    const tallies = [
      { passed: 1, failed: 0, skipped: 0 },
      { passed: 41, failed: 2, skipped: 4 },
    ];
    expect(addTallies(tallies)).toEqual({ passed: 42, failed: 2, skipped: 4 });
    expect(addTallies([])).toEqual({ passed: 0, failed: 0, skipped: 0 });
  });
});
