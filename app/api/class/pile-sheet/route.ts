import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { findSheet } from "@/lib/classroom/pile/find-sheet";
import { FindSheetRequest } from "@/lib/classroom/pile/requests";

/** Which of the class's homework a sheet belongs to, by what its code says. */
export const POST = handlePost(FindSheetRequest, async ({ value, person, store }) => {
  const subject = await classSubject(store, value.classId);
  if (!subject || !mayDo(person, "hand-in-for", subject)) return FORBIDDEN;
  return { ok: true, found: await findSheet(store, value) };
});
