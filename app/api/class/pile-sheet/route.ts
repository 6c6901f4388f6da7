import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { freezeExercise } from "@/lib/classroom/live/freeze-exercise";
import { findSheet } from "@/lib/classroom/pile/find-sheet";
import { FindSheetRequest } from "@/lib/classroom/pile/requests";
import type { SentSheet } from "@/lib/classroom/pile/sheet-works";

/** Which of the class's homework a sheet belongs to, by what its code says. */
export const POST = handlePost(FindSheetRequest, async ({ value, person, store }) => {
  const subject = await classSubject(store, value.classId);
  if (!subject || !mayDo(person, "hand-in-for", subject)) return FORBIDDEN;
  const found = await findSheet(store, value);
  const sent: SentSheet = found.kind === "set" ? { ...found, exercise: freezeExercise(found.exercise) } : found;
  return { ok: true, found: sent };
});
