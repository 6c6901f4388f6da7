import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { wordSubjects } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { WordRequest } from "@/lib/classroom/accounts/requests";
import { withdrawWord } from "@/lib/classroom/accounts/teachers";

export const POST = handlePost(WordRequest, async ({ value, person, store }) => {
  const subjects = await wordSubjects(store, value.wordId);
  if (!subjects.some((subject) => mayDo(person, "withdraw-word", subject))) return FORBIDDEN;
  const done = await withdrawWord(store, value.wordId);
  return done.ok ? { ok: true } : done;
});
