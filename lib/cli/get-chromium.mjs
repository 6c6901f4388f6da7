import { existsSync } from "node:fs";
import { findChromium } from "./find-chromium.mjs";
import { installOnDebian } from "./install-on-debian.mjs";
import { packageProgram } from "./package-program.mjs";
import { runNode } from "./run-node.mjs";

/** The browser, and letters for it: a bare system has none, and would show boxes. */
const DEBIAN_PACKAGES = ["chromium", "fonts-liberation"];

const HOW_TO_MEND =
  "Install Chromium or Chrome, or name one that you have: PLASTERLINE_CHROMIUM=/path/to/chromium npm test";

/**
 * Finds a Chromium for the tests, and where there is none tries to get one: Debian's package when this is Debian and the
 * reader may install, else the download of the test runner.
 *
 * @param {string} root the project's folder, with its packages installed
 * @returns {Promise<{ path: string } | { sentence: string }>} the browser's program, or what is missing and how to mend it
 */
export async function getChromium(root) {
  const first = findChromium(process);
  if (first.kind === "found") return { path: first.path };
  if (first.kind === "misnamed") return { sentence: first.sentence };

  await installOnDebian(DEBIAN_PACKAGES, "No Chromium here yet: installing Debian's package.");
  const second = findChromium(process);
  if (second.kind === "found") return { path: second.path };

  const { chromium } = await import("@playwright/test");
  if (!existsSync(chromium.executablePath())) {
    console.log("No Chromium here yet: downloading the test runner's own (about 150 MB, once).");
    const program = packageProgram(root, "@playwright/test", "playwright");
    await runNode([program, "install", "--no-shell", "chromium"], { cwd: root });
  }
  if (existsSync(chromium.executablePath())) return { path: chromium.executablePath() };
  return { sentence: `The pages need a browser to be tested in, and none was found or could be got. ${HOW_TO_MEND}` };
}
