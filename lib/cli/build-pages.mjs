import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { hashSources } from "./hash-sources.mjs";
import { packageProgram } from "./package-program.mjs";
import { runNode } from "./run-node.mjs";

/** @param {string} root */
const stampOf = (root) => join(root, ".next", "plasterline-sources.txt");

/**
 * Whether the pages that stand built are those of the sources as they are now.
 *
 * @param {string} root the project's folder
 */
export function isBuilt(root) {
  if (!existsSync(join(root, ".next", "BUILD_ID")) || !existsSync(stampOf(root))) return false;
  return readFileSync(stampOf(root), "utf8") === hashSources(root);
}

/**
 * Builds the pages and notes from what.
 *
 * @param {string} root the project's folder
 * @param {"show" | "keep"} output whether the builder's own words are shown as they come
 */
export async function buildPages(root, output) {
  // Taken before the build: a file that changes meanwhile must leave the build stale, not pass for built.
  const sources = hashSources(root);
  rmSync(stampOf(root), { force: true });
  const result = await runNode([packageProgram(root, "next"), "build"], { cwd: root, output });
  if (result.code === 0) {
    mkdirSync(join(root, ".next"), { recursive: true });
    writeFileSync(stampOf(root), sources);
  }
  return result;
}
