import type { Store } from "../store/store";
import { type Written, write } from "../store/write";
import type { WordKind } from "./one-time-word";

export type WordRow = {
  readonly id: string;
  readonly kind: WordKind;
  /** Whose way back it is, or whom an invitation let in; null while nobody has come in by it. */
  readonly whose: string | null;
  readonly madeBy: string | null;
  readonly note: string;
  readonly expiresAt: string;
  readonly usedAt: string | null;
  readonly state: "open" | "used" | "over";
  /** Whether it was made by the one who asks. */
  readonly own: boolean;
};

/** The names of all who teach here. */
export async function teachersHere({ db }: Store): Promise<readonly string[]> {
  const rows = await db.selectFrom("user").select("name").where("role", "=", "teacher").execute();
  // Databases sort letters each in their own way.
  return rows.map(({ name }) => name).sort((a, b) => a.localeCompare(b, "en"));
}

/** The words a teacher has made, and the ways back that others made for them; the newest first. */
export async function wordsOfTeacher({ db }: Store, teacherId: string, now = new Date()): Promise<readonly WordRow[]> {
  const rows = await db
    .selectFrom("one_time_word")
    .leftJoin("user as person", "person.id", "one_time_word.for_user")
    .leftJoin("user as maker", "maker.id", "one_time_word.made_by")
    .select(["one_time_word.id", "kind", "note", "made_by", "made_at", "expires_at", "used_at"])
    .select(["person.name as whose", "maker.name as madeBy"])
    .where(({ or, and, eb }) =>
      or([eb("made_by", "=", teacherId), and([eb("kind", "=", "way-back"), eb("for_user", "=", teacherId)])]),
    )
    .execute();
  return rows
    .sort((a, b) => (a.made_at < b.made_at ? 1 : -1))
    .map(({ id, kind, note, whose, madeBy, made_by, expires_at, used_at }) => ({
      id,
      kind,
      note,
      whose,
      madeBy,
      own: made_by === teacherId,
      expiresAt: expires_at,
      usedAt: used_at,
      state: used_at !== null ? "used" : expires_at > now.toISOString() ? "open" : "over",
    }));
}

/** Takes a word back that nobody has used: it does not work any more, and is off the list. */
export async function withdrawWord(store: Store, wordId: string): Promise<Written<unknown>> {
  return write(store, (all) =>
    all.deleteFrom("one_time_word").where("id", "=", wordId).where("used_at", "is", null).execute(),
  );
}
