import { courseFolder } from "@/app/_parts/course/course";
import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { courseText } from "@/lib/classroom/homework/course-text";
import { fillPlans } from "@/lib/classroom/homework/fill-plans";
import { SetHomeworkRequest } from "@/lib/classroom/homework/requests";
import { setHomework } from "@/lib/classroom/homework/set-homework";

/** Exercise files of a teacher's own travel with the form. */
const MOST_BYTES = 4 * 1024 * 1024;

export const POST = handlePost(
  SetHomeworkRequest,
  async ({ value, person, store }) => {
    const subject = await classSubject(store, value.classId);
    if (!subject || !mayDo(person, "set-homework", subject)) return FORBIDDEN;
    const filled = await fillPlans(store, subject.teacherId, value.items);
    if (!filled.ok) return filled;
    return setHomework(store, { ...value, items: filled.items }, (id) => courseText(courseFolder(), id));
  },
  MOST_BYTES,
);
