import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { handInSubject } from "@/lib/classroom/gradebook/item-subject";
import { countInTime } from "@/lib/classroom/homework/judge-lateness";
import { CountInTimeRequest } from "@/lib/classroom/homework/requests";

export const POST = handlePost(CountInTimeRequest, async ({ value, person, store }) => {
  const subject = await handInSubject(store, value.handInId);
  if (!subject || !mayDo(person, "excuse", subject)) return FORBIDDEN;
  const kept = await countInTime(store, value);
  return kept.ok ? { ok: true } : kept;
});
