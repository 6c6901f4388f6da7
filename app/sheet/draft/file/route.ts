import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { readPost } from "@/app/_server/read-post";
import { faultsOf } from "@/lib/exercise/check-sense";
import { readExercise } from "@/lib/exercise/read-exercise";
import { fileName } from "../../[id]/file/file-name";
import { makeFile } from "../../[id]/file/make-file";
import { pagesOf } from "../../[id]/file/pages-of";
import { readOrder } from "../../[id]/order";

/** A file of 1 MiB, written as JSON text: each of its letters may take two. */
const MOST_BYTES = 2 << 20;

/** A sheet or a drawing of the exercise that is sent, as a file. Nothing of it is kept. */
export async function POST(request: Request): Promise<Response> {
  const sent = await readPost(request, MOST_BYTES);
  if (!sent.ok) return refuse(sent.status, sent.sentence);
  const text = isRecord(sent.value) ? sent.value.text : undefined;
  if (typeof text !== "string") return refuse(400, "No exercise was sent.");
  const reading = readExercise(text);
  const [wrong] = reading.ok ? faultsOf(reading.exercise) : reading.problems;
  if (!reading.ok || wrong) return refuse(400, `The exercise cannot be drawn: ${wrong?.message} (${wrong?.hint}).`);
  const { exercise } = reading;
  const ordered = readOrder(new URL(request.url).searchParams);
  if (!ordered.ok) return refuse(400, ordered.problem);
  const { order } = ordered;
  if (order.view === "construction" && order.point !== null && !exercise.task.marks.includes(order.point))
    return refuse(400, `The exercise asks for no point ${order.point}.`);
  const [first, ...more] = pagesOf(exercise, { ...order, seed: null });
  if (!first) return refuse(400, "The stage is too large for this paper at any scale.");
  const { body, type } = await makeFile(order.format, [first, ...more], first, exercise.title);
  return new Response(body, {
    headers: {
      "Content-Type": type,
      "Content-Disposition": `attachment; filename="${fileName(exercise.id, order)}"`,
      "Cache-Control": "no-store",
    },
  });
}

function refuse(status: number, sentence: string): Response {
  return new Response(sentence, { status, headers: { "Content-Type": "text/plain; charset=utf-8" } });
}
