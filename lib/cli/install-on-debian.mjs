import { spawn } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { stopTogether } from "./run-node.mjs";

/** How long to wait for another program that is installing something, in seconds. */
const OTHER_INSTALL_S = 400;

/**
 * Installs Debian's packages where this is Debian and the reader may install; elsewhere it does nothing. Whether what was
 * wanted is there afterwards is for the caller to see.
 *
 * @param {readonly string[]} packages
 * @param {string} sentence what to tell the reader before it begins
 * @returns {Promise<void>}
 */
export async function installOnDebian(packages, sentence) {
  if (!mayInstallOnDebian()) return;
  console.log(sentence);
  const wait = `DPkg::Lock::Timeout=${OTHER_INSTALL_S}`;
  await runProgram("apt-get", ["update", "-qq", "-o", wait]);
  await runProgram("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...packages, "-o", wait]);
}

function mayInstallOnDebian() {
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get") || !existsSync("/etc/os-release")) return false;
  return /^ID=debian$/m.test(readFileSync("/etc/os-release", "utf8"));
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
