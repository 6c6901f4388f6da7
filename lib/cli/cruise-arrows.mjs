import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";

const require = createRequire(import.meta.url);

/** The folders whose imports are followed. */
const CRUISED_FOLDERS = ["lib", "app", "tests"];

/**
 * @typedef {{ rule: string, from: string, to: string, why: string }} BrokenArrow
 * @typedef {{ modules: number, broken: BrokenArrow[] }} Cruise
 */

/**
 * Reads every import below `root` and holds it against the rules of `.dependency-cruiser.cjs`.
 *
 * A cruise that found no module is a broken check, not a clean tree: look at `modules` before believing `broken`.
 *
 * @param {string} root absolute path of a folder laid out like this project
 * @param {{ afresh?: boolean }} [how] The cruiser keeps its first resolver, and with it the first root's "@/", for as long
 *   as the process lives. `afresh` makes one for every import: for whoever cruises several roots, and slower.
 * @returns {Promise<Cruise>} how many of the project's own modules were read, and every arrow that points the wrong way
 */
export async function cruiseArrows(root, { afresh = false } = {}) {
  const folders = CRUISED_FOLDERS.filter((folder) => existsSync(join(root, folder)));
  const { forbidden, options } = require("../../.dependency-cruiser.cjs");
  const { cruise } = await import("dependency-cruiser");
  const rules = { ...options, ruleSet: { forbidden }, validate: true, baseDir: root };
  const { output } = await cruise(folders, rules, { alias: { "@": root }, bustTheCache: afresh });
  if (typeof output === "string") throw new Error("The cruise answered with text instead of a result.");
  return {
    modules: output.modules.filter((module) => folders.some((folder) => module.source.startsWith(`${folder}/`))).length,
    broken: output.summary.violations.map(({ rule, from, to }) => ({
      rule: rule.name,
      from,
      to,
      why: forbidden.find((one) => one.name === rule.name)?.comment ?? "",
    })),
  };
}
