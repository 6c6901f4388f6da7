import { spawn } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { stopTogether } from "./run-node.mjs";

/** How long to wait for another program that is installing something, in seconds. */
const OTHER_INSTALL_S = 400;

/**
 * Installs Debian's own packages, when this is Debian and the reader may; else does nothing.
 *
 * @param {readonly string[]} packages
 * @param {string} sentence what is said before, for it takes a while
 * @returns {Promise<void>} whether it went well shows in what is there afterwards
 */
export async function installOnDebian(packages, sentence) {
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get") || !existsSync("/etc/os-release")) return;
  if (!/^ID=debian$/m.test(readFileSync("/etc/os-release", "utf8"))) return;
  console.log(sentence);
  const wait = `DPkg::Lock::Timeout=${OTHER_INSTALL_S}`;
  await runProgram("apt-get", ["update", "-qq", "-o", wait]);
  await runProgram("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...packages, "-o", wait]);
}

/** @param {string} program @param {readonly string[]} words @returns {Promise<number>} its exit code, 1 when it did not start */
function runProgram(program, words) {
  return new Promise((resolve) => {
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    const child = spawn(program, [...words], { env, stdio: ["ignore", "inherit", "inherit"] });
    stopTogether(child);
    child.once("error", () => resolve(1));
    child.once("close", (code) => resolve(code ?? 1));
  });
}
