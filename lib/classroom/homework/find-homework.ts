import type { Kysely } from "kysely";
import type { Person, Subject } from "../access/person";
import type { Tables } from "../store/tables";
import type { HomeworkItemTable, HomeworkTable } from "../store/tables/homework-tables";
import { isReleased, type Terms } from "./due";

export type FoundHomework = {
  readonly homework: Readonly<HomeworkTable>;
  readonly teacherId: string;
};

/** A homework with whose class it is. */
export async function findHomework(db: Kysely<Tables>, homeworkId: string): Promise<FoundHomework | undefined> {
  const homework = await db.selectFrom("homework").selectAll().where("id", "=", homeworkId).executeTakeFirst();
  if (!homework) return undefined;
  const { teacher_id } = await db
    .selectFrom("class")
    .select("teacher_id")
    .where("id", "=", homework.class_id)
    .executeTakeFirstOrThrow();
  return { homework, teacherId: teacher_id };
}

export type FoundItem = FoundHomework & { readonly item: Readonly<HomeworkItemTable> };

/** One exercise of a homework. */
export async function findItem(db: Kysely<Tables>, itemId: string): Promise<FoundItem | undefined> {
  const item = await db.selectFrom("homework_item").selectAll().where("id", "=", itemId).executeTakeFirst();
  const found = item && (await findHomework(db, item.homework_id));
  return found && { ...found, item };
}

/** What is agreed with one student about one homework. */
export async function findTerms(db: Kysely<Tables>, homeworkId: string, memberId: string): Promise<Terms> {
  return db
    .selectFrom("homework_member")
    .select(["due_at", "excused", "assigned"])
    .where("homework_id", "=", homeworkId)
    .where("member_id", "=", memberId)
    .executeTakeFirst();
}

/** A homework as something to ask about: nobody's work in particular. */
export function homeworkSubject({ homework, teacherId }: FoundHomework): Subject {
  return { classId: homework.class_id, teacherId };
}

/** The work of one student at it, as something to ask about. */
export function workSubject(
  { homework, teacherId }: FoundHomework,
  memberId: string,
  terms: Terms,
  now: Date,
): Subject {
  return { classId: homework.class_id, teacherId, memberId, released: isReleased(homework, terms, now) };
}

/** The place that a person has in a class; undefined for whoever has none. */
export function placeIn(person: Person, classId: string): string | undefined {
  if (person.kind !== "student") return undefined;
  return person.places.find((place) => place.classId === classId)?.memberId;
}
