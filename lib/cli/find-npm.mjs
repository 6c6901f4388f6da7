import { existsSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/**
 * Where npm's own JavaScript stands. npm names itself to what it starts; started without it, npm stands beside Node.
 *
 * @param {{ env: NodeJS.ProcessEnv, execPath: string, exists?: (path: string) => boolean }} machine
 * @returns {string | undefined} absolute path of npm-cli.js, or nothing when this machine has no npm to be found
 */
export function findNpm({ env, execPath, exists = existsSync }) {
  const named = env.npm_execpath;
  const besideNode = dirname(execPath);
  const places = [
    ...(named && /^npm(-cli)?\.[cm]?js$/.test(basename(named)) ? [named] : []),
    join(besideNode, "node_modules", "npm", "bin", "npm-cli.js"),
    join(besideNode, "..", "lib", "node_modules", "npm", "bin", "npm-cli.js"),
    "/usr/share/nodejs/npm/bin/npm-cli.js",
  ];
  return places.find((place) => exists(place));
}
