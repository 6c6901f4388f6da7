import { openClassroom } from "@/app/_server/classroom";
import { classSubject, memberSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { exportWork } from "@/lib/classroom/accounts/export-work";

/** All that is kept of a class (`?classId=`) or of a student in it (`?memberId=`), as a file. */
export async function GET(request: Request): Promise<Response> {
  const opened = await openClassroom();
  if (!opened.ok) return new Response(opened.refusal.sentence, { status: 503 });
  const { store, whoIs } = opened.classroom;
  const asked = new URL(request.url).searchParams;
  const memberId = asked.get("memberId");
  const subject = memberId
    ? await memberSubject(store, memberId)
    : await classSubject(store, asked.get("classId") ?? "");
  const action = memberId ? "export-member" : "export-class";
  if (!subject || !mayDo(await whoIs(request.headers), action, subject))
    return new Response("This is not yours to see.", { status: 403 });
  const work = await exportWork(store, subject.classId, memberId);
  return Response.json(work, {
    headers: {
      "Cache-Control": "no-store",
      "Content-Disposition": `attachment; filename="${memberId ? "student" : "class"}.json"`,
    },
  });
}
