import { readFileSync } from "node:fs";
import { join } from "node:path";
import { sameLocks } from "./compare-locks.mjs";
import { findNpm } from "./find-npm.mjs";
import { runNode } from "./run-node.mjs";

/** @param {string} path */
function readLock(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return undefined;
  }
}

/**
 * Whether every package is there, in the version the project asks for.
 *
 * @param {string} root the project's folder
 */
function isInstalled(root) {
  const asked = readLock(join(root, "package-lock.json"));
  const installed = readLock(join(root, "node_modules", ".package-lock.json"));
  return asked !== undefined && installed !== undefined && sameLocks(asked, installed);
}

/**
 * Installs the packages when some are missing or of another version; a complete install is left alone.
 *
 * @param {string} root the project's folder
 * @returns {Promise<string | undefined>} a sentence for the reader when it could not
 */
export async function installMissing(root) {
  if (isInstalled(root)) return undefined;
  const npm = findNpm(process);
  if (!npm) return "The packages are not installed and npm was not found; run `npm ci` here, then try again.";
  console.log("Installing what is missing. This is needed once, and takes a minute or so.");
  const words = [npm, "ci", "--include=dev", "--include=optional", "--no-audit", "--no-fund", "--loglevel=error"];
  const { code, stopped } = await runNode(words, { cwd: root });
  if (stopped) return "Stopped before everything was installed; start again to go on.";
  if (code === 0) return undefined;
  return "The packages could not be installed (npm's own words are above); with a connection to the internet, try again.";
}
