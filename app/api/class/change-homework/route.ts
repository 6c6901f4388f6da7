import { courseFolder } from "@/app/_parts/course/course";
import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { courseText } from "@/lib/classroom/homework/course-text";
import { editHomework } from "@/lib/classroom/homework/edit-homework";
import { fillPlans } from "@/lib/classroom/homework/fill-plans";
import { findHomework, homeworkSubject } from "@/lib/classroom/homework/find-homework";
import { ChangeHomeworkRequest } from "@/lib/classroom/homework/requests";

/** Exercise files of a teacher's own travel with the form. */
const MOST_BYTES = 4 * 1024 * 1024;

/** Changes homework that is set, or answers with what has to be agreed to first. */
export const POST = handlePost(
  ChangeHomeworkRequest,
  async ({ value, person, store }) => {
    const found = await findHomework(store.db, value.homeworkId);
    if (!found || !mayDo(person, "set-homework", homeworkSubject(found))) return FORBIDDEN;
    const filled = await fillPlans(store, found.teacherId, value.items);
    if (!filled.ok) return filled;
    return editHomework(store, { ...value, items: filled.items }, (id) => courseText(courseFolder(), id));
  },
  MOST_BYTES,
);
