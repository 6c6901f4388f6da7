import { findExercise, readCourse } from "@/app/_parts/course/course";
import { readPost } from "@/app/_server/read-post";
import { FolderRequest } from "@/lib/classroom/gradebook/folder-request";
import { gradeFolder } from "@/lib/classroom/gradebook/grade-folder";
import { gradebookCsv } from "@/lib/classroom/gradebook/gradebook-csv";

/** A folder of a whole class's marks. */
const MOST_BYTES = 4 * 1024 * 1024;

/** Grades a folder's files and keeps nothing: it needs no store, and asks nobody who they are. */
export async function POST(request: Request): Promise<Response> {
  const no = (status: number, sentence: string) => Response.json({ ok: false, sentence }, { status });
  const read = await readPost(request, MOST_BYTES);
  if (!read.ok) return no(read.status, read.sentence);
  const form = FolderRequest.safeParse(read.value);
  if (!form.success) return no(400, form.error.issues[0]?.message ?? "Something is missing.");
  const course = await readCourse();
  const find = (id: string) => {
    const found = findExercise(course, id);
    return found.kind === "found" ? found.exercise : null;
  };
  const graded = await gradeFolder(form.data.files, find, new Date().toISOString());
  return Response.json(
    { ok: true, ...graded, csv: gradebookCsv(graded.gradebook) },
    { headers: { "Cache-Control": "no-store" } },
  );
}
