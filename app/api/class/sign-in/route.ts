import { handlePost } from "@/app/_server/handle-post";
import { SignInRequest } from "@/lib/classroom/accounts/requests";
import { signIn } from "@/lib/classroom/accounts/sign-in";

export const POST = handlePost(SignInRequest, async ({ value, store, auth, address, headers }) => {
  const signedIn = await signIn(store, auth, { ...value, address, headers });
  return signedIn.ok ? { ok: true, cookies: signedIn.cookies } : signedIn;
});
