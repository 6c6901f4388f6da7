import { describe, expect, it } from "vitest";
import { findChromium } from "@/lib/cli/find-chromium.mjs";

const machine = (platform: NodeJS.Platform, env: Record<string, string>, there: readonly string[]) => ({
  platform,
  env: { NODE_ENV: "test" as const, ...env },
  exists: (path: string) => there.includes(path),
});

describe("findChromium", () => {
  it.each([
    { platform: "linux", env: {}, path: "/usr/bin/chromium" },
    { platform: "linux", env: {}, path: "/snap/bin/chromium" },
    { platform: "darwin", env: {}, path: "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome" },
    {
      platform: "darwin",
      env: { HOME: "/Users/mara" },
      path: "/Users/mara/Applications/Chromium.app/Contents/MacOS/Chromium",
    },
    {
      platform: "win32",
      env: { PROGRAMFILES: "C:\\Program Files" },
      path: "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    },
    {
      platform: "win32",
      env: { "PROGRAMFILES(X86)": "C:\\Program Files (x86)" },
      path: "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
    },
  ] as const)("finds $path", ({ platform, env, path }) => {
    expect(findChromium(machine(platform, env, [path]))).toEqual({ kind: "found", path });
  });

  it("takes the one that is named before any other", () => {
    const named = { PLASTERLINE_CHROMIUM: "/opt/own/chrome" };
    expect(findChromium(machine("linux", named, ["/usr/bin/chromium", "/opt/own/chrome"]))).toEqual({
      kind: "found",
      path: "/opt/own/chrome",
    });
  });

  it("takes no other when the named one is not there", () => {
    const named = { PLASTERLINE_CHROMIUM: "/opt/own/chrome" };
    expect(findChromium(machine("linux", named, ["/usr/bin/chromium"]))).toEqual({
      kind: "misnamed",
      sentence: "PLASTERLINE_CHROMIUM names /opt/own/chrome, and there is no such file.",
    });
  });

  it.each(["linux", "darwin", "win32"] as const)("finds none on a bare %s", (platform) => {
    expect(findChromium(machine(platform, {}, []))).toEqual({ kind: "none" });
  });
});
