import { handlePost } from "@/app/_server/handle-post";
import { NothingRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(NothingRequest, async ({ auth, headers }) => ({
  ok: true,
  cookies: await auth.signOut(headers),
}));
