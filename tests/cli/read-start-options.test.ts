import { describe, expect, it } from "vitest";
import { readStartOptions } from "@/lib/cli/read-start-options.mjs";

describe("readStartOptions", () => {
  it.each([
    { words: [], env: {}, asked: { kind: "serve", port: 3000, lan: false } },
    { words: [], env: { PORT: "" }, asked: { kind: "serve", port: 3000, lan: false } },
    { words: [], env: { PORT: "4000" }, asked: { kind: "serve", port: 4000, lan: false } },
    { words: [], env: { PORT: " 4000 " }, asked: { kind: "serve", port: 4000, lan: false } },
    { words: ["--lan"], env: {}, asked: { kind: "serve", port: 3000, lan: true } },
    { words: [], env: { npm_config_lan: "true" }, asked: { kind: "serve", port: 3000, lan: true } },
    { words: ["--port", "1"], env: {}, asked: { kind: "serve", port: 1, lan: false } },
    { words: ["--port=65535", "--lan"], env: { PORT: "4000" }, asked: { kind: "serve", port: 65535, lan: true } },
    { words: ["--help"], env: {}, asked: { kind: "help" } },
    { words: ["--lan", "-h"], env: { PORT: "none" }, asked: { kind: "help" } },
  ])("reads $words with $env", ({ words, env, asked }) => {
    expect(readStartOptions(words, { NODE_ENV: "test", ...env })).toEqual(asked);
  });

  it.each(["abc", "0", "-1", "65536", "100000", "80.5", "0x50", "1e3", "3000 4000"])("refuses PORT %j", (port) => {
    expect(readStartOptions([], { NODE_ENV: "test", PORT: port })).toEqual({
      kind: "unclear",
      sentence: `PORT is ${JSON.stringify(port)}, which is no port; give a whole number from 1 to 65535, for example: npm start -- --port 3100`,
    });
  });

  it("names the option that was wrong, not the environment", () => {
    expect(readStartOptions(["--port"], { NODE_ENV: "test", PORT: "4000" })).toMatchObject({
      kind: "unclear",
      sentence: expect.stringMatching(/^--port is ""/),
    });
  });

  it.each(["--lam", "lan", "4000"])("refuses %s and tells where the options are", (word) => {
    expect(readStartOptions([word], { NODE_ENV: "test" })).toEqual({
      kind: "unclear",
      sentence: `"${word}" is no option of npm start; npm start -- --help lists them.`,
    });
  });
});
