import { type No, no } from "../accounts/answer";
import type { Store } from "../store/store";
import { type NewGuess, putGuesses } from "./put-guesses";

/**
 * Between two batches of a vote there is at least so much time, in milliseconds: nobody sees so short a wait, and a hall that
 * sets its marks down at one word is kept in a few steps instead of a thousand.
 */
const GATHER_MS = 20;
/** More than these wait for the next batch: one step should not keep a reveal waiting. */
const MOST_AT_ONCE = 500;

export type GuessTaken = { readonly ok: true } | No<"not-open">;

export type GuessBatches = {
  /** Keeps a guess together with those that come at the same moment. What is answered `ok` is kept for good. */
  readonly take: (voteId: string, guess: NewGuess) => Promise<GuessTaken>;
};

type Waiting = {
  readonly guess: NewGuess;
  readonly answer: (taken: GuessTaken) => void;
  readonly fail: (error: unknown) => void;
};

/**
 * Takes guesses in batches, each vote's one after the other.
 *
 * @param kept called when a batch has been kept, once for all of it
 */
export function makeGuessBatches(store: Store, kept: (voteId: string) => void): GuessBatches {
  const waiting = new Map<string, Waiting[]>();
  const work = async (voteId: string, line: Waiting[]) => {
    while (line.length > 0) {
      const batch = line.splice(0, MOST_AT_ONCE);
      const next = new Promise((resolve) => setTimeout(resolve, GATHER_MS));
      if (await keep(store, voteId, batch)) kept(voteId);
      await next;
    }
    waiting.delete(voteId);
  };
  return {
    take: (voteId, guess) =>
      new Promise((answer, fail) => {
        const one = { guess, answer, fail };
        const line = waiting.get(voteId);
        if (line) return void line.push(one);
        const begun = [one];
        waiting.set(voteId, begun);
        void work(voteId, begun);
      }),
  };
}

/** Keeps a batch and answers everyone in it; whether any of it was kept. */
async function keep(store: Store, voteId: string, batch: readonly Waiting[]): Promise<boolean> {
  try {
    const guesses = batch.map(({ guess }) => guess);
    const put = await putGuesses(store, voteId, guesses);
    for (const { guess, answer } of batch) answer(!put.ok ? put : put.value(guess) ? { ok: true } : NOT_OPEN);
    return put.ok && guesses.some(put.value);
  } catch (error) {
    const [first, ...others] = batch;
    if (others.length === 0) {
      first?.fail(error);
      return false;
    }
    // One of them cannot be kept, and the database does not say which: it is to fail alone.
    const half = Math.ceil(batch.length / 2);
    const before = await keep(store, voteId, batch.slice(0, half));
    return (await keep(store, voteId, batch.slice(half))) || before;
  }
}

const NOT_OPEN: GuessTaken = no("not-open", "Marks are not taken just now. Look at the screen at the front.");
