import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { loadExercises } from "../../exercise/load-exercises";

/** The file of one exercise below a course's folder, as it is written; undefined for one the course does not have. */
export async function courseText(folder: string, exerciseId: string): Promise<string | undefined> {
  const entry = (await loadExercises(folder)).find((each) => each.ok && each.exercise.id === exerciseId);
  return entry && readFile(join(folder, entry.file), "utf8");
}
