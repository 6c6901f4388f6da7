import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { eraseClass } from "@/lib/classroom/accounts/erase";
import { ClassRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(ClassRequest, async ({ value, person, store }) => {
  const subject = await classSubject(store, value.classId);
  if (!subject || !mayDo(person, "erase-class", subject)) return FORBIDDEN;
  const erased = await eraseClass(store, value.classId);
  return erased.ok ? { ok: true } : erased;
});
