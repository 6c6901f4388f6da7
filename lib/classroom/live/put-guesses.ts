import { sql } from "kysely";
import type { Store } from "../store/store";
import { type Written, write } from "../store/write";
import type { Place } from "./cloud";
import type { Guess } from "./vote-result";

/** One person's mark for a round. */
export type NewGuess = {
  readonly round: number;
  readonly person: string;
  /** Picture metres, or plan metres where the plan is read back. */
  readonly at: Place;
};

/**
 * Keeps guesses for a vote's open round, all in one step: one for each person and round, of which the later counts. They are
 * taken or not by what the vote is at that moment: once the marks are shown, none comes after them.
 *
 * @param guesses a later one replaces an earlier one of the same person
 * @returns which were taken: they are in the store for good; those of another round, or of a vote that is not open, are not
 */
export async function putGuesses(
  store: Store,
  voteId: string,
  guesses: readonly NewGuess[],
  now = new Date(),
): Promise<Written<(guess: NewGuess) => boolean>> {
  const last = new Map(guesses.map((guess) => [keyOf(guess), guess]));
  // Whole batches are one text, so that the statement is the same however many there are.
  const text = JSON.stringify([...last.values()].map(({ round, person, at }) => [round, person, JSON.stringify(at)]));
  const postgres = store.engine === "postgres";
  const each = postgres ? sql`json_array_elements(${text}::json)` : sql`json_each(${text})`;
  // A reveal waits for guesses under way: PostgreSQL has it so by a lock on the vote, SQLite takes one step at a time anyway.
  const lock = postgres ? sql`for share` : sql``;
  const put = await write(store, async (all) => {
    const { rows } = await sql<{ round: number; person: string }>`
      with asked as (select id, round from vote where id = ${voteId} and state = 'open' ${lock})
      insert into guess (vote_id, round, person, at, received_at)
      select asked.id, asked.round, given.value ->> 1, given.value ->> 2, ${now.toISOString()}
      from ${each} as given, asked
      where cast(given.value ->> 0 as integer) = asked.round
      -- In one order by all processes, or two of them could each wait for a row that the other has.
      order by given.value ->> 1
      on conflict (vote_id, round, person) do update set at = excluded.at, received_at = excluded.received_at
      returning round, person`.execute(all);
    return new Set(rows.map(keyOf));
  });
  return put.ok ? { ok: true, value: (guess) => put.value.has(keyOf(guess)) } : put;
}

/** One guess for each. */
function keyOf({ round, person }: Pick<NewGuess, "round" | "person">): string {
  return `${round} ${person}`;
}

/** Every guess of a vote, without whose it is, in no order that would tell. */
export async function guessesOf({ db }: Store, voteId: string): Promise<readonly Guess[]> {
  const rows = await db
    .selectFrom("guess")
    .select(["round", "at"])
    .where("vote_id", "=", voteId)
    .orderBy("round")
    .orderBy("at")
    .execute();
  return rows.map(({ round, at }) => ({ round, at: JSON.parse(at) as Place }));
}

/** One person's own guesses. */
export async function guessesBy({ db }: Store, voteId: string, person: string): Promise<readonly Guess[]> {
  const rows = await db
    .selectFrom("guess")
    .select(["round", "at"])
    .where("vote_id", "=", voteId)
    .where("person", "=", person)
    .execute();
  return rows.map(({ round, at }) => ({ round, at: JSON.parse(at) as Place }));
}
