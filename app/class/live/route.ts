import { openLive } from "@/app/_live/live-server";
import { findExercise, readCourse } from "@/app/_parts/course/course";
import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { classForVote, openVote } from "@/lib/classroom/live/open-vote";
import { OpenVoteRequest } from "@/lib/classroom/live/requests";

/**
 * Opens "everyone places it" for one point of an exercise: `{ exerciseId, point, classId? }` to `{ voteId, code, classId }`.
 * The screen for the front is then at `/class/<classId>/live/<voteId>`, the phones' page at `/live/<code>`.
 */
export const POST = handlePost(OpenVoteRequest, async ({ value, person, store }) => {
  if (person.kind !== "teacher") return FORBIDDEN;
  const classId = value.classId ?? (await classForVote(store, person.userId));
  const subject = classId ? await classSubject(store, classId) : undefined;
  if (!subject || !mayDo(person, "run-vote", subject)) return FORBIDDEN;
  const found = findExercise(await readCourse(), value.exerciseId);
  if (found.kind !== "found")
    return { ok: false, reason: "no-exercise", sentence: "There is no such exercise that can be used." };
  const opened = await openVote(store, { classId: subject.classId, exercise: found.exercise, point: value.point });
  if (!opened.ok) return opened;
  const { rooms } = await openLive(store);
  await Promise.all(opened.before.map((before) => rooms.moved(before)));
  return { ok: true, voteId: opened.voteId, code: opened.code, classId: opened.classId };
});
