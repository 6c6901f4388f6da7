import type { NetworkInterfaceInfo } from "node:os";
import { describe, expect, it } from "vitest";
import { listLanAddresses } from "@/lib/cli/list-lan-addresses.mjs";

function ipv4(address: string, internal = false): NetworkInterfaceInfo {
  return { family: "IPv4", address, internal, netmask: "255.255.255.0", mac: "00:00:5e:00:53:01", cidr: null };
}

function ipv6(address: string): NetworkInterfaceInfo {
  return {
    family: "IPv6",
    address,
    internal: false,
    netmask: "ffff::",
    mac: "00:00:5e:00:53:01",
    cidr: null,
    scopeid: 0,
  };
}

describe("listLanAddresses", () => {
  it.each([
    { what: "none on no network", interfaces: { lo: [ipv4("127.0.0.1", true)] }, listed: [] },
    {
      what: "the room's network before the computer's own",
      interfaces: {
        lo: [ipv4("127.0.0.1", true)],
        docker0: [ipv4("172.17.0.1")],
        wlan0: [ipv4("192.168.1.20"), ipv6("fe80::1")],
      },
      listed: ["192.168.1.20", "172.17.0.1"],
    },
    {
      what: "every network the computer is on",
      interfaces: {
        "Wi-Fi": [ipv4("10.0.0.7")],
        Ethernet: [ipv4("192.168.1.20")],
        "vEthernet (WSL)": [ipv4("172.20.0.1")],
      },
      listed: ["10.0.0.7", "192.168.1.20", "172.20.0.1"],
    },
    { what: "no self-given address", interfaces: { en0: [ipv4("169.254.10.20")], en1: undefined }, listed: [] },
  ])("lists $what", ({ interfaces, listed }) => {
    expect(listLanAddresses(interfaces)).toEqual(listed);
  });
});
