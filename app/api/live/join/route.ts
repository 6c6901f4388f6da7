import { openLive } from "@/app/_live/live-server";
import { guestCookie, whoPlaces } from "@/app/_live/who-places";
import { readClient } from "@/app/_server/client";
import { type Answer, handlePost } from "@/app/_server/handle-post";
import { tooMany } from "@/lib/classroom/accounts/answer";
import { countTry, type Limit } from "@/lib/classroom/accounts/tries";
import { makeGuestToken } from "@/lib/classroom/live/guest-token";
import { guessesBy } from "@/lib/classroom/live/put-guesses";
import { VoteRequest } from "@/lib/classroom/live/requests";

/** New guests from one address: a full hall behind one router. */
const GUEST_LIMIT: Limit = { name: "guest", most: 1500, seconds: 15 * 60 };

const GONE: Answer = {
  ok: false,
  reason: "gone",
  status: 404,
  sentence: "This is over. Ask for the code that is on the screen now.",
};

/** Someone comes to a vote: they are given a guest's token unless they are known, and get back what they placed before. */
export const POST = handlePost(VoteRequest, async ({ value: { voteId }, person, store, headers, address }) => {
  const { secret, subjectOf } = await openLive(store);
  const subject = await subjectOf(voteId);
  if (!subject) return GONE;
  const known = whoPlaces(headers, person, subject, secret);
  if (known) return { ok: true, mine: await guessesBy(store, voteId, known) };
  const joining = await countTry(store, GUEST_LIMIT, address);
  if (!joining.allowed) return tooMany(joining.waitS);
  const token = makeGuestToken(secret);
  const cookies = [guestCookie(token, readClient(headers).secure)];
  return { ok: true, cookies, mine: [] };
});
