import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { memberSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { findItem } from "@/lib/classroom/homework/find-homework";
import { handIn } from "@/lib/classroom/homework/hand-in";
import { HandInRequest } from "@/lib/classroom/homework/requests";

export const POST = handlePost(HandInRequest, async ({ value, person, store }) => {
  const found = await findItem(store.db, value.itemId);
  const student = await memberSubject(store, value.memberId);
  // The homework may be gone and the student still there: then they are told so, and keep their marks.
  const fits = student && (!found || student.classId === found.homework.class_id);
  if (!fits || !mayDo(person, "do-homework", student)) return FORBIDDEN;
  return handIn(store, value);
});
