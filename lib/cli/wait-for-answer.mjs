import { get } from "node:http";
import { setTimeout as pause } from "node:timers/promises";

const EVERY_MS = 100;
const ONE_ANSWER_MS = 20_000;

/**
 * Asks an address again and again until it answers.
 *
 * @param {string} address http only
 * @param {() => boolean} goOn asked before every try
 * @returns {Promise<number | undefined>} the status of the first answer; nothing when told not to go on
 */
export async function waitForAnswer(address, goOn) {
  while (goOn()) {
    const status = await ask(address);
    if (status !== undefined) return status;
    await pause(EVERY_MS);
  }
  return undefined;
}

/** @param {string} address @returns {Promise<number | undefined>} */
function ask(address) {
  return new Promise((resolve) => {
    const request = get(address, { agent: false, timeout: ONE_ANSWER_MS }, (response) => {
      response.resume();
      resolve(response.statusCode);
    });
    request.once("timeout", () => request.destroy());
    request.once("error", () => resolve(undefined));
  });
}
