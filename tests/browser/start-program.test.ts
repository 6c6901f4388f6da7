import { spawn } from "node:child_process";
import { expect, test } from "@playwright/test";
import { findFreePort, tryPort } from "@/lib/cli/try-port.mjs";

/** Starts the program as `npm start` does and gives what it has said once `line` has come, and a way to stop it. */
async function startProgram(words: readonly string[], line: RegExp) {
  const program = spawn(process.execPath, ["lib/cli/start.mjs", ...words], { stdio: ["ignore", "pipe", "pipe"] });
  let said = "";
  const ended = new Promise<number | null>((resolve) => program.once("close", resolve));
  await new Promise<void>((resolve, reject) => {
    const listen = (chunk: Buffer) => {
      said += chunk;
      if (line.test(said)) resolve();
    };
    program.stdout.on("data", listen);
    program.stderr.on("data", listen);
    program.once("close", () => reject(new Error(`npm start ended by itself and said: ${said}`)));
  });
  const stop = () => {
    program.kill("SIGTERM");
    return ended;
  };
  return { said, stop };
}

test("npm start says where it is once it answers there, to this computer only, and leaves nothing when stopped", async () => {
  const port = await findFreePort();
  const { said, stop } = await startProgram(["--port", String(port)], /\(Ctrl-C stops it\)/);
  expect(said).not.toContain("Others in the room");
  expect((await fetch(`http://127.0.0.1:${port}/`)).status).toBe(200);
  expect(await tryPort(port, "127.0.0.1")).toBe("taken");
  expect(await stop()).toBe(0);
  expect(await tryPort(port, "127.0.0.1")).toBe("free");
});

test("npm start -- --lan gives the room an address and serves it over plain http", async () => {
  const port = await findFreePort();
  const { said, stop } = await startProgram(["--lan", "--port", String(port)], /scan this|on no network/);
  const address = /Others in the room open (http:\S+)/.exec(said)?.[1];
  if (address) expect((await fetch(address)).status).toBe(200);
  else expect(said).toContain("on no network that others could reach it by");
  expect(await stop()).toBe(0);
});
