import { mkdtempSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import Sqlite from "better-sqlite3";
import pg from "pg";
import { bench, describe } from "vitest";
import { openStore, type StorePlace } from "@/lib/classroom/store/open-store";
import type { Store } from "@/lib/classroom/store/store";
import type { HandInTable } from "@/lib/classroom/store/tables/homework-tables";
import { write } from "@/lib/classroom/store/write";
import { storesOf, type TestStores } from "../classroom/engines";
import { give, set } from "../classroom/homework/desk";
import { putSmallClass } from "../classroom/store/small-class";
import { inTurn, sayTimes } from "./live/phones";

/** One run each, which prints what it measured. What is not written as async would be run once more to find out. */
const ONCE = { time: 0, iterations: 1, warmupTime: 0, warmupIterations: 0 };
/** A class that hands in at the end of its hour. */
const CLASS = 30;
/** Students who hand in by turns, so that none of them has handed in a hundred times. */
const STUDENTS = 300;
/** The three are measured by turns, so that what else the computer does falls on all of them, milliseconds each. */
const TURNS = 8;
const TURN_MS = 400;

type Work = { readonly name: string; readonly once: (i: number) => Promise<unknown> };

describe("hand-ins a second", () => {
  const stores = storesOf("sqlite");
  bench("SQLite", async () => measure(stores, bareSqlite), ONCE);
});

describe.skipIf(process.env.PLASTERLINE_TEST_POSTGRES === undefined)("hand-ins a second, PostgreSQL", () => {
  const stores = storesOf("postgres");
  bench("PostgreSQL", async () => measure(stores, barePostgres), ONCE);
});

/** The bare insert of a row, with nothing of ours between, and how to put all away. */
type Bare = { readonly put: (row: HandInTable) => Promise<unknown>; readonly close: () => Promise<void> };

async function measure({ engine, newPlace }: TestStores, makeBare: (place: StorePlace) => Bare): Promise<void> {
  const place = await newPlace();
  const opening = await openStore(place);
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  const { store } = opening;
  const { itemId, members } = await putClass(store);
  const memberOf = (i: number) => members[i % members.length] ?? "";
  const handIn = async (i: number) => {
    const done = await give(store, itemId, memberOf(i));
    if (!done.ok) throw new Error(done.sentence);
  };
  await handIn(0);
  const usual = await store.db.selectFrom("hand_in").selectAll().executeTakeFirstOrThrow();
  // Another's, and of other homework, or every real hand-in would look through them all.
  const fresh = (): HandInTable => ({ ...usual, id: crypto.randomUUID(), item_id: "item", member_id: "wim" });
  const bare = makeBare(place);
  const works: readonly Work[] = [
    { name: "bare inserts", once: () => bare.put(fresh()) },
    { name: "the same rows through the store", once: () => putRow(store, fresh()) },
    { name: "hand-ins, graded", once: handIn },
  ];
  try {
    for (const together of [1, 8, CLASS]) await compare(`${engine}, ${together} at once`, works, together);
  } finally {
    await bare.close();
    await store.close();
  }
}

async function compare(title: string, works: readonly Work[], together: number): Promise<void> {
  const times = works.map((): number[] => []);
  const spent = works.map(() => 0);
  let next = 0;
  for (let turn = 0; turn < TURNS; turn++)
    for (const [at, { once }] of works.entries()) {
      const begun = performance.now();
      await inTurn(Array.from({ length: together }), together, async () => {
        while (performance.now() - begun < TURN_MS) {
          const asked = performance.now();
          await once(next++);
          times[at]?.push(performance.now() - asked);
        }
      });
      spent[at] = (spent[at] ?? 0) + performance.now() - begun;
    }
  const rates = times.map((all, at) => (1000 * all.length) / (spent[at] ?? Number.NaN));
  const [bare = Number.NaN] = rates;
  const busy = (loadavg()[0] ?? Number.NaN).toFixed(1);
  console.log(`${title} (the computer's load is ${busy}):`);
  for (const [at, { name }] of works.entries()) {
    const rate = rates[at] ?? Number.NaN;
    const share = at === 0 ? "" : `, ${((100 * rate) / bare).toFixed(0)} % of bare`;
    console.log(`  ${name}: ${rate.toFixed(0)} a second${share}; ${sayTimes(times[at] ?? [], 2)}`);
  }
}

/** A class that has something to do. */
async function putClass(store: Store): Promise<{ readonly itemId: string; readonly members: readonly string[] }> {
  await putSmallClass(store);
  const members = Array.from({ length: STUDENTS }, (_, i) => `student-${i}`);
  const usual = { class_id: "class", user_id: null, number: null, joined_at: null, removed: 0 } as const;
  await store.db
    .insertInto("member")
    .values(members.map((id) => ({ ...usual, id, name: id })))
    .execute();
  return { itemId: (await set(store, "class")).itemId, members };
}

/** One row through the store, acknowledged only when it is safe. */
async function putRow(store: Store, row: HandInTable): Promise<void> {
  const kept = await write(store, (all) => all.insertInto("hand_in").values(row).execute());
  if (!kept.ok) throw new Error(kept.sentence);
}

/** The same row into the same kind of file; the store's own has a connection that keeps it. */
function bareSqlite(): Bare {
  const folder = mkdtempSync(join(tmpdir(), "plasterline-bench-"));
  const database = new Sqlite(join(folder, "bare.db"));
  database.pragma("journal_mode = WAL");
  database.pragma("synchronous = FULL");
  let ready: Sqlite.Statement | undefined;
  return {
    put: async (row) => {
      ready ??= prepare(Object.keys(row));
      ready.run(...Object.values(row));
    },
    close: async () => {
      database.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
  function prepare(columns: readonly string[]) {
    const names = columns.map((name) => `"${name}"`).join(", ");
    database.exec(`create table hand_in (${names}, primary key ("id"))`);
    return database.prepare(`insert into hand_in (${names}) values (${columns.map(() => "?").join(", ")})`);
  }
}

/** The same row into the very table, by as many connections as the store has. */
function barePostgres({ databaseUrl }: StorePlace): Bare {
  const pool = new pg.Pool({ connectionString: databaseUrl, max: 10 });
  return {
    put: (row) => {
      const columns = Object.keys(row);
      const names = columns.map((name) => `"${name}"`).join(", ");
      const text = `insert into hand_in (${names}) values (${columns.map((_, i) => `$${i + 1}`).join(", ")})`;
      return pool.query({ name: "bare", text, values: Object.values(row) });
    },
    close: () => pool.end(),
  };
}
