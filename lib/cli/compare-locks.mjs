/**
 * @typedef {{ version?: string, resolved?: string, integrity?: string, link?: boolean, optional?: boolean, devOptional?: boolean }} LockedPackage
 * @typedef {{ packages?: Record<string, LockedPackage> }} Lock
 */

/**
 * Whether what is installed is what the lock asks for. npm writes what it installed in a lock of its own, which leaves
 * out the project itself and the optional packages meant for other systems.
 *
 * @param {Lock} asked package-lock.json
 * @param {Lock} installed node_modules/.package-lock.json
 */
export function sameLocks(asked, installed) {
  const wanted = { ...asked.packages };
  delete wanted[""];
  const got = installed.packages ?? {};
  const nothingMissing = Object.entries(wanted).every(([place, { version, integrity, optional, devOptional }]) => {
    const there = got[place];
    if (!there) return Boolean(optional ?? devOptional);
    return there.version === version && there.integrity === integrity;
  });
  return nothingMissing && Object.keys(got).every((place) => place in wanted);
}
