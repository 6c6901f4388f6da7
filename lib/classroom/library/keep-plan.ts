import type { Kysely } from "kysely";
import { type No, no } from "../accounts/answer";
import { cleanName } from "../accounts/person-name";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import type { PlanTable } from "../store/tables/plan-tables";
import { write } from "../store/write";
import { LONGEST_WORDS, MOST_BYTES, MOST_PLANS } from "./library-limits";
import { bytesOf, lockLibrary } from "./lock-library";
import { putVersion } from "./put-version";
import { readText } from "./read-text";

export type ToKeep = {
  readonly ownerId: string;
  readonly planId: string;
  /** The edition that the change was made on; 0 for a plan that is kept for the first time. */
  readonly base: number;
  readonly text: string;
  readonly words: string;
};

/** What is in the library now, and where what was sent stands in it. */
export type Kept = {
  readonly ok: true;
  /** `beside`: another browser's change is the plan, which this one had not seen; what was sent is one of its versions. */
  readonly kept: "plan" | "beside";
  readonly edition: number;
  readonly changedAt: string;
};

export type NotKept = No<"bad-plan" | "gone" | "no-room">;

const GONE = no("gone", "This plan is in your library no more. Keep it as a new one.");
const NO_ROOM = no(
  "no-room",
  "Your library is full: its plans and versions take 64 MiB. Erase some that you no longer need, then keep this one.",
);
const TOO_MANY = no(
  "no-room",
  `Your library is full: it has ${MOST_PLANS} plans, those thrown away among them. Erase one, then keep this one.`,
);

/**
 * Keeps a plan in its teacher's library. What was the plan before becomes a version. A change that was made on an older edition
 * than the one that is there puts nothing in its place: both are kept. The same text sent twice is kept once.
 */
export async function keepPlan(store: Store, wanted: ToKeep, now = new Date()): Promise<Kept | NotKept> {
  const read = readText(wanted.text);
  if (!read.ok) return read;
  const at = now.toISOString();
  const words = cleanName(wanted.words).slice(0, LONGEST_WORDS);
  const sent = { text: wanted.text, title: read.exercise.title, bytes: read.bytes, words };
  const written = await write(store, async (all): Promise<Kept | NotKept> => {
    await lockLibrary(all, store.engine, wanted.ownerId);
    const row = await all.selectFrom("plan").selectAll().where("id", "=", wanted.planId).executeTakeFirst();
    if (!row) return wanted.base > 0 ? GONE : putNew(all, wanted, sent, at);
    if (row.owner_id !== wanted.ownerId) return GONE;
    if (row.text === wanted.text) return keepSame(all, row, words);
    if (row.edition === wanted.base) return putOver(all, row, sent, at);
    return (await putBeside(all, row, sent, at))
      ? { ok: true, kept: "beside", edition: row.edition, changedAt: row.changed_at }
      : NO_ROOM;
  });
  return written.ok ? written.value : written;
}

type Sent = Readonly<Pick<PlanTable, "text" | "title" | "bytes" | "words">>;
type Row = Readonly<PlanTable>;

async function putNew(
  all: Kysely<Tables>,
  { planId, ownerId }: ToKeep,
  sent: Sent,
  at: string,
): Promise<Kept | NotKept> {
  const { plans } = await all
    .selectFrom("plan")
    .select(({ fn }) => fn.countAll<number | string>().as("plans"))
    .where("owner_id", "=", ownerId)
    .executeTakeFirstOrThrow();
  if (Number(plans) >= MOST_PLANS) return TOO_MANY;
  if ((await bytesOf(all, ownerId)) + sent.bytes > MOST_BYTES) return NO_ROOM;
  await all
    .insertInto("plan")
    .values({
      id: planId,
      owner_id: ownerId,
      ...sent,
      edition: 1,
      made_at: at,
      changed_at: at,
      thrown_at: null,
      share_word: null,
    })
    .execute();
  return { ok: true, kept: "plan", edition: 1, changedAt: at };
}

/** Nothing of the plan has changed. Words that are new are kept with it, and one thrown away is taken back. */
async function keepSame(all: Kysely<Tables>, row: Row, words: string): Promise<Kept> {
  await all
    .updateTable("plan")
    .set({ words: words || row.words, thrown_at: null })
    .where("id", "=", row.id)
    .execute();
  return { ok: true, kept: "plan", edition: row.edition, changedAt: row.changed_at };
}

/** Puts a text in the plan's place, within the caller's transaction; what was there becomes a version. */
export async function putOver(all: Kysely<Tables>, row: Row, sent: Sent, at: string): Promise<Kept | NotKept> {
  const { id: planId, owner_id: ownerId, text, bytes, words, changed_at } = row;
  const earlier = { text, bytes, words, at: changed_at, beside: 0 as const };
  if (!(await putVersion(all, { planId, ownerId, more: sent.bytes }, earlier))) return NO_ROOM;
  // What lay beside the plan and is the plan now does not lie beside it as well.
  await all
    .deleteFrom("plan_version")
    .where("plan_id", "=", planId)
    .where("beside", "=", 1)
    .where("text", "=", sent.text)
    .execute();
  const edition = row.edition + 1;
  await all
    .updateTable("plan")
    .set({ ...sent, edition, changed_at: at, thrown_at: null })
    .where("id", "=", planId)
    .execute();
  return { ok: true, kept: "plan", edition, changedAt: at };
}

/** False where there is no room. What lies beside the plan already is not put there twice. */
async function putBeside(all: Kysely<Tables>, row: Row, { text, bytes, words }: Sent, at: string): Promise<boolean> {
  const there = await all
    .selectFrom("plan_version")
    .select("id")
    .where("plan_id", "=", row.id)
    .where("text", "=", text)
    .executeTakeFirst();
  if (there) return true;
  return putVersion(all, { planId: row.id, ownerId: row.owner_id, more: bytes }, { text, bytes, words, at, beside: 1 });
}
