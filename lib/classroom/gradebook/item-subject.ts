import type { Subject } from "../access/person";
import type { Store } from "../store/store";

/** A student's place at one exercise as something to ask about; nothing when the two are not of one class. */
export async function itemSubject(
  { db }: Store,
  { itemId, memberId }: { readonly itemId: string; readonly memberId: string },
): Promise<Subject | undefined> {
  return db
    .selectFrom("homework_item")
    .innerJoin("homework", "homework.id", "homework_item.homework_id")
    .innerJoin("class", "class.id", "homework.class_id")
    .innerJoin("member", "member.class_id", "class.id")
    .select(["class.id as classId", "class.teacher_id as teacherId", "member.id as memberId"])
    .where("homework_item.id", "=", itemId)
    .where("member.id", "=", memberId)
    .executeTakeFirst();
}

/** A student's place at one homework as something to ask about. */
export async function homeworkSubject(
  { db }: Store,
  { homeworkId, memberId }: { readonly homeworkId: string; readonly memberId?: string },
): Promise<Subject | undefined> {
  const found = await db
    .selectFrom("homework")
    .innerJoin("class", "class.id", "homework.class_id")
    .select(["class.id as classId", "class.teacher_id as teacherId"])
    .where("homework.id", "=", homeworkId)
    .executeTakeFirst();
  if (!found || memberId === undefined) return found;
  const member = await db
    .selectFrom("member")
    .select("id")
    .where("id", "=", memberId)
    .where("class_id", "=", found.classId)
    .executeTakeFirst();
  return member ? { ...found, memberId } : undefined;
}

/** A student's attempt as something to ask about, leaving aside whether results are out. */
export async function handInSubject({ db }: Store, handInId: string): Promise<Subject | undefined> {
  return db
    .selectFrom("hand_in")
    .innerJoin("member", "member.id", "hand_in.member_id")
    .innerJoin("class", "class.id", "member.class_id")
    .select(["class.id as classId", "class.teacher_id as teacherId", "member.id as memberId"])
    .where("hand_in.id", "=", handInId)
    .executeTakeFirst();
}
