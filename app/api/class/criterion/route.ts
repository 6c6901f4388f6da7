import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { scoreCriterion } from "@/lib/classroom/gradebook/change-cell";
import { itemSubject } from "@/lib/classroom/gradebook/item-subject";
import { CriterionRequest } from "@/lib/classroom/gradebook/requests";

export const POST = handlePost(CriterionRequest, async ({ value, person, store }) => {
  const subject = await itemSubject(store, value);
  if (!subject || !mayDo(person, "score-criterion", subject)) return FORBIDDEN;
  return scoreCriterion(store, value);
});
