import type { Store } from "../store/store";
import type { Subject } from "./person";

/** A class as something to ask about; nothing when there is none. */
export async function classSubject({ db }: Store, classId: string): Promise<Subject | undefined> {
  return db
    .selectFrom("class")
    .select(["id as classId", "teacher_id as teacherId"])
    .where("id", "=", classId)
    .executeTakeFirst();
}

/** A student's place as something to ask about. */
export async function memberSubject({ db }: Store, memberId: string): Promise<Subject | undefined> {
  return db
    .selectFrom("member")
    .innerJoin("class", "class.id", "member.class_id")
    .select(["class.id as classId", "class.teacher_id as teacherId", "member.id as memberId"])
    .where("member.id", "=", memberId)
    .executeTakeFirst();
}
