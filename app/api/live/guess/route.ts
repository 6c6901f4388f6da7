import { openLive } from "@/app/_live/live-server";
import { whoPlaces } from "@/app/_live/who-places";
import { type Answer, handlePost } from "@/app/_server/handle-post";
import { voteSubject } from "@/lib/classroom/live/find-vote";
import { putGuess } from "@/lib/classroom/live/put-guess";
import { GuessRequest, MOST_GUESS_BYTES } from "@/lib/classroom/live/requests";

const NO_PLACE: Answer = {
  ok: false,
  reason: "no-place",
  status: 403,
  sentence: "This phone is not known here any more. Load the page again.",
};
const TOO_FAST: Answer = { ok: false, reason: "too-many", sentence: "Not so fast: the last mark will be sent again." };

/** Keeps a mark. It is acknowledged when it is stored and not before; sent again, it changes nothing. */
export const POST = handlePost(
  GuessRequest,
  async ({ value: { voteId, round, at }, person, store, headers }) => {
    const subject = await voteSubject(store, voteId);
    const { rooms, pace, secret } = await openLive(store);
    const who = subject && whoPlaces(headers, person, subject, secret);
    if (!who) return NO_PLACE;
    if (!pace.take(who, performance.now())) return TOO_FAST;
    const put = await putGuess(store, { voteId, round, person: who, at });
    if (put.ok) rooms.placed(voteId);
    return put;
  },
  MOST_GUESS_BYTES,
);
