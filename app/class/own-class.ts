import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { openClassroom } from "@/app/_server/classroom";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { type Action, mayDo } from "@/lib/classroom/access/may-do";
import type { Store } from "@/lib/classroom/store/store";

export type OwnClass =
  | { readonly ok: false; readonly sentence: string }
  | {
      readonly ok: true;
      readonly store: Store;
      readonly teacherId: string;
      readonly title: string;
      readonly name: string;
    };

/** A class for a page of its teacher's; to anyone else it looks like none at all. */
export async function ownClass(classId: string, action: Action): Promise<OwnClass> {
  const asked = await headers();
  const opened = await openClassroom();
  if (!opened.ok) return { ok: false, sentence: opened.refusal.sentence };
  const { store, whoIs } = opened.classroom;
  const [person, subject] = [await whoIs(asked), await classSubject(store, classId)];
  if (person.kind !== "teacher" || !subject || !mayDo(person, action, subject)) notFound();
  const row = await store.db.selectFrom("class").select("title").where("id", "=", classId).executeTakeFirstOrThrow();
  return { ok: true, store, teacherId: person.userId, title: row.title, name: person.name };
}
