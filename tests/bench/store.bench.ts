import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Sqlite from "better-sqlite3";
import pg from "pg";
import { afterAll, bench, describe } from "vitest";
import { openStore, type StorePlace } from "@/lib/classroom/store/open-store";
import type { Store } from "@/lib/classroom/store/store";
import { write } from "@/lib/classroom/store/write";
import { putSmallClass, smallHandIn } from "@/tests/classroom/store/small-class";

const SERVER = process.env.PLASTERLINE_TEST_POSTGRES;
/** Students who hand in at the same moment; every one waits for the disk. */
const TOGETHER = 8;

const columns = ["id", ...Object.keys(smallHandIn)];
const values = Object.values(smallHandIn);
const names = columns.map((name) => `"${name}"`).join(", ");
const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

async function newStore(databaseUrl?: string): Promise<Store> {
  const folder = mkdtempSync(join(tmpdir(), "plasterline-bench-"));
  folders.push(folder);
  const place: StorePlace = { folder, databaseUrl };
  const opening = await openStore(place);
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  await putSmallClass(opening.store);
  return opening.store;
}

/** One hand-in through the store, acknowledged only when it is safe. */
async function handIn(store: Store): Promise<void> {
  const kept = await write(store, (all) =>
    all
      .insertInto("hand_in")
      .values({ ...smallHandIn, id: crypto.randomUUID() })
      .execute(),
  );
  if (!kept.ok) throw new Error(kept.sentence);
}

const together = (work: () => Promise<unknown>) => Promise.all(Array.from({ length: TOGETHER }, work));

/** The same row into the same kind of file with nothing of ours between. */
function bareSqlite(): () => void {
  const folder = mkdtempSync(join(tmpdir(), "plasterline-bench-"));
  folders.push(folder);
  const database = new Sqlite(join(folder, "bare.db"));
  database.pragma("journal_mode = WAL");
  database.pragma("synchronous = FULL");
  database.exec(`create table hand_in (${columns.map((name) => `"${name}"`).join(", ")}, primary key ("id"))`);
  const put = database.prepare(`insert into hand_in (${names}) values (${columns.map(() => "?").join(", ")})`);
  return () => {
    put.run(crypto.randomUUID(), ...values);
  };
}

const sqlite = await newStore();
const bare = bareSqlite();

describe("one hand-in, SQLite", () => {
  bench("through the store", () => handIn(sqlite));
  bench("a bare insert", () => bare());
});

if (SERVER !== undefined) {
  const admin = new pg.Client({ connectionString: SERVER });
  await admin.connect();
  const name = `bench_${Date.now()}`;
  await admin.query(`create database ${name}`);
  await admin.end();
  const url = new URL(SERVER);
  url.pathname = `/${name}`;
  const postgres = await newStore(url.href);
  const pool = new pg.Pool({ connectionString: url.href, max: TOGETHER });
  const put = {
    name: "bare",
    text: `insert into hand_in (${names}) values (${columns.map((_, i) => `$${i + 1}`).join(", ")})`,
  };
  const putBare = () => pool.query({ ...put, values: [crypto.randomUUID(), ...values] });

  describe("one hand-in, PostgreSQL", () => {
    bench("through the store", () => handIn(postgres));
    bench("a bare insert", async () => {
      await putBare();
    });
  });

  describe(`${TOGETHER} hand-ins at once, PostgreSQL`, () => {
    bench("through the store", async () => {
      await together(() => handIn(postgres));
    });
    bench("bare inserts", async () => {
      await together(putBare);
    });
  });
}
