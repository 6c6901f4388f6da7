import type Database from "better-sqlite3";

export type SqliteMaker = (file: string, options?: Database.Options) => Database.Database;

/**
 * The embedded database, where it is installed. It is compiled for the computer it runs on, and a laptop without a compiler
 * goes without.
 *
 * @returns nothing when it is missing, or was compiled for another Node
 */
export async function loadSqlite(): Promise<SqliteMaker | undefined> {
  try {
    const { default: Sqlite } = await import("better-sqlite3");
    // Only opening one tells whether the compiled part is there.
    new Sqlite(":memory:").close();
    return (file, options) => new Sqlite(file, options);
  } catch {
    return undefined;
  }
}
