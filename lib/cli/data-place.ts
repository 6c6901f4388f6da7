import { join, resolve } from "node:path";
import type { StorePlace } from "../classroom/store/open-store";
import { PROJECT_ROOT } from "./project-root.mjs";

/** Where the server keeps its classes: `DATABASE_URL`, or the folder `PLASTERLINE_DATA`, or `data` beside the program. */
export function dataPlace(env: NodeJS.ProcessEnv): StorePlace {
  return { databaseUrl: env.DATABASE_URL || undefined, folder: resolve(PROJECT_ROOT, env.PLASTERLINE_DATA || "data") };
}

/** A path as it was meant where the command was typed: npm changes the working directory. */
export function typedPath(path: string, env: NodeJS.ProcessEnv): string {
  return resolve(env.INIT_CWD ?? process.cwd(), path);
}

/** A name for a backup when none is given. */
export function defaultBackup(folder: string, now: Date): string {
  return join(folder, "backups", `${now.toISOString().slice(0, 19).replaceAll(":", "-")}.jsonl.gz`);
}
