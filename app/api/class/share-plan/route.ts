import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { planSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SharePlanRequest } from "@/lib/classroom/library/requests";
import { sharePlan } from "@/lib/classroom/library/share-plan";

export const POST = handlePost(SharePlanRequest, async ({ value: { planId, shared }, person, store }) => {
  const subject = await planSubject(store, planId);
  if (!subject || !mayDo(person, "share-plan", subject)) return FORBIDDEN;
  const done = await sharePlan(store, planId, shared);
  return done.ok ? { ok: true, word: done.value } : done;
});
