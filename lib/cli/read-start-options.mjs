/** Where Plasterline is served unless told otherwise. */
const USUAL_PORT = 3000;
const LAST_PORT = 65535;

const HOW_TO_CHOOSE = "for example: npm start -- --port 3100";

/**
 * @typedef {{ kind: "help" }} AskedForHelp
 * @typedef {{ kind: "serve", port: number, lan: boolean }} AskedToServe
 * @typedef {{ kind: "unclear", sentence: string }} Unclear
 */

/**
 * Reads what `npm start` was asked for.
 *
 * @param {readonly string[]} words the arguments after the program's name
 * @param {NodeJS.ProcessEnv} env
 * @returns {AskedForHelp | AskedToServe | Unclear}
 */
export function readStartOptions(words, env) {
  // Without the two dashes npm keeps an option to itself, and tells what it starts through the environment.
  let lan = env.npm_config_lan === "true";
  /** @type {{ from: string, text: string } | undefined} */
  let named = env.PORT ? { from: "PORT", text: env.PORT } : undefined;

  const left = [...words];
  for (let word = left.shift(); word !== undefined; word = left.shift()) {
    const [option, attached] = word.startsWith("--port=")
      ? ["--port", word.slice("--port=".length)]
      : [word, undefined];
    if (option === "--help" || option === "-h") return { kind: "help" };
    if (option === "--lan") lan = true;
    else if (option === "--port") named = { from: "--port", text: attached ?? left.shift() ?? "" };
    else return unclear(`${JSON.stringify(word)} is no option of npm start; npm start -- --help lists them.`);
  }

  if (!named) return { kind: "serve", port: USUAL_PORT, lan };
  const port = readPort(named.text);
  if (port !== undefined) return { kind: "serve", port, lan };
  return unclear(
    `${named.from} is ${JSON.stringify(named.text)}, which is no port; give a whole number from 1 to ${LAST_PORT}, ${HOW_TO_CHOOSE}`,
  );
}

/** @param {string} sentence @returns {Unclear} */
function unclear(sentence) {
  return { kind: "unclear", sentence };
}

/** @param {string} text */
function readPort(text) {
  const digits = text.trim();
  if (!/^\d{1,5}$/.test(digits)) return undefined;
  const port = Number(digits);
  return port >= 1 && port <= LAST_PORT ? port : undefined;
}
