import { readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * @param {string} root the project's folder
 * @param {string} packageName an installed package
 * @param {string} [program] which of its programs, when it has several
 * @returns {string} absolute path of the JavaScript file behind the program, the same on every system
 */
export function packageProgram(root, packageName, program = packageName) {
  const folder = join(root, "node_modules", packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const file = typeof bin === "string" ? bin : bin?.[program];
  if (typeof file !== "string") throw new Error(`The package ${packageName} has no program ${program}.`);
  return join(folder, file);
}
