import { createServer } from "node:net";
import { describe, expect, it } from "vitest";
import { findFreePort, tryPort } from "@/lib/cli/try-port.mjs";

describe("tryPort", () => {
  it("finds a free port free, and leaves it free", async () => {
    const port = await findFreePort();
    expect(await tryPort(port, "127.0.0.1")).toBe("free");
    expect(await tryPort(port, "0.0.0.0")).toBe("free");
  });

  it.each(["127.0.0.1", "0.0.0.0"])("finds a port taken that is held on %s, for either address", async (held) => {
    const port = await findFreePort();
    const holder = createServer();
    await new Promise((resolve) => holder.listen({ port, host: held }, () => resolve(undefined)));
    try {
      expect(await tryPort(port, "127.0.0.1")).toBe("taken");
      expect(await tryPort(port, "0.0.0.0")).toBe("taken");
    } finally {
      await new Promise((resolve) => holder.close(resolve));
    }
  });

  it("says that an address which is not this computer's cannot be used", async () => {
    // 192.0.2.0/24 belongs to no computer (RFC 5737); 203.0.113.0/24 likewise.
    expect(await tryPort(await findFreePort(), "203.0.113.9")).toBe("impossible");
  });
});
