import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { memberSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { eraseMember } from "@/lib/classroom/accounts/erase";
import { MemberRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(MemberRequest, async ({ value, person, store }) => {
  const subject = await memberSubject(store, value.memberId);
  if (!subject || !mayDo(person, "erase-member", subject)) return FORBIDDEN;
  const erased = await eraseMember(store, value.memberId);
  return erased.ok ? { ok: true } : erased;
});
