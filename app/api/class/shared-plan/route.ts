import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import { SharedPlanRequest } from "@/lib/classroom/library/requests";
import { openShared } from "@/lib/classroom/library/share-plan";

/** A plan that somebody shares, for any teacher who has its link. */
export const POST = handlePost(SharedPlanRequest, async ({ value: { word }, person, store, address }) => {
  if (person.kind !== "teacher" || !mayDo(person, "see-shared-plan", SCHOOL)) return FORBIDDEN;
  const shared = await openShared(store, { word, address });
  if (!shared.ok) return shared;
  const { ownerId, by, title, text, changedAt } = shared;
  return { ok: true, by, title, text, changedAt, own: ownerId === person.userId };
});
