import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { planSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { ThrowPlanRequest } from "@/lib/classroom/library/requests";
import { throwAway } from "@/lib/classroom/library/throw-away";

export const POST = handlePost(ThrowPlanRequest, async ({ value: { planId, thrown }, person, store }) => {
  const subject = await planSubject(store, planId);
  if (!subject || !mayDo(person, "change-plan", subject)) return FORBIDDEN;
  const done = await throwAway(store, planId, thrown);
  return done.ok ? { ok: true } : done;
});
