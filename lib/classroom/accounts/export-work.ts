import type { Store } from "../store/store";

export const EXPORT_FORMAT = "plasterline.export/1";

/** Columns that hold JSON as text; an export shows what they say. */
const AS_JSON: readonly string[] = ["exercise", "marks", "grade", "criteria", "strokes", "at"];

/** All that is kept of a class, or of one student in it, by table. */
export type Export = {
  readonly format: typeof EXPORT_FORMAT;
  readonly made: string;
  readonly tables: Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>>;
};

/**
 * Everything the store holds about a class, or of it about one student, for whoever asks what is kept. Passwords and sessions
 * are left out: they prove who someone is, and say nothing about them.
 */
export async function exportWork(
  { db }: Store,
  classId: string,
  memberId: string | null,
  now = new Date(),
): Promise<Export> {
  const ofClass = db.selectFrom("member").where("class_id", "=", classId);
  const members = await (memberId === null ? ofClass : ofClass.where("id", "=", memberId)).selectAll().execute();
  const ids = ["", ...members.map(({ id }) => id)];
  const handIns = await db.selectFrom("hand_in").selectAll().where("member_id", "in", ids).execute();
  const homework = await db.selectFrom("homework").selectAll().where("class_id", "=", classId).execute();
  const sets = ["", ...homework.map(({ id }) => id)];
  const votes = db.selectFrom("vote").select("id").where("class_id", "=", classId);
  const guesses = db.selectFrom("guess").selectAll().where("vote_id", "in", votes);
  const tables = {
    class: await db.selectFrom("class").selectAll().where("id", "=", classId).execute(),
    member: members,
    homework,
    homework_item: await db.selectFrom("homework_item").selectAll().where("homework_id", "in", sets).execute(),
    homework_member: await db.selectFrom("homework_member").selectAll().where("member_id", "in", ids).execute(),
    hand_in: handIns,
    override: await db.selectFrom("override").selectAll().where("member_id", "in", ids).execute(),
    remark: await db
      .selectFrom("remark")
      .selectAll()
      .where("hand_in_id", "in", db.selectFrom("hand_in").select("id").where("member_id", "in", ids))
      .execute(),
    criterion_score: await db.selectFrom("criterion_score").selectAll().where("member_id", "in", ids).execute(),
    vote: memberId === null ? await db.selectFrom("vote").selectAll().where("class_id", "=", classId).execute() : [],
    guess: await (memberId === null ? guesses : guesses.where("person", "=", memberId)).execute(),
  };
  const plain = Object.entries(tables).map(([name, rows]) => [name, rows.map(opened)]);
  return { format: EXPORT_FORMAT, made: now.toISOString(), tables: Object.fromEntries(plain) };
}

function opened(row: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(row).map(([column, value]) => [column, openedValue(column, value)]));
}

function openedValue(column: string, value: unknown): unknown {
  if (typeof value !== "string" || !AS_JSON.includes(column)) return value;
  try {
    return JSON.parse(value);
  } catch {
    // The time of an override is called `at` as well, and is no JSON.
    return value;
  }
}
