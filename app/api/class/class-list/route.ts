import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { importMembers } from "@/lib/classroom/homework/import-members";
import { ClassListRequest } from "@/lib/classroom/homework/requests";

const MOST_BYTES = 4 * 1024 * 1024;

export const POST = handlePost(
  ClassListRequest,
  async ({ value, person, store }) => {
    const subject = await classSubject(store, value.classId);
    if (!subject || !mayDo(person, "change-members", subject)) return FORBIDDEN;
    return importMembers(store, value);
  },
  MOST_BYTES,
);
