import type { Store } from "@/lib/classroom/store/store";

const NOW = "2026-11-25T09:00:00.000Z";

/** A teacher, a class, a student and one thing to do, by plain ids. */
export async function putSmallClass({ db, engine }: Store): Promise<void> {
  const emailVerified = engine === "postgres" ? false : 0;
  const person = { emailVerified, image: null, createdAt: NOW, updatedAt: NOW };
  await db
    .insertInto("user")
    .values([
      { ...person, id: "teacher", name: "Ida Brandt", email: "ida@tidemill.example", role: "teacher" },
      { ...person, id: "pupil", name: "Wim", email: "wim@student.invalid", role: "student" },
    ])
    .execute();
  await db
    .insertInto("class")
    .values({
      id: "class",
      teacher_id: "teacher",
      title: "First year",
      code: "CKMWXY",
      keep_days: 0,
      created_at: NOW,
      archived: 0,
    })
    .execute();
  await db
    .insertInto("member")
    .values({ id: "wim", class_id: "class", user_id: "pupil", name: "Wim", number: null, joined_at: NOW, removed: 0 })
    .execute();
  await db
    .insertInto("homework")
    .values({
      id: "week-1",
      class_id: "class",
      title: "Week one",
      due_at: null,
      attempts: 0,
      counts: "best",
      feedback: "at-once",
      strictness: null,
      hints: "allowed",
      to_whom: "all",
      weight: 1,
      criteria: "[]",
      created_at: NOW,
      archived: 0,
    })
    .execute();
  await db
    .insertInto("homework_item")
    .values({
      id: "item",
      homework_id: "week-1",
      place: 1,
      source: "course",
      exercise_id: "tide-office",
      unit: null,
      level: null,
      exercise: null,
      weight: 1,
    })
    .execute();
}

/** A hand-in of a usual size, without its id. */
export const smallHandIn = {
  item_id: "item",
  member_id: "wim",
  exercise: JSON.stringify({ format: "plasterline.exercise/1", notes: "n".repeat(3000) }),
  marks: JSON.stringify(Array.from({ length: 12 }, (_, i) => ({ point: `${i}.foot`, X: i / 7, Z: i / 11 }))),
  score: 0.5,
  grade: JSON.stringify({ words: "w".repeat(2000) }),
  engine_version: "0.1.0",
  made_at: NOW,
  received_at: NOW,
  late: 0 as const,
};
