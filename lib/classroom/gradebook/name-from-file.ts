/** What a browser adds to the name of a file that is there already, or a person to a copy. */
const COPY = /(\s*\(\d+\)|[\s_-]+copy)$/i;
const ENDINGS = /(\.marks)?\.jsonl?$/i;
const EDGES = /^[\s._,-]+|[\s._,-]+$/g;

/**
 * Whose a file of marks is, by its name: `Wim Aalders - tide-office.marks.json`, `tide-office_Wim.marks (1).json`, or, in a
 * folder of folders, `Week one/Wim Aalders/tide-office.marks.json`. Null where the name tells only the exercise.
 */
export function nameFromFile(path: string, exercise: string): string | null {
  const parts = path.split(/[/\\]/).filter((part) => part !== "");
  const own = withoutExercise(bareName(parts.at(-1) ?? ""), exercise);
  if (own !== "") return own;
  // The outermost folder is the one that was chosen; only one inside it can be a student's.
  const folder = parts.length >= 3 ? tidy(parts.at(-2) ?? "") : "";
  return folder === "" ? null : folder;
}

function bareName(file: string): string {
  let bare = file.replace(ENDINGS, "");
  for (let shorter = bare.replace(COPY, ""); shorter !== bare; shorter = bare.replace(COPY, "")) bare = shorter;
  return bare.replace(/\.marks$/i, "");
}

function withoutExercise(bare: string, exercise: string): string {
  const at = bare.toLowerCase().indexOf(exercise.toLowerCase());
  if (exercise === "" || at < 0) return tidy(bare);
  const after = bare.slice(at + exercise.length).replace(/^\.marks/i, "");
  return tidy(`${tidy(bare.slice(0, at))} ${tidy(after)}`);
}

function tidy(words: string): string {
  return words.normalize("NFC").replaceAll("_", " ").replace(/\s+/g, " ").replace(EDGES, "");
}
