import { spawnSync } from "node:child_process";
import { installOnDebian } from "./install-on-debian.mjs";

/** The programs of poppler that the tests read PDFs with. */
const PROGRAMS = ["pdftoppm", "pdftotext", "pdffonts"];

/** What a reader without poppler is told: what is missing, what that means for the tests, and how to get it. */
export const NO_POPPLER =
  "Poppler is not here, which reads a PDF as a printer would: printed sheets are measured from their PNG pictures instead, " +
  "and tests of the PDF itself are skipped. To get it: apt-get install poppler-utils, or brew install poppler.";

/**
 * Whether poppler's programs can be run from here.
 *
 * @param {NodeJS.ProcessEnv} [env] where `PATH` says what can be run
 * @returns {boolean}
 */
export function hasPoppler(env = process.env) {
  return PROGRAMS.every((program) => spawnSync(program, ["-v"], { env, stdio: "ignore" }).status === 0);
}

/**
 * Sees to it that the tests have poppler: where it is missing it is installed if that can be done.
 *
 * @param {{ has?: () => boolean, install?: typeof installOnDebian }} [ways] other ways to look and to install, for tests
 * @returns {Promise<string | null>} a sentence for the reader when it is not there in the end
 */
export async function getPoppler({ has = hasPoppler, install = installOnDebian } = {}) {
  if (has()) return null;
  await install(["poppler-utils"], "No poppler here yet: installing Debian's package.");
  return has() ? null : NO_POPPLER;
}
