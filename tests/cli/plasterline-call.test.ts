import { mkdirSync } from "node:fs";
import { basename, join } from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { printErrors } from "@/lib/cli/outcome";
import { runCommand } from "@/lib/cli/run-command";
import { commandFiles, printed, refusal } from "./call-in-process";

const files = commandFiles();

afterEach(() => {
  vi.unstubAllEnvs();
});

describe("the call", () => {
  it.each([
    ["no verb", [], /say what to do/],
    ["an unknown verb", ["grad"], /no verb "grad"/],
    ["the name of something every object has", ["toString"], /no verb "toString"/],
    ["an unknown option", ["truth", "--txet"], /--txet/],
    ["nothing to validate", ["validate"], /at least one file/],
    ["no exercise", ["truth"], /exactly one/],
    ["two exercises", ["truth", "a.json", "b.json"], /exactly one/],
    ["no marks", ["grade", "a.json"], /at least one file of marks/],
  ])("with %s is refused", async (_, words, said) => {
    const error = await refusal(...words);
    expect(error).toMatchObject({ file: null, where: "", message: expect.stringMatching(said) });
    expect(error.hint).not.toBe("");
  });

  it("hears of the nearest verb, and of all", async () => {
    expect((await refusal("grad")).hint).toMatch(/"grade".*validate, truth, grade/);
  });

  it.each([["help"], ["--help"]])("%s says how it is used", async (word) => {
    const { exitCode, out } = await runCommand([word]);
    expect(exitCode).toBe(0);
    for (const verb of ["validate FILE...", "truth EXERCISE", "grade EXERCISE MARKS..."]) expect(out).toContain(verb);
  });

  it("takes paths as they were meant where the command was typed", async () => {
    const path = files.exercise();
    vi.stubEnv("INIT_CWD", files.folder());
    expect((await printed(0, "truth", basename(path))).scale).toBe(48);
    vi.stubEnv("INIT_CWD", join(files.folder(), "elsewhere"));
    expect(await refusal("truth", basename(path))).toMatchObject({ file: basename(path) });
    expect((await printed(0, "truth", path)).scale).toBe(48);
  });
});

describe("a file that cannot be read", () => {
  it.each(["validate", "truth", "grade"])("is named by %s", async (verb) => {
    const missing = join(files.folder(), "missing.json");
    expect(await refusal(verb, missing, ...(verb === "grade" ? [missing] : []))).toMatchObject({
      file: missing,
      where: "",
      message: expect.stringContaining("no such file"),
    });
  });

  it.each(["folder", "folder.jsonl"])("is a %s", async (name) => {
    mkdirSync(join(files.folder(), name), { recursive: true });
    const path = join(files.folder(), name);
    expect(await refusal("validate", path)).toMatchObject({ file: path, message: "this is a folder" });
    expect(await refusal("grade", files.exercise(), path)).toMatchObject({ file: path, message: "this is a folder" });
  });

  it("is a set of lines that is not there", async () => {
    const path = join(files.folder(), "missing.jsonl");
    expect(await refusal("grade", files.exercise(), path)).toMatchObject({ file: path });
    expect(await refusal("validate", path)).toMatchObject({ file: path });
  });
});

describe("printErrors", () => {
  it("prints nothing for none", () => {
    expect(printErrors([], false)).toBe("");
    expect(printErrors([], true)).toBe("");
  });
});
