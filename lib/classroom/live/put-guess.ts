import { sql } from "kysely";
import { type No, no } from "../accounts/answer";
import type { Store } from "../store/store";
import { write } from "../store/write";
import type { Place } from "./cloud";
import type { Guess } from "./vote-result";

/**
 * Keeps someone's guess for the open round: one for each person and round, of which the later counts. It is taken or not by
 * what the vote is at that moment: once the marks are shown, none comes after them.
 *
 * @param at picture metres, or plan metres where the plan is read back
 */
export async function putGuess(
  store: Store,
  guess: { readonly voteId: string; readonly round: number; readonly person: string; readonly at: Place },
  now = new Date(),
): Promise<{ readonly ok: true } | No<"not-open">> {
  const { voteId, round, person, at } = guess;
  const [place, received] = [JSON.stringify([at[0], at[1]]), now.toISOString()];
  // A reveal waits for guesses under way: PostgreSQL has it so by a lock on the vote, SQLite takes one at a time anyway.
  const lock = store.engine === "postgres" ? sql`for key share` : sql``;
  const put = await write(store, async (all) => {
    const { rows } = await sql<{ person: string }>`
      with asked as (
        select id, round from vote where id = ${voteId} and round = ${round} and state = 'open' ${lock}
      )
      insert into guess (vote_id, round, person, at, received_at)
      select asked.id, asked.round, ${person}, ${place}, ${received} from asked
      where true -- or SQLite takes what follows for the condition of a join
      on conflict (vote_id, round, person) do update set at = excluded.at, received_at = excluded.received_at
      returning person`.execute(all);
    return rows.length === 1;
  });
  if (!put.ok) return put;
  return put.value ? { ok: true } : no("not-open", "Marks are not taken just now. Look at the screen at the front.");
}

/** How many people have placed their mark in a round. */
export async function countGuesses({ db }: Store, voteId: string, round: number): Promise<number> {
  const { count } = await db
    .selectFrom("guess")
    .select((row) => row.fn.countAll<number | string>().as("count"))
    .where("vote_id", "=", voteId)
    .where("round", "=", round)
    .executeTakeFirstOrThrow();
  return Number(count);
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
