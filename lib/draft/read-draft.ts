import { exerciseSchema } from "../exercise/exercise-schema";
import { type Problem, problemsOf } from "../exercise/problem";
import { readJson } from "../exercise/read-json";
import { resolveExercise } from "../exercise/resolve-exercise";
import { parseLength } from "../measure/length";
import type { Draft } from "./draft";

export type DraftReading =
  | { readonly ok: true; readonly draft: Draft }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * A draft from the text of an exercise file: its form is checked, its sense is not. A file that lists no marks has them worked
 * out with every change; one that gives the back wall's rise keeps it as what the author set.
 */
export function readDraft(text: string): DraftReading {
  const json = readJson(text);
  if (!json.ok) return { ok: false, problems: [json.problem] };
  const parsed = exerciseSchema.safeParse(json.value);
  if (!parsed.success) return { ok: false, problems: problemsOf(parsed.error, json.value) };
  const reading = resolveExercise(parsed.data);
  if (!reading.ok) return reading;
  const { task, viewer, units } = parsed.data;
  const rise = viewer.backWallRise === undefined ? null : parseLength(viewer.backWallRise, units);
  return {
    ok: true,
    draft: {
      exercise: reading.exercise,
      marksBy: task.marks === undefined ? "order" : "author",
      backWallRise: rise?.ok ? rise.metres : null,
    },
  };
}
