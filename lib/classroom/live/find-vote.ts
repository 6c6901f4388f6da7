import type { Subject } from "../access/person";
import { cleanCode } from "../accounts/as-written";
import { countTry, type Limit } from "../accounts/tries";
import type { Store } from "../store/store";
import type { VoteTable } from "../store/tables/class-tables";

/** A vote's code lets people in for so long: a lesson, and no evening of trying codes. */
const CODE_HOURS = 4;
const HOUR_MS = 60 * 60 * 1000;

/**
 * Codes tried from one address, right and wrong: a full hall behind one router comes in, and who tries codes has one chance in
 * a thousand while one is fresh (eighteen letters to the sixth are thirty-four million). All that is won is a guest's place.
 */
export const VOTE_CODE_LIMIT: Limit = { name: "vote-code", most: 1500, seconds: 15 * 60 };

/** Votes opened after this may be joined. */
export function freshSince(now: Date): string {
  return new Date(now.getTime() - CODE_HOURS * HOUR_MS).toISOString();
}

export type Vote = Readonly<VoteTable>;

/** A vote with whose class it is, for the question who may. */
export async function findVote(
  { db }: Store,
  voteId: string,
): Promise<{ readonly vote: Vote; readonly subject: Subject } | undefined> {
  const row = await db
    .selectFrom("vote")
    .innerJoin("class", "class.id", "vote.class_id")
    .selectAll("vote")
    .select("class.teacher_id as teacherId")
    .where("vote.id", "=", voteId)
    .executeTakeFirst();
  if (!row) return undefined;
  const { teacherId, ...vote } = row;
  return { vote, subject: { classId: vote.class_id, teacherId } };
}

/** Whose class a vote belongs to, without the exercise that it carries: asked for with every guess. */
export async function voteSubject({ db }: Store, voteId: string): Promise<Subject | undefined> {
  return db
    .selectFrom("vote")
    .innerJoin("class", "class.id", "vote.class_id")
    .select(["class.id as classId", "class.teacher_id as teacherId"])
    .where("vote.id", "=", voteId)
    .executeTakeFirst();
}

export type FoundByCode =
  | { readonly kind: "found"; readonly vote: Vote }
  | { readonly kind: "unknown" }
  | { readonly kind: "too-many"; readonly waitS: number };

/** The vote of a code as people write it, while the code still lets people in. */
export async function findVoteByCode(
  store: Store,
  written: string,
  address: string,
  now = new Date(),
): Promise<FoundByCode> {
  const tried = await countTry(store, VOTE_CODE_LIMIT, address, now);
  if (!tried.allowed) return { kind: "too-many", waitS: tried.waitS };
  const vote = await store.db
    .selectFrom("vote")
    .selectAll()
    .where("code", "=", cleanCode(written))
    .where("opened_at", ">", freshSince(now))
    .executeTakeFirst();
  return vote ? { kind: "found", vote } : { kind: "unknown" };
}

/** The code of the vote that its class has gone on to, if there is one. */
export async function nextCode(
  { db }: Store,
  vote: Pick<Vote, "id" | "class_id" | "opened_at">,
): Promise<string | null> {
  const next = await db
    .selectFrom("vote")
    .select("code")
    .where("class_id", "=", vote.class_id)
    .where("id", "<>", vote.id)
    .where("opened_at", ">=", vote.opened_at)
    .orderBy("opened_at", "desc")
    .limit(1)
    .executeTakeFirst();
  return next?.code ?? null;
}

/** A class's votes, the newest first. */
export async function votesOfClass({ db }: Store, classId: string): Promise<readonly Vote[]> {
  return db.selectFrom("vote").selectAll().where("class_id", "=", classId).orderBy("opened_at", "desc").execute();
}
