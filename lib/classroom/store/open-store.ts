import { writeBackup } from "./backup";
import { connectPostgres } from "./connect-postgres";
import { connectSqlite, isSqliteThere, openSqliteBeside, readSqlite } from "./connect-sqlite";
import { faultOf, type Refusal, refusal } from "./fault";
import { holdsWork, takenMigrations } from "./form";
import { migrate } from "./migrate";
import { ALL_MIGRATIONS } from "./migrations/all-migrations";
import type { Connection } from "./store";

/** A PostgreSQL by its address, or SQLite in a folder; the folder takes the backups of either. */
export type StorePlace = { readonly databaseUrl?: string | undefined; readonly folder: string };

/** The store of this program, ready for use: opened, and brought to today's form. What keeps it shut is told in words. */
export async function openStore(place: StorePlace, migrations = ALL_MIGRATIONS): Promise<Connection> {
  const opening = await connect(place);
  if (!opening.ok) return opening;
  const { store } = opening;
  try {
    const refused = await orRefusal(() => migrate(store.db, store.engine, place.folder, migrations));
    if (!refused) return opening;
    await store.close();
    return { ok: false, refusal: refused };
  } catch (error) {
    await store.close();
    throw error;
  }
}

/** The store as it is, its form not looked at. */
export async function connect({ databaseUrl, folder }: StorePlace): Promise<Connection> {
  return orRefused(() => (databaseUrl ? connectPostgres(databaseUrl, folder) : connectSqlite(folder)));
}

/** The store for a short errand of whoever runs the server, which may be using it just now. */
export async function openForErrand(place: StorePlace, migrations = ALL_MIGRATIONS): Promise<Connection> {
  if (!place.databaseUrl && !isSqliteThere(place.folder)) return { ok: false, refusal: refusal("nothing") };
  const alone = await openStore(place, migrations);
  if (alone.ok || alone.refusal.reason !== "held") return alone;
  const beside = await orRefused(() => openSqliteBeside(place.folder));
  if (!beside.ok) return beside;
  const taken = await takenMigrations(beside.store.db);
  // The form is the running server's to change.
  if (taken.length === migrations.length && migrations.every(({ name }) => taken.includes(name))) return beside;
  await beside.store.close();
  return { ok: false, refusal: refusal(taken.length < migrations.length ? "older" : "newer") };
}

export type BackedUp = { readonly ok: true; readonly rows: number } | { readonly ok: false; readonly refusal: Refusal };

/** Writes a backup of a store that a server may be using just now. */
export async function backUpStore({ databaseUrl, folder }: StorePlace, file: string): Promise<BackedUp> {
  const opening = await orRefused(() => (databaseUrl ? connectPostgres(databaseUrl, folder) : readSqlite(folder)));
  if (!opening.ok) return opening;
  const { store } = opening;
  try {
    return await store.db.connection().execute(async (alone): Promise<BackedUp> => {
      if (!(await holdsWork(alone))) return { ok: false, refusal: refusal("nothing") };
      return { ok: true, rows: await writeBackup(alone, store.engine, file) };
    });
  } finally {
    await store.close();
  }
}

async function orRefused(open: () => Promise<Connection>): Promise<Connection> {
  try {
    return await open();
  } catch (error) {
    const fault = faultOf(error);
    if (!fault) throw error;
    return { ok: false, refusal: refusal(fault) };
  }
}

async function orRefusal(work: () => Promise<Refusal | undefined>): Promise<Refusal | undefined> {
  try {
    return await work();
  } catch (error) {
    const fault = faultOf(error);
    if (!fault) throw error;
    return refusal(fault);
  }
}
