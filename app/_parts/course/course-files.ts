import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { readExercise } from "@/lib/exercise/read-exercise";
import { courseFolder } from "./course";

/** The course's files as they are written, by the id of their exercise; those that cannot be read are left out. */
export async function readCourseFiles(): Promise<ReadonlyMap<string, string>> {
  const folder = courseFolder();
  const paths = (await readdir(folder, { recursive: true })).filter((path) => path.endsWith(".json"));
  const texts = await Promise.all(paths.map((path) => readFile(join(folder, path), "utf8")));
  return new Map(
    texts.flatMap((text): [string, string][] => {
      const reading = readExercise(text);
      return reading.ok ? [[reading.exercise.id, text]] : [];
    }),
  );
}
