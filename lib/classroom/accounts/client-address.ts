import { BlockList, isIP, isIPv4 } from "node:net";

/** Who really asks: where from, and whether by https. */
export type Client = { readonly address: string; readonly secure: boolean };

/**
 * Reads the list of the proxies that this server stands behind: addresses, or ranges as `10.0.0.0/8`, with commas between.
 *
 * @returns a sentence for whoever wrote it when it cannot be read
 */
export function readProxies(written: string): BlockList | string {
  const proxies = new BlockList();
  for (const each of written.split(",").map((part) => part.trim())) {
    if (each === "") continue;
    const [address = "", prefix] = each.split("/");
    const kind = familyOf(address);
    const bits = Number(prefix);
    const most = kind === "ipv4" ? 32 : 128;
    const wrong =
      isIP(address) === 0 || (prefix !== undefined && !(Number.isInteger(bits) && bits >= 0 && bits <= most));
    if (wrong)
      return `PLASTERLINE_PROXY says "${each}", which is no address; write for example 127.0.0.1 or 10.0.0.0/8, with commas between.`;
    if (prefix === undefined) proxies.addAddress(address, kind);
    else proxies.addSubnet(address, bits, kind);
  }
  return proxies;
}

/**
 * The client behind a connection. What a request says of its own way (`X-Forwarded-For`, `X-Forwarded-Proto`) is believed
 * only from a proxy that was named, and only as far back as the proxies reach: anyone can write the rest.
 *
 * @param remote the address at the other end of the connection
 */
export function clientOf(remote: string, headers: Headers, proxies: BlockList): Client {
  const hop = plainAddress(remote);
  if (!isIn(proxies, hop)) return { address: neighbourhood(hop), secure: false };
  const chain = (headers.get("x-forwarded-for") ?? "").split(",").map((part) => plainAddress(part.trim()));
  let address = hop;
  for (const before of chain.reverse()) {
    if (isIP(before) === 0) break;
    address = before;
    if (!isIn(proxies, before)) break;
  }
  return {
    address: neighbourhood(address),
    secure: headers.get("x-forwarded-proto")?.split(",").at(-1)?.trim() === "https",
  };
}

/** Whether an address is this computer's own. */
export function isThisComputer(address: string): boolean {
  return address === "::1" || (isIPv4(address) && address.startsWith("127."));
}

/** An IPv4 address that came in by IPv6 is itself. */
function plainAddress(address: string): string {
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  return mapped ?? address;
}

function isIn(proxies: BlockList, address: string): boolean {
  return isIP(address) !== 0 && proxies.check(address, familyOf(address));
}

function familyOf(address: string): "ipv4" | "ipv6" {
  return isIPv4(address) ? "ipv4" : "ipv6";
}

/** A household has 2^64 addresses of IPv6: they count as one. */
function neighbourhood(address: string): string {
  if (isIP(address) !== 6 || address === "::1") return address;
  const [head = "", tail] = address.split("%")[0]?.toLowerCase().split("::") ?? [];
  const front = head === "" ? [] : head.split(":");
  const back = tail === undefined || tail === "" ? [] : tail.split(":");
  const zeros =
    tail === undefined ? [] : Array.from({ length: Math.max(0, 8 - front.length - back.length) }, () => "0");
  const groups = [...front, ...zeros, ...back].slice(0, 4).map((group) => Number.parseInt(group, 16).toString(16));
  return `${groups.join(":")}::/64`;
}
