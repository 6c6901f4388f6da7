import { describe, expect, it } from "vitest";
import { getPoppler, hasPoppler, NO_POPPLER } from "@/lib/cli/get-poppler.mjs";

/** A computer that has poppler or not, may install it or not, and remembers what was installed. */
function computer({ has, mayInstall }: { has: boolean; mayInstall: boolean }) {
  const state = { has, installed: [] as string[] };
  return {
    state,
    has: () => state.has,
    install: async (packages: readonly string[]) => {
      if (!mayInstall) return;
      state.installed.push(...packages);
      state.has = true;
    },
  };
}

describe("poppler for the tests", () => {
  it.each([
    ["is left alone where it is", { has: true, mayInstall: true }, null, []],
    ["is installed where it is not", { has: false, mayInstall: true }, null, ["poppler-utils"]],
    ["is told to be missing where it cannot be installed", { has: false, mayInstall: false }, NO_POPPLER, []],
  ])("%s", async (_, able, sentence, installed) => {
    const { state, ...ways } = computer(able);
    expect(await getPoppler(ways)).toBe(sentence);
    expect(state.installed).toEqual(installed);
  });

  it("is not found where no program is", () => {
    expect(hasPoppler({ ...process.env, PATH: "" })).toBe(false);
  });

  it("is asked for by the names of its packages", () => {
    expect(NO_POPPLER).toMatch(/apt-get install poppler-utils/);
    expect(NO_POPPLER).toMatch(/skipped/);
  });
});
