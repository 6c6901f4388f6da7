import type { Store } from "../store/store";
import { SCHOOL, type Subject } from "./person";

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

/** A plan of a teacher's library as something to ask about. */
export async function planSubject({ db }: Store, planId: string): Promise<Subject | undefined> {
  const plan = await db.selectFrom("plan").select("owner_id").where("id", "=", planId).executeTakeFirst();
  return plan && { ...SCHOOL, teacherId: plan.owner_id };
}

/** A one-time word as something to ask about: it belongs to who made it, and a way back also to whom it is for. */
export async function wordSubjects({ db }: Store, wordId: string): Promise<readonly Subject[]> {
  const word = await db
    .selectFrom("one_time_word")
    .select(["kind", "made_by", "for_user"])
    .where("id", "=", wordId)
    .executeTakeFirst();
  if (!word) return [];
  const owners = word.kind === "way-back" ? [word.made_by, word.for_user] : [word.made_by];
  return owners.filter((owner) => owner !== null).map((teacherId) => ({ ...SCHOOL, teacherId }));
}
