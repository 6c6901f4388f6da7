import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { findNpm } from "@/lib/cli/find-npm.mjs";

const folder = join("tools", "node", "bin");
const execPath = join(folder, "node");
const beside = join(folder, "node_modules", "npm", "bin", "npm-cli.js");
const above = join(folder, "..", "lib", "node_modules", "npm", "bin", "npm-cli.js");

describe("findNpm", () => {
  it.each([
    { what: "the npm that started us", named: "/own/npm/bin/npm-cli.js", there: ["/own/npm/bin/npm-cli.js", above] },
    { what: "npm beside Node", named: undefined, there: [beside, above] },
    { what: "npm in the lib folder by Node", named: undefined, there: [above] },
    { what: "Debian's npm", named: undefined, there: ["/usr/share/nodejs/npm/bin/npm-cli.js"] },
    { what: "npm, though another package manager started us", named: "/own/yarn.js", there: [above] },
  ])("finds $what", ({ named, there }) => {
    const env = { NODE_ENV: "test" as const, ...(named ? { npm_execpath: named } : {}) };
    expect(findNpm({ env, execPath, exists: (path) => path === named || there.includes(path) })).toBe(there[0]);
  });

  it("finds none where there is none", () => {
    expect(findNpm({ env: { NODE_ENV: "test" }, execPath, exists: () => false })).toBeUndefined();
  });

  it("finds the npm of this computer", () => {
    expect(findNpm({ env: process.env, execPath: process.execPath })).toMatch(/npm-cli\.js$/);
  });
});
