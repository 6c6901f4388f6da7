import { randomUUID } from "node:crypto";
import type { Store } from "../store/store";
import type { ClassTable, MemberTable } from "../store/tables/class-tables";
import { write } from "../store/write";
import { type No, no } from "./answer";
import { makeCode } from "./code";
import { cleanName } from "./person-name";

/** A code that is taken is drawn again; of thirty million, twice in a row is a fault elsewhere. */
const MOST_DRAWS = 20;

export type ClassRow = Readonly<ClassTable> & { readonly students: number };

/** Makes a class with a code of its own. */
export async function makeClass(
  store: Store,
  teacherId: string,
  title: string,
): Promise<{ readonly ok: true; readonly classId: string; readonly code: string } | No<"no-title">> {
  const called = cleanName(title);
  if (called === "") return no("no-title", "Give the class a name, for example First year.");
  const id = randomUUID();
  const made = await write(store, async (all) => {
    for (let draw = 0; draw < MOST_DRAWS; draw++) {
      const code = makeCode();
      const put = await all
        .insertInto("class")
        .values({
          id,
          teacher_id: teacherId,
          title: called,
          code,
          keep_days: 0,
          created_at: new Date().toISOString(),
          archived: 0,
        })
        .onConflict((clash) => clash.column("code").doNothing())
        .returning("id")
        .executeTakeFirst();
      if (put) return code;
    }
    throw new Error("Codes are drawn so that a free one is soon found.");
  });
  return made.ok ? { ok: true, classId: id, code: made.value } : made;
}

/** A teacher's classes, the newest first, with how many students have a place. */
export async function classesOfTeacher({ db }: Store, teacherId: string): Promise<readonly ClassRow[]> {
  const rows = await db
    .selectFrom("class")
    .selectAll("class")
    .select((row) =>
      row
        .selectFrom("member")
        .select((count) => count.fn.countAll<number | string>().as("count"))
        .whereRef("member.class_id", "=", "class.id")
        .where("member.removed", "=", 0)
        .as("students"),
    )
    .where("teacher_id", "=", teacherId)
    .execute();
  // A count is a text from one driver and a number from the other.
  return rows
    .map((row) => ({ ...row, students: Number(row.students) }))
    .sort((a, b) => (a.created_at < b.created_at ? 1 : -1));
}

export type StudentsClass = {
  readonly memberId: string;
  readonly classId: string;
  readonly title: string;
  readonly name: string;
};

/** The classes a student is in, by the time they joined. */
export async function classesOfStudent({ db }: Store, userId: string): Promise<readonly StudentsClass[]> {
  return db
    .selectFrom("member")
    .innerJoin("class", "class.id", "member.class_id")
    .select(["member.id as memberId", "class.id as classId", "class.title", "member.name"])
    .where("member.user_id", "=", userId)
    .where("member.removed", "=", 0)
    .where("class.archived", "=", 0)
    .orderBy("member.joined_at")
    .execute();
}

/** One class with the places in it, by name. */
export async function classWithMembers(
  { db }: Store,
  classId: string,
): Promise<{ readonly row: Readonly<ClassTable>; readonly members: readonly Readonly<MemberTable>[] } | undefined> {
  const row = await db.selectFrom("class").selectAll().where("id", "=", classId).executeTakeFirst();
  if (!row) return undefined;
  const members = await db
    .selectFrom("member")
    .selectAll()
    .where("class_id", "=", classId)
    .where("removed", "=", 0)
    .execute();
  // Databases sort letters each in their own way.
  return { row, members: members.sort((a, b) => a.name.localeCompare(b.name, "en")) };
}
