import type { Store } from "../store/store";
import type { Place } from "./cloud";
import { findVote, nextCode } from "./find-vote";
import { thawExercise } from "./freeze-exercise";
import { judgeGuesses } from "./judge-guesses";
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

/** What a vote is at this moment; null when there is none any more. The exercise it carries is read only to tell the truth. */
export async function liveState(store: Store, voteId: string): Promise<LiveState | null> {
  const now = await store.db
    .selectFrom("vote")
    .select(({ selectFrom }) => [
      "round",
      "state",
      selectFrom("guess")
        .select((guess) => guess.fn.countAll<number | string>().as("count"))
        .whereRef("guess.vote_id", "=", "vote.id")
        .whereRef("guess.round", "=", "vote.round")
        .as("placed"),
    ])
    .where("id", "=", voteId)
    .executeTakeFirst();
  if (!now) return null;
  const open = {
    round: now.round,
    state: now.state,
    placed: Number(now.placed),
    truth: null,
    toleranceMm: null,
    next: null,
  };
  const found = now.state === "closed" ? await findVote(store, voteId) : undefined;
  if (!found) return open;
  const { vote } = found;
  const judged = judgeGuesses(thawExercise(vote.exercise), vote.point, []);
  const next = await nextCode(store, vote);
  return { ...open, truth: judged?.truth ?? null, toleranceMm: judged?.toleranceMm ?? null, next };
}

/** What tells two states apart, short enough to be an event's id. */
export function versionOf({ round, state, placed, next }: LiveState): string {
  return [round, state, placed, next ?? ""].join(".");
}
