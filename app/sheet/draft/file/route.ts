import { readOwnExercise, sentence } from "@/app/_server/read-own-exercise";
import { fileName } from "../../[id]/file/file-name";
import { makeFile } from "../../[id]/file/make-file";
import { pagesOf, whyNone } from "../../[id]/file/pages-of";
import { readOrder } from "../../[id]/order";

/** A sheet or a drawing of the exercise that is sent, as a file. Nothing of it is kept. */
export async function POST(request: Request): Promise<Response> {
  const sent = await readOwnExercise(request);
  if (!sent.ok) return sent.answer;
  const { exercise } = sent;
  const ordered = readOrder(new URL(request.url).searchParams);
  if (!ordered.ok) return sentence(400, ordered.problem);
  const { order } = ordered;
  if (order.view === "construction" && order.point !== null && !exercise.task.marks.includes(order.point))
    return sentence(400, `The exercise asks for no point ${order.point}.`);
  const [first, ...more] = pagesOf(exercise, order);
  if (!first) return sentence(400, whyNone(exercise, order));
  const page = [first, ...more][order.page - 1];
  if (!page) return sentence(400, `It has ${more.length + 1} pages, and no page ${order.page}.`);
  const { body, type } = await makeFile(order.format, [first, ...more], page, exercise.title);
  return new Response(body, {
    headers: {
      "Content-Type": type,
      "Content-Disposition": `attachment; filename="${fileName(exercise.id, order)}"`,
      "Cache-Control": "no-store",
    },
  });
}
