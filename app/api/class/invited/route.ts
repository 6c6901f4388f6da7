import { handlePost } from "@/app/_server/handle-post";
import { acceptInvitation } from "@/lib/classroom/accounts/invitation";
import { InvitedRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(InvitedRequest, async ({ value, store, auth, address }) => {
  const made = await acceptInvitation(store, auth, { ...value, address });
  return made.ok ? { ok: true, cookies: made.cookies } : made;
});
