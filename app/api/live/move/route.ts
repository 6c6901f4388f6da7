import { openLive } from "@/app/_live/live-server";
import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { mayDo } from "@/lib/classroom/access/may-do";
import { voteSubject } from "@/lib/classroom/live/find-vote";
import { moveVote } from "@/lib/classroom/live/move-vote";
import { MoveVoteRequest } from "@/lib/classroom/live/requests";

/** The teacher shows the marks, shows the true point, or has everyone place it again. */
export const POST = handlePost(MoveVoteRequest, async ({ value, person, store }) => {
  const subject = await voteSubject(store, value.voteId);
  if (!subject || !mayDo(person, "run-vote", subject)) return FORBIDDEN;
  const moved = await moveVote(store, value);
  if (!moved.ok) return moved;
  const { rooms } = await openLive(store);
  await rooms.moved(value.voteId);
  return { ok: true, round: moved.round, state: moved.state };
});
