import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import { countKeeping } from "@/lib/classroom/library/count-keeping";
import { CopyPlanRequest } from "@/lib/classroom/library/requests";
import { copyShared } from "@/lib/classroom/library/share-plan";

/** Puts a copy of a shared plan into the library of whoever asks. */
export const POST = handlePost(CopyPlanRequest, async ({ value, person, store, address }) => {
  if (person.kind !== "teacher" || !mayDo(person, "see-shared-plan", SCHOOL)) return FORBIDDEN;
  const often = await countKeeping(store, person.userId);
  return often ?? copyShared(store, { ...value, ownerId: person.userId, address });
});
