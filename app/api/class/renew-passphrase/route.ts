import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { memberSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { newPassphrase } from "@/lib/classroom/accounts/come-back";
import { writePrivateLink } from "@/lib/classroom/accounts/private-link";
import { MemberRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(MemberRequest, async ({ value, person, store, auth }) => {
  const subject = await memberSubject(store, value.memberId);
  if (!subject || !mayDo(person, "renew-passphrase", subject)) return FORBIDDEN;
  const renewed = await newPassphrase(store, auth, value.memberId);
  if (!renewed.ok) return renewed;
  return { ok: true, passphrase: renewed.passphrase, link: writePrivateLink(renewed.way) };
});
