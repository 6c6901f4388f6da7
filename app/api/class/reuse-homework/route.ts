import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { reuseHomework } from "@/lib/classroom/homework/change-homework";
import { findHomework, homeworkSubject } from "@/lib/classroom/homework/find-homework";
import { ReuseHomeworkRequest } from "@/lib/classroom/homework/requests";

export const POST = handlePost(ReuseHomeworkRequest, async ({ value, person, store }) => {
  const [found, to] = [await findHomework(store.db, value.homeworkId), await classSubject(store, value.classId)];
  const may = found && to && mayDo(person, "set-homework", homeworkSubject(found)) && mayDo(person, "set-homework", to);
  return may ? reuseHomework(store, value.homeworkId, value) : FORBIDDEN;
});
