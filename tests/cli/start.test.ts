import { createServer } from "node:net";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";
import { runNode } from "@/lib/cli/run-node.mjs";
import { findFreePort } from "@/lib/cli/try-port.mjs";

const START = join(PROJECT_ROOT, "lib", "cli", "start.mjs");
const TEST = join(PROJECT_ROOT, "lib", "cli", "test.mjs");

const run = (words: readonly string[], env: Record<string, string> = {}) =>
  runNode(words, { cwd: PROJECT_ROOT, output: "keep", env: { PORT: "", ...env } });

describe("npm start", () => {
  it("tells its options and serves nothing when asked for help", async () => {
    const { code, output } = await run([START, "--help"]);
    expect(code).toBe(0);
    expect(output).toContain("npm start -- --lan");
    expect(output).not.toContain("Plasterline is at");
  });

  it("refuses a silly port in one sentence", async () => {
    const { code, output } = await run([START], { PORT: "abc" });
    expect({ code, lines: output.trimEnd().split("\n").length }).toEqual({ code: 1, lines: 1 });
    expect(output).toMatch(/^PORT is "abc", which is no port; .*npm start -- --port \d+\n$/);
  });

  it("refuses a taken port in one sentence, before it installs or builds anything", async () => {
    const port = await findFreePort();
    const holder = createServer();
    await new Promise((resolve) => holder.listen({ port, host: "127.0.0.1" }, () => resolve(undefined)));
    try {
      const { code, output } = await run([START, "--port", String(port)]);
      expect({ code, lines: output.trimEnd().split("\n").length }).toEqual({ code: 1, lines: 1 });
      expect(output).toMatch(new RegExp(`^Port ${port} is taken by another program; .*npm start -- --port \\d+\\n$`));
    } finally {
      await new Promise((resolve) => holder.close(resolve));
    }
  });
});

describe("npm test", () => {
  it("lists its stages when asked for help", async () => {
    const { code, output } = await run([TEST, "--help"]);
    expect(code).toBe(0);
    for (const stage of ["types", "lint", "arrows", "unused", "schema", "units", "build", "browser"]) {
      expect(output).toMatch(new RegExp(`^ +${stage} `, "m"));
    }
  });

  it("refuses a stage that it does not know", async () => {
    const { code, output } = await run([TEST, "tipes"]);
    expect(code).toBe(1);
    expect(output).toBe('"tipes" is no stage of npm test; npm test -- --help lists them.\n');
  });
});
