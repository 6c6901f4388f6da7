import { handlePost } from "@/app/_server/handle-post";
import { comeBack } from "@/lib/classroom/accounts/come-back";
import { BackRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(BackRequest, async ({ value, store, auth, address, headers }) => {
  const back = await comeBack(store, auth, { ...value, address, headers });
  return back.ok ? { ok: true, cookies: back.cookies } : back;
});
