import { headers } from "next/headers";
import { openClassroom } from "@/app/_server/classroom";
import { hasSession } from "@/app/_server/has-session";
import { plansOfTeacher } from "@/lib/classroom/library/read-library";
import { faultOf, refusal } from "@/lib/classroom/store/fault";
import type { Library } from "./library";

const CLOSED = "The class server cannot be reached just now.";

/**
 * The library of the teacher who opens the desk. Null for everyone else: where nobody is signed in, no store is so much as
 * opened, and drafting goes on as it does without any. It never keeps the desk itself from opening.
 */
export async function findLibrary(): Promise<Library | null> {
  const asked = await headers();
  if (!hasSession(asked)) return null;
  try {
    const opened = await openClassroom();
    if (!opened.ok) return { kind: "closed", sentence: opened.refusal.sentence };
    const { store, whoIs } = opened.classroom;
    const person = await whoIs(asked);
    if (person.kind !== "teacher") return null;
    const plans = await plansOfTeacher(store, person.userId);
    return {
      kind: "open",
      ownerId: person.userId,
      plans: plans.map(({ id, edition, changed_at, thrown_at }) => ({
        planId: id,
        edition,
        changedAt: changed_at,
        thrown: thrown_at !== null,
      })),
    };
  } catch (error) {
    const fault = faultOf(error);
    return { kind: "closed", sentence: fault ? refusal(fault).sentence : CLOSED };
  }
}
