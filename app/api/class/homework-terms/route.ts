import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { memberSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { agreeTerms } from "@/lib/classroom/homework/change-homework";
import { findHomework } from "@/lib/classroom/homework/find-homework";
import { TermsRequest } from "@/lib/classroom/homework/requests";

export const POST = handlePost(TermsRequest, async ({ value, person, store }) => {
  const found = await findHomework(store.db, value.homeworkId);
  const student = await memberSubject(store, value.memberId);
  const fits = found && student && student.classId === found.homework.class_id;
  if (!fits || !mayDo(person, "excuse", student)) return FORBIDDEN;
  const done = await agreeTerms(store, value.homeworkId, value.memberId, value);
  return done.ok ? { ok: true } : done;
});
