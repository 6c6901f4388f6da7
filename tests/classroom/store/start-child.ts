import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { build } from "vite";
import { afterAll, beforeAll } from "vitest";
import type { StorePlace } from "@/lib/classroom/store/open-store";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";

const PROGRAM = "tests/classroom/store/store-child.ts";
/** Below the packages that the program needs, and never looked at by any check. */
const BUILT_IN = join(PROJECT_ROOT, "node_modules", ".cache");

/** The program as plain JavaScript: thirty-two that each read TypeScript anew would take most of a minute. */
export function childProgram(): () => string {
  let folder = "";
  beforeAll(async () => {
    mkdirSync(BUILT_IN, { recursive: true });
    folder = mkdtempSync(join(BUILT_IN, "store-child-"));
    await build({
      root: PROJECT_ROOT,
      configFile: false,
      logLevel: "error",
      resolve: { alias: { "@": PROJECT_ROOT } },
      build: { ssr: PROGRAM, outDir: folder, target: "node20" },
    });
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return () => join(folder, "store-child.js");
}

export type Child = {
  readonly say: (line: string) => void;
  /** The next line it prints; nothing once it has ended. */
  readonly line: () => Promise<string | undefined>;
  readonly kill: () => void;
  readonly ended: Promise<void>;
};

/** Starts the process that opens a store, and waits until it only wants the word. */
export async function startChild(program: string, place: StorePlace): Promise<Child> {
  const child: ChildProcess = spawn(process.execPath, [program, JSON.stringify(place)], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  const { stdin, stdout } = child;
  if (!stdin || !stdout) throw new Error("A child with pipes has them.");
  // Killed, it no longer listens.
  stdin.on("error", () => {});
  const lines = createInterface({ input: stdout })[Symbol.asyncIterator]();
  const ended = new Promise<void>((resolve) => child.once("close", () => resolve()));
  const line = async () => (await lines.next()).value as string | undefined;
  const first = await line();
  if (first !== "ready") throw new Error(`The child said ${first}.`);
  return { say: (word) => stdin.write(`${word}\n`), line, kill: () => child.kill("SIGKILL"), ended };
}
