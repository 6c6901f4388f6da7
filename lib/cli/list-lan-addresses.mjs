import { networkInterfaces } from "node:os";

/** Networks inside this computer, which no phone in the room can reach, go by such names. */
const INSIDE_NAMES =
  /^(docker|br-|veth|virbr|vmnet|vboxnet|vethernet|utun|tun|tap|wg|tailscale|zt|lxc|lxd|podman|cni)/i;

/** The address a computer gives itself when nobody else gave it one (RFC 3927). */
const SELF_GIVEN = /^169\.254\./;

/**
 * The addresses under which others in the room may reach this computer, the likeliest first.
 *
 * @param {NodeJS.Dict<import("node:os").NetworkInterfaceInfo[]>} [interfaces]
 * @returns {readonly string[]} IPv4 addresses; none when this computer is on no network
 */
export function listLanAddresses(interfaces = networkInterfaces()) {
  const outside = Object.entries(interfaces).flatMap(([name, addresses = []]) =>
    addresses
      .filter(({ family, internal, address }) => family === "IPv4" && !internal && !SELF_GIVEN.test(address))
      .map(({ address }) => ({ address, inside: INSIDE_NAMES.test(name) })),
  );
  return [...outside.filter((one) => !one.inside), ...outside.filter((one) => one.inside)].map((one) => one.address);
}
