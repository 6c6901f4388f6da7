import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { faultsOf } from "@/lib/exercise/check-sense";
import type { Exercise } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";
import { readPost } from "./read-post";

/** A file of 1 MiB, written as JSON text: each of its letters may take two. */
const MOST_BYTES = 2 << 20;

/** The exercise that a page sends to have it put on paper, or the answer that says why it cannot be. Nothing of it is kept. */
export async function readOwnExercise(
  request: Request,
): Promise<{ readonly ok: true; readonly exercise: Exercise } | { readonly ok: false; readonly answer: Response }> {
  const refuse = (status: number, words: string) => ({ ok: false, answer: sentence(status, words) }) as const;
  const sent = await readPost(request, MOST_BYTES);
  if (!sent.ok) return refuse(sent.status, sent.sentence);
  const text = isRecord(sent.value) ? sent.value.text : undefined;
  if (typeof text !== "string") return refuse(400, "No exercise was sent.");
  const reading = readExercise(text);
  const [wrong] = reading.ok ? faultsOf(reading.exercise) : reading.problems;
  if (!reading.ok || wrong) return refuse(400, `The exercise cannot be drawn: ${wrong?.message} (${wrong?.hint}).`);
  return { ok: true, exercise: reading.exercise };
}

/** An answer that is a sentence. */
export function sentence(status: number, words: string): Response {
  return new Response(words, { status, headers: { "Content-Type": "text/plain; charset=utf-8" } });
}
