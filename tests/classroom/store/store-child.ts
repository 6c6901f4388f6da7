import { createInterface } from "node:readline";
import { openStore, type StorePlace } from "@/lib/classroom/store/open-store";
import type { Store } from "@/lib/classroom/store/store";
import { write } from "@/lib/classroom/store/write";

/**
 * A process of its own that opens a store when it is told to, prints what came of it, and then, if told to, hands work in
 * until it is killed: each id is printed when the store has acknowledged it.
 */
const place = JSON.parse(process.argv[2] ?? "{}") as StorePlace;
const say = (word: string) => process.stdout.write(`${word}\n`);

const lines = createInterface({ input: process.stdin })[Symbol.asyncIterator]();
say("ready");
await lines.next();
const opening = await openStore(place);
say(opening.ok ? "opened" : opening.refusal.sentence);
const { value: next } = await lines.next();
if (opening.ok && next?.startsWith("hand in ")) await handInForEver(opening.store, next.slice("hand in ".length));
if (opening.ok) await opening.store.close();
process.exit(0);

async function handInForEver(store: Store, work: string): Promise<never> {
  const row = JSON.parse(work);
  for (;;) {
    const id = crypto.randomUUID();
    const kept = await write(store, (all) =>
      all
        .insertInto("hand_in")
        .values({ ...row, id })
        .execute(),
    );
    if (kept.ok) say(id);
  }
}
