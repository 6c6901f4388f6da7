import { findExercise, readCourse } from "@/app/_parts/course/course";
import { readOrder } from "../order";
import { fileName } from "./file-name";
import { makeFile } from "./make-file";
import { pagesOf, whyNone } from "./pages-of";
import { problemPage } from "./problem-page";

type Context = { readonly params: Promise<{ readonly id: string }> };

/** A sheet or a drawing of an exercise as a file: what of it, in which form and on which paper stands in the query. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { id } = await params;
  const { searchParams } = new URL(request.url);
  const back = `/sheet/${encodeURIComponent(id)}`;
  const found = findExercise(await readCourse(), id);
  if (found.kind === "unknown")
    return problemPage(
      404,
      "There is no such sheet",
      "No exercise goes by that name. The address may be mistyped.",
      "/",
    );
  if (found.kind === "broken")
    return problemPage(404, "This sheet cannot be read", "The exercise's file has something wrong in it.", back);
  const reading = readOrder(searchParams);
  if (!reading.ok) return problemPage(400, "This file cannot be made", reading.problem, back);
  const { exercise } = found;
  const { order } = reading;
  if (order.view === "construction" && order.point !== null && !exercise.task.marks.includes(order.point))
    return problemPage(400, "This file cannot be made", `The exercise asks for no point ${order.point}.`, back);
  const [first, ...more] = pagesOf(exercise, order);
  if (!first) return problemPage(400, "This file cannot be made", whyNone(exercise, order), back);
  const page = [first, ...more][order.page - 1];
  if (!page)
    return problemPage(
      400,
      "This file cannot be made",
      `It has ${more.length + 1} pages, and no page ${order.page}.`,
      back,
    );
  const { body, type } = await makeFile(order.format, [first, ...more], page, exercise.title);
  // A picture is shown where it is asked for; what is printed or saved gets its name.
  const shown = searchParams.get("show") === "yes" ? "inline" : "attachment";
  return new Response(body, {
    headers: {
      "Content-Type": type,
      "Content-Disposition": `${shown}; filename="${fileName(exercise.id, order)}"`,
      // A teacher's change to the exercise is there on the next look.
      "Cache-Control": "no-cache",
    },
  });
}
