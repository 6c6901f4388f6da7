import { expect, it } from "vitest";
import { findVote, findVoteByCode, nextCode, VOTE_CODE_LIMIT, votesOfClass } from "@/lib/classroom/live/find-vote";
import { thawExercise } from "@/lib/classroom/live/freeze-exercise";
import { liveState } from "@/lib/classroom/live/live-state";
import { moveVote } from "@/lib/classroom/live/move-vote";
import { classForVote, openVote } from "@/lib/classroom/live/open-vote";
import { guessesBy, guessesOf } from "@/lib/classroom/live/put-guesses";
import type { Store } from "@/lib/classroom/store/store";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { onBothEngines } from "../engines";
import { putSmallClass } from "../store/small-class";
import { liveExercise } from "./live-exercise";
import { putGuess } from "./put-guess";

const exercise = liveExercise();
const HERE = "192.0.2.7";

async function openOne(store: Store, point = "B.foot") {
  const vote = await openVote(store, { classId: "class", exercise, point });
  if (!vote.ok) throw new Error(vote.sentence);
  return vote;
}

onBothEngines("votes", ({ newStore }) => {
  it("opens with the exercise as it is, and is found by its code while that is fresh", async () => {
    const store = await newStore();
    await putSmallClass(store);
    const { voteId, code } = await openOne(store);
    const found = await findVoteByCode(store, ` ${code.toLowerCase().slice(0, 3)}-${code.slice(3)}`, HERE);
    if (found.kind !== "found") throw new Error("A right code finds the vote.");
    expect(found.vote).toMatchObject({ id: voteId, point: "B.foot", round: 1, state: "open" });
    expect(thawExercise(found.vote.exercise)).toEqual(exercise);
    expect((await findVote(store, voteId))?.subject).toEqual({ classId: "class", teacherId: "teacher" });
    const tomorrow = new Date(Date.now() + 24 * 60 * 60 * 1000);
    expect(await findVoteByCode(store, code, HERE, tomorrow)).toEqual({ kind: "unknown" });
    expect(await openVote(store, { classId: "class", exercise, point: "A.foot" })).toMatchObject({
      ok: false,
      reason: "no-point",
    });
  });

  it("lets a full hall in from one address, and stops whoever tries codes there, right ones too", async () => {
    const store = await newStore();
    await putSmallClass(store);
    const { code } = await openOne(store);
    for (let i = 0; i < 5; i++) expect((await findVoteByCode(store, code, HERE)).kind).toBe("found");
    expect((await findVoteByCode(store, "QQQQQQ", HERE)).kind).toBe("unknown");
    expect(VOTE_CODE_LIMIT.most).toBeGreaterThan(1000);
    await store.db.updateTable("tries").set({ count: VOTE_CODE_LIMIT.most }).execute();
    expect((await findVoteByCode(store, code, HERE)).kind).toBe("too-many");
    expect((await findVoteByCode(store, code, "192.0.2.8")).kind).toBe("found");
  });

  it("keeps one guess for each person and round, the later one, and none when marks are not taken", async () => {
    const store = await newStore();
    await putSmallClass(store);
    const { voteId } = await openOne(store);
    const put = (person: string, round: number, at: readonly [number, number]) =>
      putGuess(store, { voteId, round, person, at });
    expect(await put("wim", 1, [1, 2])).toEqual({ ok: true });
    expect(await put("wim", 1, [1, 2])).toEqual({ ok: true });
    expect(await put("wim", 1, [-0.1, 1 / 3])).toEqual({ ok: true });
    expect(await put("guest-a", 1, [3, 4])).toEqual({ ok: true });
    expect(await put("guest-b", 2, [3, 4])).toMatchObject({ ok: false, reason: "not-open" });
    expect((await liveState(store, voteId))?.placed).toBe(2);
    expect(await guessesBy(store, voteId, "wim")).toEqual([{ round: 1, at: [-0.1, 1 / 3] }]);

    expect(await moveVote(store, { voteId, round: 1, move: "show" })).toMatchObject({ ok: true, state: "revealed" });
    expect(await put("wim", 1, [9, 9])).toMatchObject({ ok: false, reason: "not-open" });
    // A press sent twice does nothing more.
    expect(await moveVote(store, { voteId, round: 1, move: "show" })).toMatchObject({ ok: false, reason: "elsewhere" });
    expect(await moveVote(store, { voteId, round: 1, move: "again" })).toMatchObject({ ok: true, round: 2 });
    expect(await moveVote(store, { voteId, round: 1, move: "again" })).toMatchObject({ ok: false });
    expect(await put("wim", 1, [9, 9])).toMatchObject({ ok: false });
    expect(await put("wim", 2, [5, 6])).toEqual({ ok: true });
    expect(await moveVote(store, { voteId, round: 2, move: "tell" })).toMatchObject({ ok: true, state: "closed" });
    expect(await guessesOf(store, voteId)).toEqual([
      { round: 1, at: [-0.1, 1 / 3] },
      { round: 1, at: [3, 4] },
      { round: 2, at: [5, 6] },
    ]);
  });

  it("loses no guess that was acknowledged before the marks were shown, and takes none after", async () => {
    const store = await newStore();
    await putSmallClass(store);
    const { voteId } = await openOne(store);
    const people = Array.from({ length: 60 }, (_, i) => `guest-${i}`);
    const guesses = people.map((person, i) => putGuess(store, { voteId, round: 1, person, at: [i, i] }));
    const shown = moveVote(store, { voteId, round: 1, move: "show" }).then(async (moved) => {
      expect(moved.ok).toBe(true);
      return guessesOf(store, voteId);
    });
    const answers = await Promise.all(guesses);
    const acknowledged = answers.filter(({ ok }) => ok).length;
    expect((await shown).length).toBe(acknowledged);
    expect(await guessesOf(store, voteId)).toHaveLength(acknowledged);
  });

  it("tells the truth to nobody before it is shown, and where the class goes on after", async () => {
    const store = await newStore();
    await putSmallClass(store);
    const { voteId } = await openOne(store);
    await putGuess(store, { voteId, round: 1, person: "wim", at: [1, 1] });
    expect(await liveState(store, voteId)).toEqual({
      round: 1,
      state: "open",
      placed: 1,
      truth: null,
      toleranceMm: null,
      next: null,
    });
    await moveVote(store, { voteId, round: 1, move: "show" });
    expect(await liveState(store, voteId)).toMatchObject({ state: "revealed", truth: null });
    const next = await openOne(store, "C.foot");
    expect(next.before).toEqual([voteId]);
    expect(await liveState(store, voteId)).toMatchObject({
      state: "closed",
      truth: exercisePoints(exercise).get("B.foot")?.picture,
      next: next.code,
    });
    expect(await liveState(store, next.voteId)).toMatchObject({ state: "open", placed: 0, next: null });
    expect((await votesOfClass(store, "class")).map(({ id }) => id).sort()).toEqual([voteId, next.voteId].sort());
    const first = await findVote(store, voteId);
    expect(first && (await nextCode(store, first.vote))).toBe(next.code);
    expect(await liveState(store, "nothing")).toBeNull();
  });

  it("gives a teacher without a class one to vote in, once", async () => {
    const store = await newStore();
    await putSmallClass(store);
    expect(await classForVote(store, "teacher")).toBe("class");
    await store.db.deleteFrom("class").execute();
    const made = await classForVote(store, "teacher");
    expect(made).toEqual(expect.any(String));
    expect(await classForVote(store, "teacher")).toBe(made);
  });
});
