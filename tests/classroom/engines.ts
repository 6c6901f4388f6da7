import { randomBytes } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";
import { afterAll, describe, vi } from "vitest";
import { openStore, type StorePlace } from "@/lib/classroom/store/open-store";
import type { Engine, Store } from "@/lib/classroom/store/store";

/** A database made anew for nearly every test, on a laptop that runs others beside it, in milliseconds. */
vi.setConfig({ testTimeout: 90_000, hookTimeout: 90_000 });

/** A PostgreSQL for the tests, which `npm test` starts; without one its half is skipped. */
const SERVER = process.env.PLASTERLINE_TEST_POSTGRES;

export type TestStores = {
  readonly engine: Engine;
  /** A new place with nothing in it, cleared away after the tests. */
  readonly newPlace: () => Promise<StorePlace>;
  /** A store in a new place, ready for use, closed after the tests. */
  readonly newStore: () => Promise<Store>;
};

/** The same tests on both engines. */
export function onBothEngines(title: string, tests: (stores: TestStores) => void): void {
  describe(`${title}, SQLite`, () => tests(storesOf("sqlite")));
  describe.skipIf(SERVER === undefined)(`${title}, PostgreSQL`, () => tests(storesOf("postgres")));
}

/** Whether there is a PostgreSQL to test with. */
export const hasPostgres = SERVER !== undefined;

export function storesOf(engine: Engine): TestStores {
  const clearings: (() => Promise<void>)[] = [];
  afterAll(async () => {
    for (const clear of clearings.reverse()) await clear();
  });
  const newPlace = async (): Promise<StorePlace> => {
    const folder = mkdtempSync(join(tmpdir(), "plasterline-store-"));
    clearings.push(async () => rmSync(folder, { recursive: true, force: true }));
    if (engine === "sqlite") return { folder };
    const name = `plasterline_${randomBytes(8).toString("hex")}`;
    await onServer(`create database ${name}`);
    clearings.push(() => onServer(`drop database ${name} with (force)`));
    const url = new URL(SERVER ?? "");
    url.pathname = `/${name}`;
    return { folder, databaseUrl: url.href };
  };
  const newStore = async () => {
    const opening = await openStore(await newPlace());
    if (!opening.ok) throw new Error(opening.refusal.sentence);
    clearings.push(opening.store.close);
    return opening.store;
  };
  return { engine, newPlace, newStore };
}

async function onServer(sentence: string): Promise<void> {
  const client = new pg.Client({ connectionString: SERVER });
  await client.connect();
  try {
    await client.query(sentence);
  } finally {
    await client.end();
  }
}

/** A store that must open. */
export async function opened(place: StorePlace): Promise<Store> {
  const opening = await openStore(place);
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  return opening.store;
}
