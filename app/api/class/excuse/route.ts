import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { excuse } from "@/lib/classroom/gradebook/change-cell";
import { homeworkSubject } from "@/lib/classroom/gradebook/item-subject";
import { ExcuseRequest } from "@/lib/classroom/gradebook/requests";

export const POST = handlePost(ExcuseRequest, async ({ value, person, store }) => {
  const subject = await homeworkSubject(store, value);
  if (!subject || !mayDo(person, "excuse", subject)) return FORBIDDEN;
  const kept = await excuse(store, value);
  return kept.ok ? { ok: true } : kept;
});
