import { openLive } from "@/app/_live/live-server";
import { whoPlaces } from "@/app/_live/who-places";
import { type Answer, handlePost } from "@/app/_server/handle-post";
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
    const { guesses, pace, secret, subjectOf } = await openLive(store);
    const subject = await subjectOf(voteId);
    const who = subject && whoPlaces(headers, person, subject, secret);
    if (!who) return NO_PLACE;
    if (!pace.take(who, performance.now())) return TOO_FAST;
    return guesses.take(voteId, { round, person: who, at });
  },
  MOST_GUESS_BYTES,
);
