import { buildPages, isBuilt } from "./build-pages.mjs";
import { checkNode } from "./check-node.mjs";
import { drawQr } from "./draw-qr.mjs";
import { installMissing } from "./install-missing.mjs";
import { listLanAddresses } from "./list-lan-addresses.mjs";
import { PROJECT_ROOT } from "./project-root.mjs";
import { readStartOptions } from "./read-start-options.mjs";
import { servePages } from "./serve-pages.mjs";
import { stopWithNpm } from "./stop-with-npm.mjs";
import { tryPort } from "./try-port.mjs";

const HELP = `Plasterline: draw a stage set in perspective from its ground plan.

  npm start                   serve to this computer, at http://127.0.0.1:3000
  npm start -- --lan          serve to everyone on the room's network, with a code to scan
  npm start -- --port 3100    serve on another port (PORT=3100 does the same)
  npm start -- --help         show this

The first start installs and builds what is missing. Ctrl-C stops it.`;

/** @returns {Promise<string | undefined>} a sentence for the reader when something kept it from serving */
async function start() {
  const tooOld = checkNode(process.versions.node);
  if (tooOld) return tooOld;

  const asked = readStartOptions(process.argv.slice(2), process.env);
  if (asked.kind === "unclear") return asked.sentence;
  if (asked.kind === "help") {
    console.log(HELP);
    return undefined;
  }

  const host = asked.lan ? "0.0.0.0" : "127.0.0.1";
  const refusal = refusePort(asked.port, await tryPort(asked.port, host));
  if (refusal) return refusal;

  const notInstalled = await installMissing(PROJECT_ROOT);
  if (notInstalled) return notInstalled;

  if (!isBuilt(PROJECT_ROOT)) {
    console.log("Building the pages. This is needed once, and after every change.");
    const { code, output, stopped } = await buildPages(PROJECT_ROOT, "keep");
    if (stopped) return "Stopped before the pages were built.";
    if (code !== 0) return `${output}The pages could not be built; the reason is above.`;
  }

  const announce = () => sayWhere(asked.port, asked.lan);
  return servePages({ root: PROJECT_ROOT, host, port: asked.port, announce });
}

/** @param {number} port @param {Awaited<ReturnType<typeof tryPort>>} found */
function refusePort(port, found) {
  const other = `choose another port, for example: npm start -- --port ${port < 60_000 ? port + 1 : 3000}`;
  if (found === "taken") return `Port ${port} is taken by another program; stop that one, or ${other}`;
  if (found === "forbidden") return `Port ${port} is kept for the administrator of this computer; ${other}`;
  if (found === "impossible") return `Port ${port} cannot be used on this computer; ${other}`;
  return undefined;
}

/** @param {number} port @param {boolean} lan */
async function sayWhere(port, lan) {
  console.log(`\nPlasterline is at http://127.0.0.1:${port} (Ctrl-C stops it).`);
  if (!lan) return;
  const [first, ...others] = listLanAddresses().map((address) => `http://${address}:${port}`);
  if (!first) {
    console.log(
      "This computer is on no network that others could reach it by; join the room's network and start again.",
    );
    return;
  }
  const code = await drawQr(first, { coloured: process.stdout.isTTY });
  console.log(`Others in the room open ${first} or scan this:\n\n${code}`);
  if (others.length > 0) console.log(`Should that not open, try ${others.join(" or ")}`);
}

stopWithNpm();
const complaint = await start();
if (complaint) {
  console.error(complaint);
  process.exitCode = 1;
}
