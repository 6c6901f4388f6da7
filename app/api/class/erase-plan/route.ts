import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { planSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { ErasePlanRequest } from "@/lib/classroom/library/requests";
import { erasePlan } from "@/lib/classroom/library/throw-away";

export const POST = handlePost(ErasePlanRequest, async ({ value: { planId, versionId }, person, store }) => {
  const subject = await planSubject(store, planId);
  if (!subject || !mayDo(person, "erase-plan", subject)) return FORBIDDEN;
  const done = await erasePlan(store, planId, versionId);
  return done.ok ? { ok: true } : done;
});
