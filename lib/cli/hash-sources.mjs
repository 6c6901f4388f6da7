import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** All that the pages are built from. Programs of `lib/cli` are not in it: no page imports them. */
const BUILT_FROM = [
  "app",
  "exercises",
  "instrumentation.ts",
  "lib",
  "public",
  "next.config.mjs",
  "package-lock.json",
  "package.json",
  "postcss.config.mjs",
  "proxy.ts",
  "tsconfig.json",
];
const NOT_BUILT_FROM = ["lib/cli"];

/**
 * One number for everything the pages are built from, by content: a clone, a copy and a pull all leave times that say
 * nothing about what changed.
 *
 * @param {string} root the project's folder
 * @returns {string} hexadecimal
 */
export function hashSources(root) {
  const hash = createHash("sha256");
  for (const path of BUILT_FROM.flatMap((part) => listFiles(root, part))) {
    const content = readFileSync(join(root, path));
    hash.update(`${path}\0${content.length}\0`).update(content);
  }
  return hash.digest("hex");
}

/** @param {string} root @param {string} path @returns {string[]} paths from the root, with forward slashes */
function listFiles(root, path) {
  const full = join(root, path);
  if (NOT_BUILT_FROM.includes(path) || !existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full)
    .sort()
    .flatMap((name) => listFiles(root, `${path}/${name}`));
}
