import { existsSync } from "node:fs";
import { win32 } from "node:path";

/** Names the browser to test with, ahead of any that would be found. */
const NAMED_BY = "PLASTERLINE_CHROMIUM";

const LINUX_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/microsoft-edge",
  "/snap/bin/chromium",
];

const MAC_PLACES = [
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
];

const WINDOWS_FOLDERS = ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"];
const WINDOWS_PLACES = [
  ["Chromium", "Application", "chrome.exe"],
  ["Google", "Chrome", "Application", "chrome.exe"],
  ["Microsoft", "Edge", "Application", "msedge.exe"],
];

/** @typedef {{ kind: "found", path: string } | { kind: "none" } | { kind: "misnamed", sentence: string }} Search */

/**
 * Looks for a Chromium, or a browser made from it, where the three systems keep theirs.
 *
 * @param {{ platform: NodeJS.Platform, env: NodeJS.ProcessEnv, exists?: (path: string) => boolean }} machine
 * @returns {Search} `misnamed` when the environment names a browser that is not there: a test must not quietly take another
 */
export function findChromium({ platform, env, exists = existsSync }) {
  const named = env[NAMED_BY];
  if (named) {
    if (exists(named)) return { kind: "found", path: named };
    return { kind: "misnamed", sentence: `${NAMED_BY} names ${named}, and there is no such file.` };
  }
  const path = listPlaces(platform, env).find((place) => exists(place));
  return path ? { kind: "found", path } : { kind: "none" };
}

/** @param {NodeJS.Platform} platform @param {NodeJS.ProcessEnv} env */
function listPlaces(platform, env) {
  if (platform === "darwin") return [...MAC_PLACES, ...MAC_PLACES.map((place) => `${env.HOME ?? ""}${place}`)];
  if (platform !== "win32") return LINUX_PLACES;
  const folders = WINDOWS_FOLDERS.map((name) => env[name]).filter((folder) => folder !== undefined);
  return folders.flatMap((folder) => WINDOWS_PLACES.map((place) => win32.join(folder, ...place)));
}
