/** The oldest Node the packages of this project run on. */
const OLDEST_NODE = /** @type {const} */ ({ major: 20, minor: 19 });

/**
 * @param {string} version as in `process.versions.node`, for example "20.20.1"
 * @returns {string | undefined} a sentence for the reader when this Node is too old
 */
export function checkNode(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  if (major > OLDEST_NODE.major || (major === OLDEST_NODE.major && minor >= OLDEST_NODE.minor)) return undefined;
  const oldest = `${OLDEST_NODE.major}.${OLDEST_NODE.minor}`;
  return `Plasterline needs Node.js ${oldest} or newer and this is ${version}; install a newer one from nodejs.org and try again.`;
}
