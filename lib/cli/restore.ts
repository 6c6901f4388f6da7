import { restoreStore } from "../classroom/store/restore";
import { dataPlace, typedPath } from "./data-place";

const HELP = `Puts a backup back in place of what Class keeps. Stop the server first.

  npm run restore -- FILE           into a place where nothing is kept yet
  npm run restore -- FILE --over    in place of all that is kept; that is backed up first

The backup may come from either kind of database, and from an older Plasterline.`;

const words = process.argv.slice(2);
const over = words.includes("--over");
const [file, ...more] = words.filter((word) => word !== "--over");
if (file === undefined || file.startsWith("-") || more.length > 0) console.log(HELP);
else await restore(file);

async function restore(named: string): Promise<void> {
  const complaint = await putBack(typedPath(named, process.env));
  if (complaint === undefined) return;
  console.error(complaint);
  process.exitCode = 1;
}

async function putBack(path: string): Promise<string | undefined> {
  try {
    const done = await restoreStore(dataPlace(process.env), path, over);
    if (!done.ok) return done.refusal.sentence;
    console.log(`${done.rows} rows were put back.${done.before ? ` What was there before is in ${done.before}` : ""}`);
    return undefined;
  } catch (error) {
    return `The backup could not be put back, and nothing was changed: ${error instanceof Error ? error.message : String(error)}`;
  }
}
