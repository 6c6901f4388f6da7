import fc from "fast-check";
import { sql } from "kysely";
import type { Engine, Store } from "@/lib/classroom/store/store";
import { TABLES, type TableName } from "@/lib/classroom/store/tables";
import { COLUMNS, type Kind, POINTERS } from "./columns";

export type Row = Record<string, string | number | null>;
export type Rows = ReadonlyMap<TableName, Row>;

/** Text that both engines can keep: anything a form lets in, once NULs are taken out. */
const text = fc.string({ unit: "binary" }).map((any) => any.replaceAll("\0", ""));
const instant = fc
  .date({ min: new Date("1970-01-01"), max: new Date("2999-12-31"), noInvalidDate: true })
  .map((date) => date.toISOString());
const values: Readonly<Record<Kind, fc.Arbitrary<string | number>>> = {
  text,
  integer: fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 }),
  // SQLite keeps a whole number that is a double as a whole number, and there is one nought.
  double: fc.double({ noNaN: true, noDefaultInfinity: true }).map((any) => any + 0),
  "yes-no": fc.constantFrom(0, 1),
  time: instant,
};

const isId = (table: string, column: string) => column === "id" || POINTERS[table]?.[column] !== undefined;

/** One row in every table, each pointing to the others' ids, with anything else in it. */
export const anyRows: fc.Arbitrary<Rows> = fc
  .record(
    Object.fromEntries(
      TABLES.map(({ name }) => [
        name,
        fc.record(
          Object.fromEntries(
            Object.entries(COLUMNS[name]).map(([column, kind]) => [column, anyValue(kind, isId(name, column))]),
          ),
        ),
      ]),
    ),
  )
  .map((rows) => new Map(TABLES.map(({ name }) => [name, pointed(name, rows as Record<TableName, Row>)])));

function anyValue(kind: string, id: boolean): fc.Arbitrary<string | number | null> {
  if (id) return fc.uuid();
  const sure = values[kind.replace("?", "") as Kind];
  return kind.endsWith("?") ? fc.option(sure) : sure;
}

function pointed(table: TableName, rows: Readonly<Record<TableName, Row>>): Row {
  const row = { ...rows[table] };
  for (const [column, other] of Object.entries(POINTERS[table] ?? {})) row[column] = rows[other].id ?? null;
  return row;
}

/** Puts the rows in as a driver is given them: on PostgreSQL yes and no are its own. */
export async function putIn({ db, engine }: Store, rows: Rows): Promise<void> {
  for (const [table, row] of rows) {
    const columns = Object.keys(row);
    const given = columns.map((column) => (isYesNo(engine, table, column) ? row[column] === 1 : row[column]));
    const names = sql.join(columns.map((column) => sql.ref(column)));
    await sql`insert into ${sql.table(table)} (${names}) values (${sql.join(given)})`.execute(db);
  }
}

const isYesNo = (engine: Engine, table: TableName, column: string) =>
  engine === "postgres" && (COLUMNS[table] as Record<string, string>)[column] === "yes-no";

/** All rows of one table as the driver gives them. */
export async function allOf({ db }: Store, table: TableName): Promise<readonly Record<string, unknown>[]> {
  return (await sql<Record<string, unknown>>`select * from ${sql.table(table)}`.execute(db)).rows;
}

export async function emptyAll({ db }: Store): Promise<void> {
  for (const { name } of [...TABLES].reverse()) await sql`delete from ${sql.table(name)}`.execute(db);
}
