import { sql } from "kysely";
import { describe, expect, it } from "vitest";
import { makeGuessBatches } from "@/lib/classroom/live/guess-batches";
import { moveVote } from "@/lib/classroom/live/move-vote";
import { openVote } from "@/lib/classroom/live/open-vote";
import { guessesBy, guessesOf, putGuesses } from "@/lib/classroom/live/put-guesses";
import { makeVoteSubjects } from "@/lib/classroom/live/vote-subjects";
import type { Store } from "@/lib/classroom/store/store";
import { hasPostgres, onBothEngines, opened, storesOf } from "../engines";
import { putSmallClass } from "../store/small-class";
import { liveExercise } from "./live-exercise";

const exercise = liveExercise();

async function openOne(store: Store, point = "B.foot") {
  const vote = await openVote(store, { classId: "class", exercise, point });
  if (!vote.ok) throw new Error(vote.sentence);
  return vote.voteId;
}

async function oneVote(store: Store) {
  await putSmallClass(store);
  return openOne(store);
}

/** The store, with a count of its transactions. */
function counted(store: Store) {
  let transactions = 0;
  const db = new Proxy(store.db, {
    get: (target, name) => {
      if (name === "transaction") transactions++;
      const value: unknown = Reflect.get(target, name, target);
      return typeof value === "function" ? value.bind(target) : value;
    },
  });
  return { store: { ...store, db }, transactions: () => transactions };
}

const people = (many: number) => Array.from({ length: many }, (_, i) => `guest-${i}`);

onBothEngines("guesses in batches", ({ engine, newStore }) => {
  it("are kept together, told of once, and each of them is there", async () => {
    const real = await newStore();
    const voteId = await oneVote(real);
    const { store, transactions } = counted(real);
    const told: string[] = [];
    const { take } = makeGuessBatches(store, (vote) => told.push(vote));
    const answers = await Promise.all(
      people(200).map((person, i) => take(voteId, { round: 1, person, at: [i, i + 1] })),
    );
    expect(answers).toEqual(answers.map(() => ({ ok: true })));
    // The first goes at once, and all the others came while it was kept.
    expect(transactions()).toBe(2);
    expect(told).toEqual([voteId, voteId]);
    const kept = (await guessesOf(real, voteId)).map(({ at: [x, y] }) => [x, y]);
    expect(kept.sort(([a = 0], [b = 0]) => a - b)).toEqual(people(200).map((_, i) => [i, i + 1]));
  });

  it("fail and succeed each by itself", async () => {
    const store = await newStore();
    const voteId = await oneVote(store);
    const told: string[] = [];
    const { take } = makeGuessBatches(store, (vote) => told.push(vote));
    const first = take(voteId, { round: 1, person: "first", at: [0, 0] });
    const [early, good, again, moved] = await Promise.all([
      take(voteId, { round: 2, person: "early", at: [1, 1] }),
      take(voteId, { round: 1, person: "good", at: [1 / 3, -0.1] }),
      take(voteId, { round: 1, person: "again", at: [5, 5] }),
      take(voteId, { round: 1, person: "again", at: [6, 6] }),
    ]);
    expect(await first).toEqual({ ok: true });
    expect(early).toMatchObject({ ok: false, reason: "not-open" });
    expect([good, again, moved]).toEqual([{ ok: true }, { ok: true }, { ok: true }]);
    expect(await guessesBy(store, voteId, "good")).toEqual([{ round: 1, at: [1 / 3, -0.1] }]);
    expect(await guessesBy(store, voteId, "again")).toEqual([{ round: 1, at: [6, 6] }]);
    expect(await guessesBy(store, voteId, "early")).toEqual([]);
    expect(await take("no vote", { round: 1, person: "good", at: [0, 0] })).toMatchObject({ reason: "not-open" });
    expect(new Set(told)).toEqual(new Set([voteId]));
  });

  it("leave the one out that the database refuses", async () => {
    const store = await newStore();
    const voteId = await oneVote(store);
    // A row that breaks the whole statement, as a mistake of the program's might.
    await (engine === "postgres"
      ? sql`alter table guess add constraint no_wolf check (person <> 'wolf')`.execute(store.db)
      : sql`create trigger no_wolf before insert on guess when new.person = 'wolf' begin select raise(abort, 'no wolf'); end`.execute(
          store.db,
        ));
    const { take } = makeGuessBatches(store, () => {});
    const herd = [...people(20), "wolf", ...people(40).slice(20)];
    const answers = await Promise.allSettled(herd.map((person, i) => take(voteId, { round: 1, person, at: [i, i] })));
    expect(answers.map(({ status }) => status)).toEqual(
      herd.map((person) => (person === "wolf" ? "rejected" : "fulfilled")),
    );
    expect(await guessesOf(store, voteId)).toHaveLength(40);
    expect(await take(voteId, { round: 1, person: "lamb", at: [0, 0] })).toEqual({ ok: true });
  });

  it("are acknowledged only when they are there for everyone, and none is lost to a reveal", async () => {
    const store = await newStore();
    const voteId = await oneVote(store);
    const { take } = makeGuessBatches(store, () => {});
    // Each looks for its own mark at the very moment it is acknowledged.
    const seen = people(120).map(async (person, i) => {
      if (i % 3 === 0) await new Promise((resolve) => setTimeout(resolve, i / 3));
      const taken = await take(voteId, { round: 1, person, at: [i, i] });
      return { taken: taken.ok, kept: (await guessesBy(store, voteId, person)).length === 1 };
    });
    await new Promise((resolve) => setTimeout(resolve, 25));
    const shown = moveVote(store, { voteId, round: 1, move: "show" }).then(async (moved) => {
      expect(moved.ok).toBe(true);
      return (await guessesOf(store, voteId)).length;
    });
    const all = await Promise.all(seen);
    expect(all.filter(({ taken, kept }) => taken !== kept)).toEqual([]);
    const acknowledged = all.filter(({ taken }) => taken).length;
    expect(acknowledged).toBeGreaterThan(0);
    expect(await shown).toBe(acknowledged);
    expect(await guessesOf(store, voteId)).toHaveLength(acknowledged);
  });

  it("are all refused in the store's own words when it cannot be written", async () => {
    const store = await newStore();
    const voteId = await oneVote(store);
    const { take } = makeGuessBatches({ ...store, stillThere: () => false }, () => {
      throw new Error("Nothing was kept.");
    });
    const answers = await Promise.all(people(5).map((person) => take(voteId, { round: 1, person, at: [1, 1] })));
    for (const answer of answers) expect(answer).toMatchObject({ ok: false, reason: "lost" });
    expect(await guessesOf(store, voteId)).toEqual([]);
  });

  it("close with the vote that another one takes over from, none left out", async () => {
    const store = await newStore();
    const voteId = await oneVote(store);
    const { take } = makeGuessBatches(store, () => {});
    const answers = people(60).map((person, i) => take(voteId, { round: 1, person, at: [i, i] }));
    const next = openOne(store, "C.foot").then(async () => (await guessesOf(store, voteId)).length);
    const acknowledged = (await Promise.all(answers)).filter(({ ok }) => ok).length;
    expect(await next).toBe(acknowledged);
  });

  it("ask whose vote it is once in a while, and never keep that there is none", async () => {
    const store = await newStore();
    let now = 0;
    const subjectOf = makeVoteSubjects(store, () => now);
    expect(await subjectOf("soon")).toBeUndefined();
    const voteId = await oneVote(store);
    await store.db.updateTable("vote").set({ id: "soon" }).where("id", "=", voteId).execute();
    expect(await subjectOf("soon")).toEqual({ classId: "class", teacherId: "teacher" });
    await store.db.deleteFrom("vote").execute();
    expect(await subjectOf("soon")).toEqual({ classId: "class", teacherId: "teacher" });
    now = 60_000;
    expect(await subjectOf("soon")).toBeUndefined();
  });
});

describe.skipIf(!hasPostgres)("guesses in batches of two processes, PostgreSQL", () => {
  it("are one guess for each person, whoever takes them, and never wait for each other in a ring", async () => {
    const { newPlace } = storesOf("postgres");
    const place = await newPlace();
    const [here, there] = [await opened(place), await opened(place)];
    const voteId = await oneVote(here);
    const everyone = people(80);
    const forth = everyone.map((person) => ({ round: 1, person, at: [1, 1] as const }));
    const back = [...everyone].reverse().map((person) => ({ round: 1, person, at: [2, 2] as const }));
    for (let i = 0; i < 10; i++) {
      const [one, other] = await Promise.all([putGuesses(here, voteId, forth), putGuesses(there, voteId, back)]);
      if (!one.ok || !other.ok) throw new Error("Both are kept.");
      expect(everyone.every((person) => one.value({ round: 1, person, at: [1, 1] }))).toBe(true);
    }
    const kept = await guessesOf(here, voteId);
    expect(kept).toHaveLength(80);
    // The later batch is the later one for everybody.
    expect(new Set(kept.map(({ at }) => at.join())).size).toBe(1);

    const [ours, theirs] = [makeGuessBatches(here, () => {}), makeGuessBatches(there, () => {})];
    const more = people(200).map((person, i) =>
      (i % 2 ? ours : theirs).take(voteId, { round: 1, person: `more-${person}`, at: [i, i] }),
    );
    const shown = moveVote(there, { voteId, round: 1, move: "show" }).then(() => guessesOf(there, voteId));
    const acknowledged = (await Promise.all(more)).filter(({ ok }) => ok).length;
    expect(await shown).toHaveLength(80 + acknowledged);
    for (const store of [here, there]) await store.close();
  });
});
