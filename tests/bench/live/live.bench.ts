import { mkdtempSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { bench, describe } from "vitest";
import type { VoteResult } from "@/lib/classroom/live/vote-result";
import { buildPages, isBuilt } from "@/lib/cli/build-pages.mjs";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";
import { type ClassServer, sendForm, serveClass, TEACHER } from "../../browser/class-server";
import { storesOf } from "../../classroom/engines";
import { inTurn, MOST_WAIT_MS, placeMark, postForm, sayTimes, takePart, until, watch } from "./phones";
import { serverCost } from "./server-cost";

/** One run each: it is the phones that are many. What is not written as async would be run once more to find out. */
const ONCE = { time: 0, iterations: 1, warmupTime: 0, warmupIterations: 0 };
/** How many come in at the same moment. */
const AT_ONCE = 20;
/** Over so long a class sets its marks down, once it has looked; and a second time all at one word. */
const SPREAD_MS = 5000;

describe("live votes", () => {
  bench("60 phones, one server, SQLite", async () => voteWith(60, 1), ONCE);
});

describe.skipIf(process.env.PLASTERLINE_TEST_POSTGRES === undefined)("live votes, PostgreSQL", () => {
  // Asked for here, so that the databases it makes are dropped when all is done.
  const { newPlace } = storesOf("postgres");
  bench("1,000 phones, two servers, PostgreSQL", async () => voteWith(1000, 2, (await newPlace()).databaseUrl), ONCE);
});

async function voteWith(many: number, serving: number, databaseUrl?: string): Promise<void> {
  if (!isBuilt(PROJECT_ROOT)) await buildPages(PROJECT_ROOT, "show");
  const folder = mkdtempSync(join(tmpdir(), "plasterline-bench-"));
  const servers: ClassServer[] = [];
  try {
    // One after the other, so that the first makes the tables.
    for (let i = 0; i < serving; i++)
      servers.push(await serveClass(databaseUrl ? { DATABASE_URL: databaseUrl } : {}, folder));
    await vote(many, servers, databaseUrl ? "postgres" : "sqlite");
  } finally {
    await Promise.all(servers.map(({ close }) => close()));
    rmSync(folder, { recursive: true, force: true });
  }
}

async function vote(many: number, servers: readonly ClassServer[], engine: string): Promise<void> {
  const [first] = servers;
  if (!first) throw new Error("A vote needs a server.");
  const made = await sendForm(first, "first-teacher", TEACHER);
  const teacher = made.cookies.map((line) => line.split(";")[0]).join("; ");
  const ask = { exerciseId: "points-on-the-floor", point: "A.foot" };
  const voteId = String((await postForm(first.address, "/class/live", ask, teacher)).reply.voteId);

  const places = Array.from({ length: many }, (_, i) => servers[i % servers.length] as ClassServer);
  const begun = performance.now();
  const front = watch(first.address, voteId, teacher);
  const phones = await inTurn(places, AT_ONCE, ({ address }) => takePart(address, voteId));
  await until(() => phones.every((phone) => phone.seen() !== null), MOST_WAIT_MS);
  const say = (words: string) => console.log(`${engine}, ${many} phones, ${servers.length} server(s): ${words}`);
  say(`all came in and look after ${((performance.now() - begun) / 1000).toFixed(1)} s`);
  try {
    const move = async (round: number, to: string) => {
      const asked = performance.now();
      const reply = await postForm(first.address, "/api/live/move", { voteId, round, move: to }, teacher);
      if (reply.status !== 200) throw new Error(`The vote did not move: ${JSON.stringify(reply.reply)}`);
      return asked;
    };
    for (const [round, spreadMs] of [
      [1, SPREAD_MS],
      [2, 0],
    ] as const) {
      const how = spreadMs > 0 ? `within ${spreadMs / 1000} s` : "all at once";
      const [load, before, own] = [loadavg()[0] ?? Number.NaN, coreSeconds(servers), process.cpuUsage()];
      const waits = await Promise.all(
        phones.map((phone, i) => placeMark(phone, voteId, round, (i / many) * spreadMs, i)),
      );
      const [after, { user, system }] = [coreSeconds(servers), process.cpuUsage(own)];
      say(`guess to acknowledged, ${how}: ${sayTimes(waits)}`);
      say(
        `of a core, each took the servers ${((1000 * (after - before)) / many).toFixed(1)} ms and the phones beside them ${((user + system) / 1000 / many).toFixed(1)} ms (the computer's load was ${load.toFixed(1)})`,
      );
      const all = performance.now();
      await until(() => front.seen()?.state.placed === many, MOST_WAIT_MS);
      say(`the screen at the front counts them all ${(performance.now() - all).toFixed(0)} ms after the last`);
      const asked = await move(round, "show");
      await until(() => phones.every((phone) => phone.seen()?.state.state === "revealed"), MOST_WAIT_MS);
      say(`reveal to seen: ${sayTimes(phones.map((phone) => (phone.seen()?.atMs ?? Number.NaN) - asked))}`);
      if (round === 1) {
        await move(1, "again");
        await until(() => phones.every((phone) => phone.seen()?.state.round === 2), MOST_WAIT_MS);
      }
    }
    const answer = await fetch(`${first.address}/api/live/result?vote=${voteId}`, { headers: { Cookie: teacher } });
    const result = (await answer.json()) as VoteResult;
    const kept = result.rounds.map(({ marks }) => marks.length);
    if (kept.some((marks) => marks !== many)) throw new Error(`Of ${many} acknowledged marks there are ${kept}.`);
    say(`every acknowledged mark is in the result, ${kept.join(" and ")}`);
  } finally {
    for (const each of [front, ...phones]) each.close();
  }
}

/** Seconds of a core that the servers have used; not a number where the system does not tell. */
function coreSeconds(servers: readonly ClassServer[]): number {
  return servers.reduce((sum, { pid }) => sum + (serverCost(pid)?.coreS ?? Number.NaN), 0);
}
