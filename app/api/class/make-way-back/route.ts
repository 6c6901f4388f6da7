import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import { MakeWayBackRequest } from "@/lib/classroom/accounts/requests";
import { makeWayBack } from "@/lib/classroom/accounts/way-back";
import { sayWord, writeWordLink } from "@/lib/classroom/accounts/word-link";

/** A teacher makes a way back for a colleague, who sees who made it. */
export const POST = handlePost(MakeWayBackRequest, async ({ value, person, store }) => {
  if (person.kind !== "teacher" || !mayDo(person, "make-way-back", SCHOOL)) return FORBIDDEN;
  const made = await makeWayBack(store, { email: value.email, madeBy: person.userId });
  if (!made.ok) return made;
  return { ok: true, name: made.name, word: sayWord(made.word), link: writeWordLink("way-back", made.word) };
});
