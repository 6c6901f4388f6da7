import { readCourseFiles } from "@/app/_parts/course/course-files";
import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { homeworkSubject } from "@/lib/classroom/gradebook/item-subject";
import { applyRegrade, previewRegrade } from "@/lib/classroom/gradebook/regrade";
import { RegradeRequest } from "@/lib/classroom/gradebook/requests";
import own from "@/package.json";

/** What would change; with the seal of what was shown, does it. */
export const POST = handlePost(RegradeRequest, async ({ value, person, store }) => {
  const subject = await homeworkSubject(store, value);
  if (!subject || subject.classId !== value.classId || !mayDo(person, "regrade", subject)) return FORBIDDEN;
  const course = value.exercises === "course" ? await readCourseFiles() : null;
  const regrade = { homeworkId: value.homeworkId, strictness: value.strictness, course };
  if (value.seal === undefined) return { ok: true, preview: await previewRegrade(store, regrade) };
  const applied = await applyRegrade(store, regrade, value.seal, own.version);
  return applied.ok ? { ok: true, preview: applied.value } : applied;
});
