import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { archiveHomework } from "@/lib/classroom/homework/change-homework";
import { findHomework, homeworkSubject } from "@/lib/classroom/homework/find-homework";
import { ArchiveHomeworkRequest } from "@/lib/classroom/homework/requests";

export const POST = handlePost(ArchiveHomeworkRequest, async ({ value, person, store }) => {
  const found = await findHomework(store.db, value.homeworkId);
  if (!found || !mayDo(person, "set-homework", homeworkSubject(found))) return FORBIDDEN;
  const done = await archiveHomework(store, value.homeworkId, value.archived);
  return done.ok ? { ok: true } : done;
});
