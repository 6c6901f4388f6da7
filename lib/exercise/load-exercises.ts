import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { checkSense } from "./check-sense";
import type { Exercise } from "./exercise";
import type { Problem } from "./problem";
import { readExercise } from "./read-exercise";

/** A file of the course: an exercise that can be used, or what is wrong with it. `file` is its path below the folder. */
export type CourseEntry =
  | { readonly ok: true; readonly file: string; readonly exercise: Exercise }
  | { readonly ok: false; readonly file: string; readonly problems: readonly Problem[] };

/** Every exercise file below a folder, `<unit>/<file>.json`, by path. A broken one is listed with its problems. */
export async function loadExercises(folder: string): Promise<readonly CourseEntry[]> {
  const files = (await readdir(folder, { recursive: true }))
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => file.endsWith(".json"))
    .sort();
  return Promise.all(files.map((file) => loadExercise(folder, file)));
}

async function loadExercise(folder: string, file: string): Promise<CourseEntry> {
  const reading = readExercise(await readFile(join(folder, file), "utf8"));
  if (!reading.ok) return { ok: false, file, problems: reading.problems };
  const faults = checkSense(reading.exercise).filter(({ weight }) => weight === "fault");
  return faults.length > 0 ? { ok: false, file, problems: faults } : { ok: true, file, exercise: reading.exercise };
}
