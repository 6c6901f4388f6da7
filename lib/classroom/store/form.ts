import { type Kysely, sql } from "kysely";
import type { StoreMigration } from "./migrations/migration";
import type { Engine } from "./store";
import { TABLES, type Tables } from "./tables";

/** Which steps a store has taken: a table of our own, so that one lock covers it too. */
type Taken = { migration: { name: string; at: string } };

/** The steps a store has taken, in their order; none for a new one. */
export async function takenMigrations(db: Kysely<Tables>): Promise<readonly string[]> {
  const names = await tableNames(db);
  if (!names.has("migration")) return [];
  const taken = asTaken(db);
  return (await taken.selectFrom("migration").select("name").orderBy("name").execute()).map(({ name }) => name);
}

/** The names of the tables that are there. */
export async function tableNames(db: Kysely<Tables>): Promise<ReadonlySet<string>> {
  return new Set((await db.introspection.getTables()).map(({ name }) => name));
}

/** Takes the given steps, in a transaction that the caller has begun. */
export async function takeMigrations(
  db: Kysely<Tables>,
  engine: Engine,
  steps: readonly StoreMigration[],
): Promise<void> {
  await db.schema
    .createTable("migration")
    .ifNotExists()
    .addColumn("name", "text", (column) => column.primaryKey().notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .execute();
  for (const { name, up } of steps) {
    await up(db as unknown as Kysely<unknown>, engine);
    await asTaken(db).insertInto("migration").values({ name, at: new Date().toISOString() }).execute();
  }
}

/** Whether anybody has put anything into the store yet. */
export async function holdsWork(db: Kysely<Tables>): Promise<boolean> {
  const names = await tableNames(db);
  for (const { name } of TABLES) {
    if (!names.has(name) || name === "setting" || name === "tries") continue;
    const { rows } = await sql`select 1 from ${sql.table(name)} limit 1`.execute(db);
    if (rows.length > 0) return true;
  }
  return false;
}

function asTaken(db: Kysely<Tables>): Kysely<Taken> {
  return db as unknown as Kysely<Taken>;
}
