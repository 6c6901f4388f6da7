import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { writeTideOffice } from "../fixtures/tide-office";
import { temporaryFiles } from "./temporary-files";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
/** A cold start on a busy machine. */
const PATIENCE_MS = 60_000;
const files = temporaryFiles();

/** The command itself, as npm starts it, called from the folder of the files. */
function call(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["node_modules/tsx/dist/cli.mjs", "lib/cli/plasterline.ts", ...words],
    { cwd: ROOT, encoding: "utf8", env: { ...process.env, INIT_CWD: files.folder() }, maxBuffer: 64 * 1024 * 1024 },
  );
  return { status, stdout, stderr };
}

describe("the command", () => {
  it(
    "prints one JSON document, whole, and nothing else",
    () => {
      const furniture = Array.from({ length: 1900 }, (_, i) => ({
        ...{ id: `chair${i}`, kind: "chair", width: 1, depth: 1, height: 3 },
        at: [(i % 50) / 5 - 5, 1 + i / 200],
      }));
      const path = files.write("large.json", JSON.stringify(writeTideOffice(["/plan/furniture", furniture])));
      const { status, stdout, stderr } = call("truth", basename(path));
      expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
      // far more than a pipe holds at once
      expect(stdout.length).toBeGreaterThan(1_000_000);
      expect(Object.keys(JSON.parse(stdout).points)).toHaveLength(30 + 1900 * 8);
    },
    PATIENCE_MS,
  );

  it(
    "ends with 1 what does not pass, and prints its findings",
    () => {
      const path = files.write("bad.json", JSON.stringify(writeTideOffice(["/task/marks", []])));
      const { status, stdout, stderr } = call("validate", basename(path));
      expect({ status, stderr }).toEqual({ status: 1, stderr: "" });
      expect(JSON.parse(stdout).files[0]).toMatchObject({ file: "bad.json", ok: false });
    },
    PATIENCE_MS,
  );

  it(
    "draws with its own faces wherever it is called from",
    () => {
      const path = files.write("set.json", JSON.stringify(writeTideOffice()));
      const [tsx, program] = ["node_modules/tsx/dist/cli.mjs", "lib/cli/plasterline.ts"].map((each) =>
        join(ROOT, each),
      );
      const words = [tsx, program, "draw", path, "--view", "plan", "--out", "plan.svg"] as string[];
      const { INIT_CWD: _, ...env } = process.env;
      const { status, stderr } = spawnSync(process.execPath, words, { cwd: files.folder(), encoding: "utf8", env });
      expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
      expect(readFileSync(join(files.folder(), "plan.svg"), "utf8")).toContain("@font-face");
    },
    PATIENCE_MS,
  );

  it.each([
    ["a file that is not JSON", ["truth", "words.json"], "words.json"],
    ["no call at all", [], null],
  ])(
    "ends with 2 for %s: one JSON error, no stack trace, nothing on standard output",
    (_, words, file) => {
      files.write("words.json", "no JSON");
      const { status, stdout, stderr } = call(...words);
      expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
      expect(JSON.parse(stderr)).toEqual({
        error: { file, where: "", message: expect.any(String), hint: expect.any(String) },
      });
      expect(stderr).not.toMatch(/\n\s+at /);
    },
    PATIENCE_MS,
  );
});
