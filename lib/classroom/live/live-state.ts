import type { Store } from "../store/store";
import type { Place } from "./cloud";
import { findVote, nextCode } from "./find-vote";
import { thawExercise } from "./freeze-exercise";
import { judgeGuesses } from "./judge-guesses";
import { countGuesses } from "./put-guess";
import type { VoteStage } from "./vote-stage";

/** All that the phones and the projector are sent as it happens. Of anybody's guess there is nothing in it. */
export type LiveState = VoteStage & {
  /** How many have placed their mark in this round. */
  readonly placed: number;
  /** Where the point truly lies; null until it is shown. */
  readonly truth: Place | null;
  readonly toleranceMm: number | null;
  /** The code of the vote that the class has gone on to. */
  readonly next: string | null;
};

/** What a vote is at this moment; null when there is none any more. */
export async function liveState(store: Store, voteId: string): Promise<LiveState | null> {
  const found = await findVote(store, voteId);
  if (!found) return null;
  const { vote } = found;
  const { round, state, point } = vote;
  const placed = await countGuesses(store, voteId, round);
  if (state !== "closed") return { round, state, placed, truth: null, toleranceMm: null, next: null };
  const judged = judgeGuesses(thawExercise(vote.exercise), point, []);
  const next = await nextCode(store, vote);
  return { round, state, placed, truth: judged?.truth ?? null, toleranceMm: judged?.toleranceMm ?? null, next };
}

/** What tells two states apart, short enough to be an event's id. */
export function versionOf({ round, state, placed, next }: LiveState): string {
  return [round, state, placed, next ?? ""].join(".");
}
