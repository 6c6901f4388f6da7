import { existsSync, mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { backUpStore } from "../classroom/store/open-store";
import { dataPlace, defaultBackup, typedPath } from "./data-place";

const HELP = `Writes all that Class keeps into one file, beside a running server or without one.

  npm run backup              into the data folder's own backups
  npm run backup -- FILE      into FILE, which must not be there yet

The file holds everybody's work and what proves who they are: keep it where only you can read it.`;

const [file, ...more] = process.argv.slice(2);
if (file === "--help" || file === "-h" || more.length > 0) console.log(HELP);
else await backUp(file);

async function backUp(named: string | undefined): Promise<void> {
  const place = dataPlace(process.env);
  const target = named === undefined ? defaultBackup(place.folder, new Date()) : typedPath(named, process.env);
  const complaint = existsSync(target) ? `${target} is there already; name another file.` : await writeTo(target);
  if (complaint === undefined) return;
  console.error(complaint);
  process.exitCode = 1;
}

async function writeTo(target: string): Promise<string | undefined> {
  try {
    mkdirSync(dirname(target), { recursive: true, mode: 0o700 });
    const done = await backUpStore(dataPlace(process.env), target);
    if (!done.ok) return done.refusal.sentence;
    console.log(`${done.rows} rows are kept in ${target}`);
    return undefined;
  } catch (error) {
    return `The backup could not be written: ${error instanceof Error ? error.message : String(error)}`;
  }
}
