import { checkNode } from "./check-node.mjs";
import { installMissing } from "./install-missing.mjs";
import { packageProgram } from "./package-program.mjs";
import { PROJECT_ROOT } from "./project-root.mjs";
import { runNode } from "./run-node.mjs";
import { stopWithNpm } from "./stop-with-npm.mjs";

stopWithNpm();
const complaint = checkNode(process.versions.node) ?? (await installMissing(PROJECT_ROOT));
if (complaint) {
  console.error(complaint);
  process.exitCode = 1;
} else {
  const words = [packageProgram(PROJECT_ROOT, "vitest"), "bench", "--run", ...process.argv.slice(2)];
  process.exitCode = (await runNode(words, { cwd: PROJECT_ROOT })).code;
}
