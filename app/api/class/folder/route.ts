import { findExercise, readCourse } from "@/app/_parts/course/course";
import { readClient } from "@/app/_server/client";
import { readPost } from "@/app/_server/read-post";
import { makeCountHere } from "@/lib/classroom/accounts/count-here";
import { FOLDER_LIMIT } from "@/lib/classroom/accounts/tries";
import { FolderRequest } from "@/lib/classroom/gradebook/folder-request";
import { gradeFolder } from "@/lib/classroom/gradebook/grade-folder";
import { gradebookCsv } from "@/lib/classroom/gradebook/gradebook-csv";

/** A folder of a whole class's marks. */
const MOST_BYTES = 4 * 1024 * 1024;

/** Kept by the process: grading a folder needs no store, and shall work where there is none. */
const count = makeCountHere(FOLDER_LIMIT);

/** Grades a folder's files and keeps nothing: it needs no store, and asks nobody who they are. */
export async function POST(request: Request): Promise<Response> {
  const no = (status: number, sentence: string) => Response.json({ ok: false, sentence }, { status });
  const counted = count(readClient(request.headers).address, Date.now());
  if (!counted.allowed) {
    const minutes = Math.ceil(counted.waitS / 60);
    const wait = minutes === 1 ? "a minute" : `${minutes} minutes`;
    return no(429, `Many folders were graded from here just now. Wait ${wait}, then send yours again.`);
  }
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
