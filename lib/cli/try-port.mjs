import { connect, createServer } from "node:net";

/** How long a program that holds a port may take to pick up, in milliseconds. */
const KNOCK_MS = 500;

/**
 * Whether this program may listen on a port.
 *
 * @param {number} port
 * @param {string} host the address to listen on
 * @returns {Promise<"free" | "taken" | "forbidden" | "impossible">}
 */
export async function tryPort(port, host) {
  // Some systems let two programs hold one port, one on every address and one on this address: knock first.
  if (await someoneAnswers(port)) return "taken";
  return new Promise((resolve) => {
    const server = createServer();
    server.once("error", (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === "EADDRINUSE") resolve("taken");
      else resolve(error.code === "EACCES" ? "forbidden" : "impossible");
    });
    server.listen({ port, host, exclusive: true }, () => server.close(() => resolve("free")));
  });
}

/**
 * @returns {Promise<number>} a port that nobody holds at this moment
 */
export function findFreePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen({ port: 0, host: "127.0.0.1" }, () => {
      const address = server.address();
      if (address === null || typeof address === "string") throw new Error("A listening server has a port.");
      server.close(() => resolve(address.port));
    });
  });
}

/** @param {number} port @returns {Promise<boolean>} */
function someoneAnswers(port) {
  return new Promise((resolve) => {
    const socket = connect({ port, host: "127.0.0.1" });
    const answer = (/** @type {boolean} */ heard) => {
      socket.destroy();
      resolve(heard);
    };
    socket.setTimeout(KNOCK_MS, () => answer(false));
    socket.once("connect", () => answer(true));
    socket.once("error", () => answer(false));
  });
}
