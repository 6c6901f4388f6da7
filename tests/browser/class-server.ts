import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findFreePort } from "@/lib/cli/try-port.mjs";
import { waitForAnswer } from "@/lib/cli/wait-for-answer.mjs";

export type ClassServer = {
  readonly address: string;
  readonly folder: string;
  readonly pid: number;
  /** What it has printed so far. */
  readonly said: () => string;
  readonly close: () => Promise<void>;
};

/** How long a server that was asked to stop is waited for, milliseconds. */
const PATIENCE_MS = 3000;

/** Serves the built pages with a class's store of its own: a new folder, or one that is given. */
export async function serveClass(env: Readonly<Record<string, string>> = {}, given?: string): Promise<ClassServer> {
  const folder = given ?? mkdtempSync(join(tmpdir(), "plasterline-class-"));
  const port = await findFreePort();
  const server = spawn(
    process.execPath,
    [join("node_modules", "next", "dist", "bin", "next"), "start", "-H", "127.0.0.1", "-p", String(port)],
    {
      stdio: ["ignore", "pipe", "pipe"],
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", PLASTERLINE_DATA: folder, ...env },
    },
  );
  let said = "";
  for (const stream of [server.stdout, server.stderr])
    stream.on("data", (chunk) => {
      said += chunk;
    });
  const address = `http://127.0.0.1:${port}`;
  await waitForAnswer(address, () => server.exitCode === null);
  const close = async () => {
    const gone = new Promise((resolve) => server.once("close", resolve));
    server.kill();
    // It waits for the lines of pages that are still open; `npm start` gives up on them in the same way.
    const patience = setTimeout(() => server.kill("SIGKILL"), PATIENCE_MS);
    await gone;
    clearTimeout(patience);
    if (given === undefined) rmSync(folder, { recursive: true, force: true });
  };
  return { address, folder, pid: server.pid ?? 0, said: () => said, close };
}

/** Sends a form as a page of the server would, with what else a test wants to say. */
export async function sendForm(
  { address }: ClassServer,
  path: string,
  body: unknown,
  headers: Readonly<Record<string, string>> = {},
): Promise<{
  readonly status: number;
  readonly reply: Readonly<Record<string, unknown>>;
  readonly cookies: readonly string[];
}> {
  const answer = await fetch(`${address}/api/class/${path}`, {
    method: "POST",
    headers: { "Content-Type": "application/json", Origin: address, ...headers },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });
  return { status: answer.status, reply: await answer.json(), cookies: answer.headers.getSetCookie() };
}

export const TEACHER = { name: "Ida Brandt", email: "ida@tidemill.example", password: "seven tidy gulls" };
