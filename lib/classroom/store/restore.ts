import { type Kysely, sql } from "kysely";
import { writeBackup } from "./backup";
import { type Refusal, refusal } from "./fault";
import { holdsWork, tableNames, takeMigrations } from "./form";
import { backupPlace, withFormLock } from "./migrate";
import { ALL_MIGRATIONS } from "./migrations/all-migrations";
import { connect, type StorePlace } from "./open-store";
import { backupRows, checkBackup } from "./read-backup";
import type { Engine, Store } from "./store";
import { TABLES, type Tables } from "./tables";

/** Rows put back at a time; the widest table has seventeen columns, and SQLite takes some thirty thousand values. */
const AT_A_TIME = 100;

export type Restored =
  | { readonly ok: true; readonly rows: number; readonly before: string | null }
  | { readonly ok: false; readonly refusal: Refusal };

/**
 * Puts a backup into a store in place of all that is there, whole or not at all. A store that holds work is refused unless
 * `over` says so, and then backed up first (`before` is that file). A backup of an older form is brought to today's.
 */
export async function restoreStore(place: StorePlace, file: string, over: boolean): Promise<Restored> {
  const head = await checkBackup(file);
  if (!head) return { ok: false, refusal: refusal("unreadable") };
  if (head.migrations.some((name) => !ALL_MIGRATIONS.some((step) => step.name === name)))
    return { ok: false, refusal: refusal("newer") };
  const opening = await connect(place);
  if (!opening.ok) return opening;
  const { store } = opening;
  try {
    return await withFormLock(store.db, store.engine, async (alone): Promise<Restored> => {
      const holds = await holdsWork(alone);
      if (holds && !over) return { ok: false, refusal: refusal("not-empty") };
      const before = holds ? backupPlace(store.folder, "before-restore") : null;
      if (before) await writeBackup(alone, store.engine, before);
      const rows = await alone.transaction().execute((all) => replaceAll(all, store, file, head.migrations));
      return { ok: true, rows, before };
    });
  } finally {
    await store.close();
  }
}

async function replaceAll(
  db: Kysely<Tables>,
  { engine }: Store,
  file: string,
  migrations: readonly string[],
): Promise<number> {
  for (const { name } of [...TABLES].reverse()) await db.schema.dropTable(name).ifExists().execute();
  await db.schema.dropTable("migration").ifExists().execute();
  const then = ALL_MIGRATIONS.filter(({ name }) => migrations.includes(name));
  await takeMigrations(db, engine, then);
  const rows = await putRows(db, engine, file);
  await takeMigrations(
    db,
    engine,
    ALL_MIGRATIONS.filter((step) => !then.includes(step)),
  );
  return rows;
}

async function putRows(db: Kysely<Tables>, engine: Engine, file: string): Promise<number> {
  const yesNos = await yesNoColumns(db, engine);
  let rows = 0;
  let waiting: Record<string, unknown>[] = [];
  let into = "";
  const put = async () => {
    if (waiting.length > 0) await insertRows(db, into, waiting);
    waiting = [];
  };
  for await (const { table, row } of backupRows(file)) {
    if (table !== into || waiting.length >= AT_A_TIME) await put();
    into = table;
    waiting.push(inDriversForm(row, yesNos.get(table)));
    rows += 1;
  }
  await put();
  return rows;
}

async function insertRows(db: Kysely<Tables>, table: string, rows: readonly Record<string, unknown>[]): Promise<void> {
  const columns = Object.keys(rows[0] ?? {});
  const values = rows.map((row) => sql`(${sql.join(columns.map((column) => row[column]))})`);
  const names = sql.join(columns.map((column) => sql.ref(column)));
  await sql`insert into ${sql.table(table)} (${names}) values ${sql.join(values)}`.execute(db);
}

/** The columns of each table that this engine keeps as true and false. */
async function yesNoColumns(db: Kysely<Tables>, engine: Engine): Promise<ReadonlyMap<string, readonly string[]>> {
  if (engine === "sqlite" || !(await tableNames(db)).has("user")) return new Map();
  const tables = await db.introspection.getTables();
  return new Map(
    tables.map(({ name, columns }) => [
      name,
      columns.filter(({ dataType }) => dataType === "bool").map((column) => column.name),
    ]),
  );
}

function inDriversForm(
  row: Readonly<Record<string, unknown>>,
  yesNos: readonly string[] = [],
): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(row).map(([column, value]) => [column, yesNos.includes(column) ? value === 1 : value]),
  );
}
