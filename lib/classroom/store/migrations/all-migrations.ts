import { accounts } from "./0001-accounts";
import { classes } from "./0002-classes";
import { oneTimeWords } from "./0003-one-time-words";
import { lateAndTakenOut } from "./0004-late-and-taken-out";
import { plans } from "./0005-plans";
import type { StoreMigration } from "./migration";

/** Every step of the store's form, in the order of their names. A new one is added at the end. */
export const ALL_MIGRATIONS: readonly StoreMigration[] = [accounts, classes, oneTimeWords, lateAndTakenOut, plans];
