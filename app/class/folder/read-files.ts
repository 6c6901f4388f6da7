/** A longer file is no set of marks. */
const LONGEST = 200_000;
/** Files that nobody put there themselves. */
const HIDDEN = /(^|\/)(\.|Thumbs\.db$|desktop\.ini$)/i;

export type NamedFile = { readonly path: string; readonly text: string };

type Found = { readonly path: string; readonly file: File };

/** Files with their paths below the folder that was chosen. */
export function filesChosen(files: Iterable<File>): readonly Found[] {
  return [...files].map((file) => ({ file, path: file.webkitRelativePath || file.name }));
}

/** Their texts. One too long to be marks goes without its text. */
export async function readFiles(found: readonly Found[]): Promise<readonly NamedFile[]> {
  return Promise.all(
    found
      .filter(({ path }) => !HIDDEN.test(path))
      .map(async ({ file, path }) => ({ path, text: file.size > LONGEST ? "" : await file.text() })),
  );
}

/** All files that were dropped, those inside folders as well. */
export async function filesDropped(dropped: DataTransfer): Promise<readonly Found[]> {
  // What was dropped can be asked for only until the first wait.
  const entries = [...dropped.items].map((item) => item.webkitGetAsEntry?.() ?? null);
  if (entries.every((entry) => entry === null)) return filesChosen(dropped.files);
  const found = await Promise.all(entries.map((entry) => (entry ? filesIn(entry) : [])));
  return found.flat();
}

async function filesIn(entry: FileSystemEntry): Promise<readonly Found[]> {
  if (entry.isFile) {
    const file = await new Promise<File>((resolve, reject) => (entry as FileSystemFileEntry).file(resolve, reject));
    return [{ file, path: entry.fullPath.replace(/^\//, "") }];
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const all: FileSystemEntry[] = [];
  // A browser hands a folder's entries out in parts.
  for (let more = await readPart(reader); more.length > 0; more = await readPart(reader)) all.push(...more);
  return (await Promise.all(all.map(filesIn))).flat();
}

function readPart(reader: FileSystemDirectoryReader): Promise<FileSystemEntry[]> {
  return new Promise((resolve, reject) => reader.readEntries(resolve, reject));
}
