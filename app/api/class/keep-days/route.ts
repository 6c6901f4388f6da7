import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { KeepRequest } from "@/lib/classroom/accounts/requests";
import { write } from "@/lib/classroom/store/write";

export const POST = handlePost(KeepRequest, async ({ value: { classId, keepDays }, person, store }) => {
  const subject = await classSubject(store, classId);
  if (!subject || !mayDo(person, "change-class", subject)) return FORBIDDEN;
  const kept = await write(store, (all) =>
    all.updateTable("class").set({ keep_days: keepDays }).where("id", "=", classId).execute(),
  );
  return kept.ok ? { ok: true } : kept;
});
