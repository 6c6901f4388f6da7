import { randomUUID } from "node:crypto";
import type { Exercise } from "../../exercise/exercise";
import { type No, no } from "../accounts/answer";
import { makeClass } from "../accounts/classes";
import { makeCode } from "../accounts/code";
import type { Store } from "../store/store";
import { write } from "../store/write";
import { freshSince } from "./find-vote";
import { freezeExercise } from "./freeze-exercise";
import { placeStep } from "./place-step";
import { FIRST_STAGE } from "./vote-stage";

/** A code that is taken is drawn again. */
const MOST_DRAWS = 20;

/** The class that a teacher who has none gets, so that everyone can place it before a list of names is made. */
const FIRST_CLASS = "My class";

export type OpenedVote = {
  readonly ok: true;
  readonly voteId: string;
  readonly code: string;
  readonly classId: string;
  /** The votes of the class that phones may still be at: they are closed now, and go on to this one. */
  readonly before: readonly string[];
};

/**
 * Opens a vote on one point of an exercise. A class has one open vote: the ones before it are closed, and the phones that were
 * at them go on to the new one.
 */
export async function openVote(
  store: Store,
  asked: { readonly classId: string; readonly exercise: Exercise; readonly point: string },
  now = new Date(),
): Promise<OpenedVote | No<"no-point">> {
  const { classId, exercise, point } = asked;
  if (!placeStep(exercise, point)) return no("no-point", "This exercise does not ask for that point.");
  const voteId = randomUUID();
  const frozen = freezeExercise(exercise);
  const opened = await write(store, async (all) => {
    await all
      .updateTable("vote")
      .set({ state: "closed" })
      .where("class_id", "=", classId)
      .where("state", "<>", "closed")
      .execute();
    const before = await all
      .selectFrom("vote")
      .select("id")
      .where("class_id", "=", classId)
      .where("opened_at", ">", freshSince(now))
      .execute();
    for (let draw = 0; draw < MOST_DRAWS; draw++) {
      const code = makeCode();
      const put = await all
        .insertInto("vote")
        .values({
          id: voteId,
          class_id: classId,
          exercise: frozen,
          point,
          ...FIRST_STAGE,
          code,
          opened_at: now.toISOString(),
        })
        .onConflict((clash) => clash.column("code").doNothing())
        .returning("id")
        .executeTakeFirst();
      if (put) return { code, before: before.map(({ id }) => id) };
    }
    throw new Error("Codes are drawn so that a free one is soon found.");
  });
  return opened.ok ? { ok: true, voteId, classId, ...opened.value } : opened;
}

/** The class that a teacher's vote is opened in when none is named: the newest, or one made on the spot. */
export async function classForVote(store: Store, teacherId: string): Promise<string | null> {
  const newest = await store.db
    .selectFrom("class")
    .select("id")
    .where("teacher_id", "=", teacherId)
    .where("archived", "=", 0)
    .orderBy("created_at", "desc")
    .limit(1)
    .executeTakeFirst();
  if (newest) return newest.id;
  const made = await makeClass(store, teacherId, FIRST_CLASS);
  return made.ok ? made.classId : null;
}
