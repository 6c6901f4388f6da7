import { handlePost } from "@/app/_server/handle-post";
import { joinClass } from "@/lib/classroom/accounts/join-class";
import { writePrivateLink } from "@/lib/classroom/accounts/private-link";
import { JoinRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(JoinRequest, async ({ value, person, store, auth, address }) => {
  const userId = person.kind === "student" ? person.userId : null;
  const joined = await joinClass(store, auth, { ...value, address, userId });
  if (!joined.ok) return joined;
  const { cookies, passphrase, code, name } = joined;
  const link = passphrase === null ? null : writePrivateLink({ code, name, passphrase });
  return { ok: true, cookies, passphrase, link, name };
});
