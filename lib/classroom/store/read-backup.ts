import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";
import { createGunzip } from "node:zlib";
import { z } from "zod";
import { BACKUP_FORMAT } from "./backup";
import { TABLES, type TableName } from "./tables";

const NAMES = TABLES.map(({ name }) => name) as [TableName, ...TableName[]];

const Head = z.strictObject({
  format: z.literal(BACKUP_FORMAT),
  made: z.string(),
  engine: z.enum(["sqlite", "postgres"]),
  migrations: z.array(z.string()),
});
const Line = z.strictObject({
  table: z.enum(NAMES),
  row: z.record(z.string(), z.union([z.string(), z.number(), z.null()])),
});
const End = z.strictObject({ end: z.literal(true), rows: z.number().int() });

export type BackupHead = z.infer<typeof Head>;
export type BackupRow = z.infer<typeof Line>;

/**
 * Reads a backup from its head to its end line without keeping it.
 *
 * @returns its head; nothing when it is not a whole backup
 */
export async function checkBackup(file: string): Promise<BackupHead | undefined> {
  try {
    let head: BackupHead | undefined;
    for await (const piece of piecesOf(file)) if ("format" in piece) head = piece;
    return head;
  } catch {
    return undefined;
  }
}

/** The rows of a backup that has been checked, in the order they can be put back in. */
export async function* backupRows(file: string): AsyncGenerator<BackupRow> {
  for await (const piece of piecesOf(file)) if ("table" in piece) yield piece;
}

async function* piecesOf(file: string): AsyncGenerator<BackupHead | BackupRow> {
  const zipped = createReadStream(file);
  const text = createGunzip();
  zipped.once("error", (error) => text.destroy(error));
  let rows = 0;
  let ended = false;
  let begun = false;
  for await (const line of createInterface({ input: zipped.pipe(text), crlfDelay: Number.POSITIVE_INFINITY })) {
    if (ended) throw new Error("A backup has nothing after its end line.");
    const value: unknown = JSON.parse(line);
    if (!begun) {
      begun = true;
      yield Head.parse(value);
    } else if (End.safeParse(value).data?.rows === rows) ended = true;
    else {
      rows += 1;
      yield Line.parse(value);
    }
  }
  if (!ended) throw new Error("A backup ends with its end line.");
}
