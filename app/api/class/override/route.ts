import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { overrideScore } from "@/lib/classroom/gradebook/change-cell";
import { itemSubject } from "@/lib/classroom/gradebook/item-subject";
import { OverrideRequest } from "@/lib/classroom/gradebook/requests";

export const POST = handlePost(OverrideRequest, async ({ value, person, store }) => {
  const subject = await itemSubject(store, value);
  if (!subject || !mayDo(person, "override-score", subject)) return FORBIDDEN;
  const kept = await overrideScore(store, value, new Date().toISOString());
  return kept.ok ? { ok: true } : kept;
});
