import { networkInterfaces } from "node:os";
import { readClient } from "./client";

export type PhoneAddress = {
  /** Where phones find this server: `http://192.168.1.20:3000`. */
  readonly base: string;
  /** The screen was opened at an address that only this computer has; the base is a guess at the room's. */
  readonly guessed: boolean;
};

const OWN_ADDRESS = /^(localhost|127\.|\[::1\])/;
/** Networks inside this computer go by such names, and an address nobody gave begins so (RFC 3927). */
const INSIDE = /^(docker|br-|veth|virbr|vmnet|utun|tun|tap|lo)/i;
const SELF_GIVEN = /^169\.254\./;

/** The address that a phone in the room is told: the one this screen was opened at, or this computer's in the room's network. */
export function phoneAddress(headers: Headers, interfaces = networkInterfaces()): PhoneAddress {
  const host = headers.get("host") ?? "127.0.0.1";
  const scheme = readClient(headers).secure ? "https" : "http";
  if (!OWN_ADDRESS.test(host)) return { base: `${scheme}://${host}`, guessed: false };
  const outside = Object.entries(interfaces).flatMap(([name, addresses = []]) =>
    INSIDE.test(name)
      ? []
      : addresses.filter(
          ({ family, internal, address }) => family === "IPv4" && !internal && !SELF_GIVEN.test(address),
        ),
  );
  const port = /:\d+$/.exec(host)?.[0] ?? "";
  return { base: `${scheme}://${outside[0]?.address ?? host.replace(/:\d+$/, "")}${port}`, guessed: true };
}
