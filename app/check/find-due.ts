import { openClassroom } from "@/app/_server/classroom";
import { deskOf } from "@/lib/classroom/homework/desk-of";
import { whatIsDue } from "@/lib/classroom/homework/what-is-due";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Due, Homework } from "./check-context";

/** In the name of every session's cookie. */
const SESSION = "plasterline.session";

export type HomeworkFound =
  | { readonly kind: "found"; readonly exercise: Exercise; readonly homework: Homework }
  | { readonly kind: "closed"; readonly sentence: string }
  | { readonly kind: "nobody" }
  | { readonly kind: "unknown" };

/** The exercise that the server keeps for whoever asks. */
export async function findHomework(asked: Headers, itemId: string): Promise<HomeworkFound> {
  const opened = await openClassroom();
  if (!opened.ok) return { kind: "closed", sentence: opened.refusal.sentence };
  const { store, whoIs } = opened.classroom;
  const person = await whoIs(asked);
  if (person.kind === "nobody") return { kind: "nobody" };
  const desk = await deskOf(store, person, itemId);
  // Someone else's homework looks like none at all.
  if (!desk) return { kind: "unknown" };
  const { exercise, memberId, held, dueAt, attemptsLeft, last } = desk;
  const homework: Homework = {
    itemId,
    memberId,
    exerciseId: exercise.id,
    title: desk.homework,
    held,
    dueAt,
    attemptsLeft,
    last: last && { receivedAt: last.receipt.receivedAt, late: last.receipt.late },
  };
  return { kind: "found", exercise, homework };
}

/** What a student who is signed in has still to hand in; empty for everyone else, and where Class is closed. */
export async function findDue(asked: Headers): Promise<readonly Due[]> {
  // Who has no session has no homework: no store is opened, or made, for them.
  if (!asked.get("cookie")?.includes(SESSION)) return [];
  const opened = await openClassroom();
  if (!opened.ok) return [];
  const { store, whoIs } = opened.classroom;
  const person = await whoIs(asked);
  if (person.kind !== "student") return [];
  const works = await Promise.all(
    person.places.map(async ({ memberId }) => ({ memberId, due: await whatIsDue(store, memberId) })),
  );
  return works.flatMap(({ memberId, due }) =>
    due.flatMap(({ title, items }) =>
      items
        .filter(({ attemptsLeft }) => attemptsLeft !== 0)
        .map(({ itemId, exerciseId, attemptsLeft }) => ({ itemId, memberId, exerciseId, title, attemptsLeft })),
    ),
  );
}
