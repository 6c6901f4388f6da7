import type { Place } from "@/lib/classroom/live/cloud";
import { type GuessTaken, makeGuessBatches } from "@/lib/classroom/live/guess-batches";
import type { Store } from "@/lib/classroom/store/store";

/** One guess, in a batch of its own. */
export function putGuess(
  store: Store,
  guess: { readonly voteId: string; readonly round: number; readonly person: string; readonly at: Place },
): Promise<GuessTaken> {
  const { voteId, ...one } = guess;
  return makeGuessBatches(store, () => {}).take(voteId, one);
}
