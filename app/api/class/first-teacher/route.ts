import { handlePost } from "@/app/_server/handle-post";
import { makeFirstTeacher } from "@/lib/classroom/accounts/first-teacher";
import { FirstTeacherRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(FirstTeacherRequest, async ({ value, store, auth, address, atTheServer }) => {
  const made = await makeFirstTeacher(store, auth, { ...value, address, atTheServer });
  return made.ok ? { ok: true, cookies: made.cookies } : made;
});
