import { openClassroom } from "@/app/_server/classroom";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { gradebookCsv } from "@/lib/classroom/gradebook/gradebook-csv";
import { makeGradebook } from "@/lib/classroom/gradebook/make-gradebook";
import { readGradebook } from "@/lib/classroom/gradebook/read-gradebook";
import { resultsZip } from "@/lib/classroom/gradebook/results-zip";

/** A class's gradebook as a file: one wide table, or (`form=results`) an archive of results as OneRoster has them. */
export async function GET(request: Request): Promise<Response> {
  const opened = await openClassroom();
  if (!opened.ok) return new Response(opened.refusal.sentence, { status: 503 });
  const { store, whoIs } = opened.classroom;
  const asked = new URL(request.url).searchParams;
  const subject = await classSubject(store, asked.get("classId") ?? "");
  if (!subject || !mayDo(await whoIs(request.headers), "see-gradebook", subject))
    return new Response("This is not yours to see.", { status: 403 });
  const now = new Date().toISOString();
  const book = makeGradebook(await readGradebook(store, subject.classId), now);
  const results = asked.get("form") === "results";
  return new Response(results ? Buffer.from(resultsZip(book, subject.classId, now)) : gradebookCsv(book), {
    headers: {
      "Cache-Control": "no-store",
      "Content-Type": results ? "application/zip" : "text/csv; charset=utf-8; header=present",
      "Content-Disposition": `attachment; filename="${results ? "results.zip" : "gradebook.csv"}"`,
    },
  });
}
