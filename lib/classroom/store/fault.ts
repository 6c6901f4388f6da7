/** Why the store could not be opened or written, as far as it is the world's doing and not the program's. */
export type Fault =
  | "held"
  | "no-sqlite"
  | "unreachable"
  | "newer"
  | "older"
  | "not-empty"
  | "nothing"
  | "unreadable"
  | "forbidden"
  | "full"
  | "lost"
  | "damaged"
  | "busy";

export type Refusal = { readonly reason: Fault; readonly sentence: string };

const SENTENCES: Readonly<Record<Fault, string>> = {
  held: "Another Plasterline on this computer is already using this data folder. Stop that one, or name another folder with PLASTERLINE_DATA.",
  "no-sqlite":
    "The part that keeps a class's work (better-sqlite3) could not be installed on this computer, so Class stays closed; everything else works. Run npm install again with a connection to the internet, or name a PostgreSQL with DATABASE_URL.",
  unreachable:
    "The database that DATABASE_URL names does not answer. See that it runs and that the address, the name and the password are right.",
  newer:
    "The data was last used by a newer Plasterline than this one, and this one must not touch it. Start the newer one, or restore the backup made before the change.",
  older:
    "The running server is an older Plasterline than this one. Stop it, start this one in its place, then do this again.",
  "not-empty":
    "There is work in this store already. To replace it all, say so with --over; a backup of it is made first.",
  nothing: "Nothing is kept here yet, so there is nothing to back up.",
  unreadable:
    "This is not a whole backup made by Plasterline: it is damaged, cut short, or another kind of file. Nothing was changed.",
  forbidden: "The data folder may not be read or written by the person who started Plasterline. Give them the folder.",
  full: "The disk that keeps the class's work is full. Nothing was half kept; free some space, then try again.",
  lost: "The place where the class's work is kept cannot be reached just now. Nothing was half kept; try again, and tell your teacher if it goes on.",
  damaged: "The file that keeps the class's work is damaged. Stop Plasterline and restore the newest backup.",
  busy: "Too many are writing at once. Nothing was half kept; try again in a moment.",
};

export function refusal(reason: Fault): Refusal {
  return { reason, sentence: SENTENCES[reason] };
}

const SQLITE_FAULTS: readonly (readonly [start: string, fault: Fault])[] = [
  ["SQLITE_FULL", "full"],
  ["SQLITE_CORRUPT", "damaged"],
  ["SQLITE_NOTADB", "damaged"],
  ["SQLITE_BUSY", "busy"],
  ["SQLITE_LOCKED", "busy"],
  ["SQLITE_PERM", "forbidden"],
  ["SQLITE_READONLY_DBMOVED", "lost"],
  ["SQLITE_READONLY", "forbidden"],
  ["SQLITE_IOERR", "lost"],
  ["SQLITE_CANTOPEN", "lost"],
];

/** PostgreSQL's error codes, https://www.postgresql.org/docs/15/errcodes-appendix.html, and those of the system. */
const OTHER_FAULTS: readonly (readonly [start: string, fault: Fault])[] = [
  ["53100", "full"],
  ["ENOSPC", "full"],
  ["EDQUOT", "full"],
  ["53300", "busy"],
  ["40001", "busy"],
  ["40P01", "busy"],
  ["55P03", "busy"],
  ["57014", "busy"],
  ["08", "lost"],
  ["57P", "lost"],
  ["58", "lost"],
  ["28", "unreachable"],
  ["3D000", "unreachable"],
  ["XX001", "damaged"],
  ["ECONNREFUSED", "lost"],
  ["ECONNRESET", "lost"],
  ["ENOTFOUND", "lost"],
  ["EAI_AGAIN", "lost"],
  ["EHOSTUNREACH", "lost"],
  ["ETIMEDOUT", "lost"],
  ["EPIPE", "lost"],
  ["EROFS", "forbidden"],
  ["EACCES", "forbidden"],
  ["EPERM", "forbidden"],
];

/** The client library's own complaints carry no code. */
const LOST_CONNECTION =
  /^Connection terminated|timeout exceeded when trying to connect|Client has encountered a connection error/;

/** What in the world an error speaks of; nothing when it is a mistake of the program's. */
export function faultOf(error: unknown): Fault | undefined {
  if (!(error instanceof Error)) return undefined;
  const code = "code" in error ? String(error.code) : "";
  const known = [...SQLITE_FAULTS, ...OTHER_FAULTS].find(([start]) => code.startsWith(start));
  if (known) return known[1];
  return LOST_CONNECTION.test(error.message) ? "lost" : undefined;
}
