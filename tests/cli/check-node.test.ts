import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkNode } from "@/lib/cli/check-node.mjs";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";

describe("checkNode", () => {
  it.each(["20.19.0", "20.20.1", "21.0.0", "22.4.1", "26.0.0"])("lets Node %s pass", (version) => {
    expect(checkNode(version)).toBeUndefined();
  });

  it.each(["20.18.3", "18.20.8", "16.0.0", "9.11.2"])("says that Node %s is too old, and what to do", (version) => {
    expect(checkNode(version)).toBe(
      `Plasterline needs Node.js 20.19 or newer and this is ${version}; install a newer one from nodejs.org and try again.`,
    );
  });

  it("asks for what package.json asks for", () => {
    const { engines } = JSON.parse(readFileSync(join(PROJECT_ROOT, "package.json"), "utf8"));
    expect(engines.node).toBe(">=20.19.0");
  });
});
