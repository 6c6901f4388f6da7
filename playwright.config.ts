import { defineConfig } from "@playwright/test";
import { findChromium } from "./lib/cli/find-chromium.mjs";
import { findFreePort } from "./lib/cli/try-port.mjs";

// Every worker reads this file again, and must find the port of the one server.
process.env.PLASTERLINE_TEST_PORT ??= String(await findFreePort());
const port = process.env.PLASTERLINE_TEST_PORT;

const browser = findChromium(process);
if (browser.kind === "misnamed") throw new Error(browser.sentence);

/** Quiet, and no word to any network but this computer's own. */
const BROWSER_ARGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
];

export default defineConfig({
  testDir: "tests/browser",
  outputDir: "test-results",
  forbidOnly: Boolean(process.env.CI),
  reporter: "list",
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    viewport: { width: 1366, height: 768 },
    trace: "retain-on-failure",
    launchOptions: {
      args: BROWSER_ARGS,
      ...(browser.kind === "found" ? { executablePath: browser.path } : {}),
    },
  },
  webServer: {
    command: `node node_modules/next/dist/bin/next start -H 127.0.0.1 -p ${port}`,
    url: `http://127.0.0.1:${port}/`,
    env: { NEXT_TELEMETRY_DISABLED: "1" },
    reuseExistingServer: false,
    gracefulShutdown: { signal: "SIGTERM", timeout: 2000 },
  },
});
