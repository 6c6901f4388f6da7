import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import { exerciseSchema } from "../exercise/exercise-schema";
import { marksSchema } from "../exercise/marks-schema";

/** Writes the schemas in code as JSON Schema 2020-12 to public/schema; with --check, only says whether they are current. */
const FOLDER = join(dirname(fileURLToPath(import.meta.url)), "../../public/schema");
const SCHEMAS = { "exercise.json": exerciseSchema, "marks.json": marksSchema };

const check = process.argv.includes("--check");
mkdirSync(FOLDER, { recursive: true });
for (const [file, schema] of Object.entries(SCHEMAS)) {
  const path = join(FOLDER, file);
  const text = `${JSON.stringify(z.toJSONSchema(schema, { target: "draft-2020-12", io: "input" }), null, 2)}\n`;
  if (!check) writeFileSync(path, text);
  else if (readOrEmpty(path).replaceAll("\r\n", "\n") !== text) {
    process.stderr.write(`public/schema/${file} is out of date: run npm run schema\n`);
    process.exitCode = 1;
  }
}

function readOrEmpty(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}
