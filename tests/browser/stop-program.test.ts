import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "@playwright/test";
import { findFreePort, tryPort } from "@/lib/cli/try-port.mjs";
import { waitForAnswer } from "@/lib/cli/wait-for-answer.mjs";
import { inTurn, type Phone, postForm, takePart, until } from "../bench/live/phones";
import { TEACHER } from "./class-server";

const PHONES = 60;
/** A teacher who presses Ctrl-C sees it stop, on a busy laptop too; milliseconds. */
const SOON_MS = 5000;
const WAIT_MS = 60_000;

type Running = {
  readonly address: string;
  readonly port: number;
  readonly program: ChildProcess;
  readonly ended: Promise<number | NodeJS.Signals | null>;
};

async function startIn(folder: string, words: readonly string[]): Promise<Running> {
  const port = await findFreePort();
  // A group of its own, as a terminal gives what is started in it: Ctrl-C reaches everyone in the group.
  const program = spawn(process.execPath, [...words], {
    detached: true,
    stdio: "ignore",
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", PLASTERLINE_DATA: folder, PORT: String(port) },
  });
  const ended = new Promise<number | NodeJS.Signals | null>((resolve) =>
    program.once("close", (code, signal) => resolve(code ?? signal)),
  );
  const address = `http://127.0.0.1:${port}`;
  await waitForAnswer(address, () => program.exitCode === null);
  return { address, port, program, ended };
}

/** A teacher's vote with all phones looking at it, and one mark in. */
async function openVote(address: string) {
  const made = await postForm(address, "/api/class/first-teacher", TEACHER, "");
  const vote = { exerciseId: "points-on-the-floor", point: "A.foot" };
  const voteId = String((await postForm(address, "/class/live", vote, made.cookie)).reply.voteId);
  const phones = await inTurn(Array.from({ length: PHONES }), 10, () => takePart(address, voteId));
  await until(() => phones.every((phone) => phone.seen() !== null), WAIT_MS);
  const [first] = phones as [Phone, ...Phone[]];
  const mark = { round: 1, at: [1, 2] };
  expect((await postForm(address, "/api/live/guess", { voteId, ...mark }, first.cookie)).status).toBe(200);
  return { voteId, phones, first, mark };
}

const NPM_START = ["lib/cli/start.mjs"];
const SERVER = ["node_modules/next/dist/bin/next", "start", "-H", "127.0.0.1"];

for (const [what, words, how, code] of [
  ["npm start stops on Ctrl-C", NPM_START, "SIGINT", 0],
  ["npm start stops when it is asked to", NPM_START, "SIGTERM", 0],
  ["the server alone, as in the container, stops when it is asked to", SERVER, "SIGTERM", 143],
] as const)
  test(`${what} with ${PHONES} phones looking on, and what was acknowledged is there at the next start`, async () => {
    test.setTimeout(180_000);
    const folder = mkdtempSync(join(tmpdir(), "plasterline-stop-"));
    const running = await startIn(folder, words);
    let after: Running | undefined;
    try {
      const { voteId, phones, first, mark } = await openVote(running.address);
      const asked = performance.now();
      const { pid = 0 } = running.program;
      process.kill(how === "SIGINT" ? -pid : pid, how);
      expect(await running.ended).toBe(code);
      expect(performance.now() - asked).toBeLessThan(SOON_MS);
      expect(await tryPort(running.port, "127.0.0.1")).toBe("free");
      for (const phone of phones) phone.close();

      after = await startIn(folder, words);
      const back = await postForm(after.address, "/api/live/join", { voteId }, first.cookie);
      expect(back.reply).toMatchObject({ ok: true, mine: [mark] });
    } finally {
      for (const one of [running, after]) {
        if (one?.program.exitCode === null) one.program.kill("SIGTERM");
        await one?.ended;
      }
      rmSync(folder, { recursive: true, force: true });
    }
  });
