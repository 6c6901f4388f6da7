import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { planSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { goBack } from "@/lib/classroom/library/go-back";
import { GoBackRequest } from "@/lib/classroom/library/requests";

export const POST = handlePost(GoBackRequest, async ({ value, person, store }) => {
  const subject = await planSubject(store, value.planId);
  if (!subject || !mayDo(person, "change-plan", subject)) return FORBIDDEN;
  return goBack(store, { ...value, ownerId: subject.teacherId });
});
