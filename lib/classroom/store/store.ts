import type { Kysely } from "kysely";
import type { Refusal } from "./fault";
import type { Tables } from "./tables";

/** SQLite in a folder of this computer, or a PostgreSQL. */
export type Engine = "sqlite" | "postgres";

/**
 * An opened store. On SQLite there is one connection: inside a transaction ask the transaction, never `db`, which would
 * wait for it for ever.
 */
export type Store = {
  readonly db: Kysely<Tables>;
  readonly engine: Engine;
  /** Where backups go, and on SQLite the data itself. */
  readonly folder: string;
  /** Where a PostgreSQL is, for whoever needs a connection of its own; null on SQLite. */
  readonly databaseUrl: string | null;
  /** Whether the database's file is still the one that was opened; a PostgreSQL speaks for itself. */
  readonly stillThere: () => boolean;
  readonly close: () => Promise<void>;
};

/** A store, or what keeps it shut. */
export type Connection =
  | { readonly ok: true; readonly store: Store }
  | { readonly ok: false; readonly refusal: Refusal };
