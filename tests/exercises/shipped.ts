import { readdirSync, readFileSync } from "node:fs";
import { dirname } from "node:path";
import type { Exercise } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";

export type Shipped = { readonly file: string; readonly folder: string; readonly exercise: Exercise };

const FOLDER = "exercises";

/** Every file of the course in the order of its path; a file of the wrong form fails the whole test file. */
export const SHIPPED: readonly Shipped[] = readdirSync(FOLDER, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".json"))
  .sort()
  .map((file) => {
    const reading = readExercise(readFileSync(`${FOLDER}/${file}`, "utf8"));
    if (!reading.ok) throw new Error(`${file}: ${JSON.stringify(reading.problems)}`);
    return { file, folder: dirname(file), exercise: reading.exercise };
  });
