import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { type Kysely, sql } from "kysely";
import { writeBackup } from "./backup";
import { type Refusal, refusal } from "./fault";
import { holdsWork, takeMigrations, takenMigrations } from "./form";
import type { StoreMigration } from "./migrations/migration";
import type { Engine } from "./store";
import type { Tables } from "./tables";

/** Any fixed number that nothing else in the database uses. */
const LOCK = 7_091_427;

/**
 * Lets one process at a time work on the form of the store: of thirty-two that start at once, without it some fail.
 * SQLite's folder is held by one process anyway.
 */
export async function withFormLock<Result>(
  db: Kysely<Tables>,
  engine: Engine,
  work: (alone: Kysely<Tables>) => Promise<Result>,
): Promise<Result> {
  return db.connection().execute(async (alone) => {
    if (engine === "sqlite") return work(alone);
    await sql`select pg_advisory_lock(${sql.lit(LOCK)})`.execute(alone);
    try {
      return await work(alone);
    } finally {
      await sql`select pg_advisory_unlock(${sql.lit(LOCK)})`.execute(alone);
    }
  });
}

/**
 * Brings a store to the form of this program: forward only, all steps or none, and after a backup where there is anything
 * to lose.
 */
export async function migrate(
  db: Kysely<Tables>,
  engine: Engine,
  folder: string,
  migrations: readonly StoreMigration[],
): Promise<Refusal | undefined> {
  return withFormLock(db, engine, async (alone) => {
    const taken = await takenMigrations(alone);
    if (taken.some((name) => !migrations.some((step) => step.name === name))) return refusal("newer");
    const pending = migrations.filter(({ name }) => !taken.includes(name));
    if (pending.length === 0) return undefined;
    if (await holdsWork(alone)) await writeBackup(alone, engine, backupPlace(folder, `before-${pending[0]?.name}`));
    await alone.transaction().execute((step) => takeMigrations(step, engine, pending));
    return undefined;
  });
}

/** A name for a new backup in the store's folder, one that is not taken. */
export function backupPlace(folder: string, why: string, now = new Date()): string {
  const place = join(folder, "backups");
  mkdirSync(place, { recursive: true, mode: 0o700 });
  const stem = `${now.toISOString().slice(0, 19).replaceAll(":", "-")}-${why}`;
  for (let copy = 1; ; copy++) {
    const file = join(place, `${stem}${copy > 1 ? `-${copy}` : ""}.jsonl.gz`);
    if (!existsSync(file)) return file;
  }
}
