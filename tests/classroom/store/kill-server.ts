import { setTimeout as wait } from "node:timers/promises";
import { openStore, type StorePlace } from "@/lib/classroom/store/open-store";
import { putSmallClass, smallHandIn } from "./small-class";
import { startChild } from "./start-child";

export type Killed = { readonly kills: number; readonly acknowledged: number; readonly lost: readonly string[] };

/** Longest life of a server from its first hand-in to its end, in milliseconds. */
const LONGEST_MS = 120;

/**
 * Kills a process that takes hand-ins, without any warning and at no particular moment, again and again in one store; then
 * looks for every hand-in that it had acknowledged.
 */
export async function killServer(program: string, place: StorePlace, kills: number): Promise<Killed> {
  const first = await openStore(place);
  if (!first.ok) throw new Error(first.refusal.sentence);
  await putSmallClass(first.store);
  await first.store.close();

  const acknowledged: string[] = [];
  for (let kill = 0; kill < kills; kill++) {
    const child = await startChild(program, place);
    child.say("open");
    const opened = await child.line();
    if (opened !== "opened") throw new Error(`The store did not open after kill ${kill}: ${opened}`);
    child.say(`hand in ${JSON.stringify(smallHandIn)}`);
    acknowledged.push((await child.line()) ?? "none");
    void wait((kill * 37) % LONGEST_MS).then(child.kill);
    for (let id = await child.line(); id !== undefined; id = await child.line()) acknowledged.push(id);
    await child.ended;
  }

  const after = await openStore(place);
  if (!after.ok) throw new Error(after.refusal.sentence);
  const rows = await after.store.db.selectFrom("hand_in").select(["id", "marks"]).execute();
  await after.store.close();
  const whole = new Set(rows.filter(({ marks }) => marks === smallHandIn.marks).map(({ id }) => id));
  // A line cut by the kill names no id that was acknowledged.
  const ids = acknowledged.filter((id) => id.length === 36);
  return { kills, acknowledged: ids.length, lost: ids.filter((id) => !whole.has(id)) };
}
