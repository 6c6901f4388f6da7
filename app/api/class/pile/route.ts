import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { itemSubject } from "@/lib/classroom/gradebook/item-subject";
import { handInFor } from "@/lib/classroom/pile/hand-in-for";
import { PileRequest } from "@/lib/classroom/pile/requests";

/** One drawing on paper, handed in for its student by the class's teacher. */
export const POST = handlePost(PileRequest, async ({ value, person, store }) => {
  const subject = await itemSubject(store, value);
  if (!subject || !mayDo(person, "hand-in-for", subject)) return FORBIDDEN;
  return handInFor(store, value);
});
