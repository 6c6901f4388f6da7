import { join } from "node:path";
import type { SqliteMaker } from "./load-sqlite";

/** A server that is just going down may hold on for a moment, in milliseconds. */
const HAND_OVER_MS = 1500;

/**
 * Takes a data folder for this process alone, for as long as it lives: a second small database in it, locked as a whole.
 * The lock is the system's, so it is gone with the process however that ends; and the main database stays free for a
 * backup to be read beside the running server.
 *
 * @returns what lets go again, or nothing when another process has the folder
 */
export function holdFolder(open: SqliteMaker, folder: string): (() => void) | undefined {
  const held = open(join(folder, "held.db"), { timeout: HAND_OVER_MS });
  try {
    held.pragma("locking_mode = EXCLUSIVE");
    // The lock is taken by the first write, and kept.
    held.exec("begin exclusive; create table if not exists held (by integer); commit");
  } catch (error) {
    held.close();
    if (error instanceof Error && "code" in error && String(error.code).startsWith("SQLITE_BUSY")) return undefined;
    throw error;
  }
  return () => held.close();
}
