import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import { changePassword } from "@/lib/classroom/accounts/change-password";
import { PasswordRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(PasswordRequest, async ({ value, person, store, auth, address, headers }) => {
  if (person.kind !== "teacher") return FORBIDDEN;
  const { userId } = person;
  if (!mayDo(person, "change-password", { ...SCHOOL, teacherId: userId })) return FORBIDDEN;
  const changed = await changePassword(store, auth, { ...value, userId, address, headers });
  return changed.ok ? { ok: true, cookies: changed.cookies } : changed;
});
