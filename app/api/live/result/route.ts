import { openClassroom } from "@/app/_server/classroom";
import { mayDo } from "@/lib/classroom/access/may-do";
import { findVote } from "@/lib/classroom/live/find-vote";
import { thawExercise } from "@/lib/classroom/live/freeze-exercise";
import { guessesOf } from "@/lib/classroom/live/put-guesses";
import { voteResult } from "@/lib/classroom/live/vote-result";
import { faultOf, refusal } from "@/lib/classroom/store/fault";

const NO_STORE = { "Cache-Control": "no-store" };

/** What a vote (`?vote=`) has come to, for the screen at the front: as much as its stage lets be seen. */
export async function GET(request: Request): Promise<Response> {
  const opened = await openClassroom();
  if (!opened.ok) return new Response(opened.refusal.sentence, { status: 503 });
  const { store, whoIs } = opened.classroom;
  try {
    const found = await findVote(store, new URL(request.url).searchParams.get("vote") ?? "");
    if (!found || !mayDo(await whoIs(request.headers), "run-vote", found.subject))
      return new Response("This is not yours to see.", { status: 403 });
    const { id, exercise, point, round, state } = found.vote;
    const guesses = await guessesOf(store, id);
    const result = voteResult(thawExercise(exercise), point, { round, state }, guesses);
    return Response.json(result, { headers: NO_STORE });
  } catch (error) {
    const fault = faultOf(error);
    if (!fault) throw error;
    return new Response(refusal(fault).sentence, { status: 503 });
  }
}
