import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { setWeights } from "@/lib/classroom/gradebook/change-cell";
import { WeightsRequest } from "@/lib/classroom/gradebook/requests";

export const POST = handlePost(WeightsRequest, async ({ value, person, store }) => {
  const subject = await classSubject(store, value.classId);
  if (!subject || !mayDo(person, "set-homework", subject)) return FORBIDDEN;
  const kept = await setWeights(store, value);
  return kept.ok ? { ok: true } : kept;
});
