import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { openClassroom } from "@/app/_server/classroom";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import type { Store } from "@/lib/classroom/store/store";

export type OwnLibrary =
  | { readonly ok: false; readonly sentence: string }
  | { readonly ok: true; readonly store: Store; readonly teacherId: string; readonly name: string };

/** The library of the teacher who asks; to anyone else there is none. */
export async function ownLibrary(): Promise<OwnLibrary> {
  const asked = await headers();
  const opened = await openClassroom();
  if (!opened.ok) return { ok: false, sentence: opened.refusal.sentence };
  const { store, whoIs } = opened.classroom;
  const person = await whoIs(asked);
  if (person.kind !== "teacher" || !mayDo(person, "make-plan", SCHOOL)) notFound();
  return { ok: true, store, teacherId: person.userId, name: person.name };
}
