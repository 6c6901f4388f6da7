import type { Kysely } from "kysely";
import type { Engine } from "../store";

/**
 * One step of the store's form. A step that has been released is never changed: what it got wrong, a later one mends.
 * It goes forward only; the way back is the backup made before it.
 */
export type StoreMigration = {
  readonly name: string;
  readonly up: (db: Kysely<unknown>, engine: Engine) => Promise<void>;
};
