import type { MarkSet } from "./marks";
import { marksSchema } from "./marks-schema";
import { type Problem, problemsOf } from "./problem";
import { readJson } from "./read-json";

export type MarksReading =
  | { readonly ok: true; readonly marks: MarkSet }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A set of marks from the text of its file, or of one line of a `.jsonl`. */
export function readMarks(text: string): MarksReading {
  const json = readJson(text);
  return json.ok ? readMarksJson(json.value) : { ok: false, problems: [json.problem] };
}

/** The same, from JSON parsed already by `readJson`. */
export function readMarksJson(value: unknown): MarksReading {
  const parsed = marksSchema.safeParse(value);
  return parsed.success
    ? { ok: true, marks: parsed.data as MarkSet }
    : { ok: false, problems: problemsOf(parsed.error, value) };
}
