import { randomUUID } from "node:crypto";
import { type No, no } from "../accounts/answer";
import type { Store } from "../store/store";
import { write } from "../store/write";
import { type ListedStudent, readClassList } from "./read-class-list";

/** Places in one class, as many as may join it. */
const MOST_MEMBERS = 500;
/** Lines that are looked at; the longest register of a school is shorter. */
const MOST_LINES = 2000;

export type Imported = {
  readonly ok: true;
  readonly students: readonly ListedStudent[];
  /** How many places were made: 0 while it is only looked at. */
  readonly put: number;
};

/**
 * Reads a class list and, if asked, makes a place for everyone in it without trouble. The places wait for their students,
 * who take them by joining with the same name. Sent twice, the second time finds all in the class.
 */
export async function importMembers(
  store: Store,
  { classId, text, put }: { readonly classId: string; readonly text: string; readonly put: boolean },
): Promise<Imported | No<"no-names" | "too-long" | "class-full">> {
  if (text.split(/\r\n|\n|\r/).length > MOST_LINES)
    return no("too-long", `A list has at most ${MOST_LINES} lines. Leave out what is no student.`);
  const done = await write(store, async (all): Promise<Imported | No<"no-names" | "class-full">> => {
    const ofClass = all.selectFrom("class").select("id").where("id", "=", classId);
    // As in joining: two lists at the same moment take turns.
    await (store.engine === "postgres" ? ofClass.forUpdate() : ofClass).execute();
    const members = await all.selectFrom("member").select("name").where("class_id", "=", classId).execute();
    const students = readClassList(
      text,
      members.map(({ name }) => name),
    );
    if (students.length === 0)
      return no(
        "no-names",
        "No name was found in it. Write one student on each line, with a number after a comma if you like.",
      );
    const fresh = students.filter(({ trouble }) => trouble === "none");
    if (members.length + fresh.length > MOST_MEMBERS)
      return no("class-full", `A class has at most ${MOST_MEMBERS} places, and this would be more.`);
    if (!put || fresh.length === 0) return { ok: true, students, put: 0 };
    const rows = fresh.map(({ name, number }) => ({
      id: randomUUID(),
      class_id: classId,
      user_id: null,
      name,
      number,
      joined_at: null,
      removed: 0 as const,
    }));
    await all.insertInto("member").values(rows).execute();
    return { ok: true, students, put: rows.length };
  });
  return done.ok ? done.value : done;
}
