import { handlePost } from "@/app/_server/handle-post";
import { WayBackRequest } from "@/lib/classroom/accounts/requests";
import { takeWayBack } from "@/lib/classroom/accounts/way-back";

export const POST = handlePost(WayBackRequest, async ({ value, store, auth, address }) => {
  const back = await takeWayBack(store, auth, { ...value, address });
  return back.ok ? { ok: true, cookies: back.cookies } : back;
});
