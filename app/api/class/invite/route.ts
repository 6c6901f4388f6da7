import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import { invite } from "@/lib/classroom/accounts/invitation";
import { InviteRequest } from "@/lib/classroom/accounts/requests";
import { sayWord, writeWordLink } from "@/lib/classroom/accounts/word-link";

export const POST = handlePost(InviteRequest, async ({ value, person, store }) => {
  if (person.kind !== "teacher" || !mayDo(person, "invite-teacher", SCHOOL)) return FORBIDDEN;
  const made = await invite(store, person.userId, value.note);
  return made.ok ? { ok: true, word: sayWord(made.word), link: writeWordLink("invited", made.word) } : made;
});
