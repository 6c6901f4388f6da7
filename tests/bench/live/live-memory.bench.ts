import { bench, describe } from "vitest";
import { MOST_ROUNDS } from "@/lib/classroom/live/vote-stage";
import { buildPages, isBuilt } from "@/lib/cli/build-pages.mjs";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";
import { type ClassServer, sendForm, serveClass, TEACHER } from "../../browser/class-server";
import { inTurn, MOST_WAIT_MS, type Phone, placeMark, postForm, takePart, until, watch } from "./phones";
import { serverCost } from "./server-cost";

const ONCE = { time: 0, iterations: 1, warmupTime: 0, warmupIterations: 0 };
const PHONES = 60;
/** Sixty rounds: ten minutes with one every ten seconds, faster than any class, as fast as the server takes them. */
const VOTES = 12;
/** By then every part of the server has been used, and memory it grows to by itself has been had. */
const WARM_AFTER = 4;
/** So little room makes the collector clear away in time, mebibytes: what then is left is in use. */
const ROOM_MIB = 128;
/** Sixty rounds may cost so much more than twenty, mebibytes. */
const MOST_MORE_MIB = 64;

describe("memory in live votes", () => {
  bench("ten minutes of rounds, 60 phones, SQLite", async () => rounds(), ONCE);
});

async function rounds(): Promise<void> {
  if (!isBuilt(PROJECT_ROOT)) await buildPages(PROJECT_ROOT, "show");
  const server = await serveClass({ NODE_OPTIONS: `--max-old-space-size=${ROOM_MIB}` });
  try {
    const made = await sendForm(server, "first-teacher", TEACHER);
    const teacher = made.cookies.map((line) => line.split(";")[0]).join("; ");
    const memory: number[] = [];
    let phones: readonly Phone[] = [];
    for (let vote = 0; vote < VOTES; vote++) {
      phones = await oneVote(server, teacher, phones);
      memory.push(serverCost(server.pid)?.memoryMiB ?? Number.NaN);
    }
    for (const phone of phones) phone.close();
    const [warm = Number.NaN, last = Number.NaN] = [memory[WARM_AFTER - 1], memory.at(-1)];
    console.log(
      `the server's memory after each vote of ${MOST_ROUNDS} rounds, MiB: ${memory.map((each) => each.toFixed(0)).join(" ")}`,
    );
    if (last - warm > MOST_MORE_MIB) throw new Error(`It grew by ${(last - warm).toFixed(0)} MiB.`);
  } finally {
    await server.close();
  }
}

/** A vote from its first round to its last. Every phone comes by a line of its own, and comes back by a new one each round. */
async function oneVote(server: ClassServer, teacher: string, before: readonly Phone[]): Promise<readonly Phone[]> {
  const { address } = server;
  const ask = { exerciseId: "points-on-the-floor", point: "A.foot" };
  const voteId = String((await postForm(address, "/class/live", ask, teacher)).reply.voteId);
  // The phones that were at the vote before are told of it, and go on.
  await until(() => before.every((phone) => phone.seen()?.state.next), MOST_WAIT_MS);
  for (const phone of before) phone.close();
  let phones =
    before.length > 0
      ? before.map(({ cookie }) => watch(address, voteId, cookie))
      : await inTurn(Array.from({ length: PHONES }), 10, () => takePart(address, voteId));
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    await until(() => phones.every((phone) => phone.seen()?.state.round === round), MOST_WAIT_MS);
    await Promise.all(phones.map((phone, i) => placeMark(phone, voteId, round, 0, i)));
    await postForm(address, "/api/live/move", { voteId, round, move: "show" }, teacher);
    for (const phone of phones) phone.close();
    phones = phones.map(({ cookie }) => watch(address, voteId, cookie));
    await until(() => phones.every((phone) => phone.seen()?.state.state === "revealed"), MOST_WAIT_MS);
    if (round < MOST_ROUNDS) await postForm(address, "/api/live/move", { voteId, round, move: "again" }, teacher);
  }
  return phones;
}
