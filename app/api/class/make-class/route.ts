import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import { makeClass } from "@/lib/classroom/accounts/classes";
import { MakeClassRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(MakeClassRequest, async ({ value, person, store }) => {
  if (person.kind !== "teacher" || !mayDo(person, "make-class", SCHOOL)) return FORBIDDEN;
  return makeClass(store, person.userId, value.title);
});
