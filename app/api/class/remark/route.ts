import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { handInSubject } from "@/lib/classroom/gradebook/item-subject";
import { keepRemark } from "@/lib/classroom/gradebook/remarks";
import { RemarkRequest } from "@/lib/classroom/gradebook/requests";

/** Many long red lines are longer than a form. */
const MOST_BYTES = 1024 * 1024;

export const POST = handlePost(
  RemarkRequest,
  async ({ value, person, store }) => {
    const subject = await handInSubject(store, value.handInId);
    if (!subject || !mayDo(person, "make-remark", subject)) return FORBIDDEN;
    const kept = await keepRemark(store, value, new Date().toISOString());
    return kept.ok ? { ok: true } : kept;
  },
  MOST_BYTES,
);
