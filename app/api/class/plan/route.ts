import { openClassroom } from "@/app/_server/classroom";
import { planSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { textOf } from "@/lib/classroom/library/read-library";

/** A plan of a library as the file of its exercise: as it is (`?planId=`), or one of its versions (`&versionId=`). */
export async function GET(request: Request): Promise<Response> {
  const opened = await openClassroom();
  if (!opened.ok) return new Response(opened.refusal.sentence, { status: 503 });
  const { store, whoIs } = opened.classroom;
  const asked = new URL(request.url).searchParams;
  const planId = asked.get("planId") ?? "";
  const subject = await planSubject(store, planId);
  if (!subject || !mayDo(await whoIs(request.headers), "see-plan", subject))
    return new Response("This is not yours to see.", { status: 403 });
  const text = await textOf(store, planId, asked.get("versionId"));
  if (text === undefined) return new Response("This version is there no more.", { status: 404 });
  return new Response(text, {
    headers: {
      "Cache-Control": "no-store",
      "Content-Type": "application/json; charset=utf-8",
      "Content-Disposition": 'attachment; filename="plan.json"',
    },
  });
}
