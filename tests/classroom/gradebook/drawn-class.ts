import { readFileSync } from "node:fs";
import { gradeAgain, readMeasure } from "@/lib/classroom/gradebook/grade-again";
import type { Store } from "@/lib/classroom/store/store";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { MarkSet } from "@/lib/exercise/marks";
import { readExercise } from "@/lib/exercise/read-exercise";
import { revealedWays } from "@/lib/habits/reveal";

export const FILES = {
  floor: readFileSync("exercises/floor/03-points-on-the-floor.json", "utf8"),
  lamps: readFileSync("exercises/floor/05-ring-of-lamps.json", "utf8"),
} as const;

export function exerciseOf(file: string): Exercise {
  const reading = readExercise(file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

/** Marks of an exercise: the true places, shifted by millimetres of paper, or as someone with a habit sets them. */
export function marksOf(file: string, offMm: readonly [number, number] = [0, 0], habit?: string): MarkSet {
  const exercise = exerciseOf(file);
  const points = exercisePoints(exercise);
  const way = habit === undefined ? undefined : revealedWays(exercise).find(({ id }) => id === habit);
  if (habit !== undefined && !way) throw new Error(`${exercise.id} cannot show ${habit}.`);
  const mm = exercise.scaleRatio / 1000;
  const marks = exercise.task.marks.map((point, i) => {
    const [X, Z] = way?.places[i] ?? points.get(point)?.picture ?? [0, 0];
    // Each point a little otherwise, as by a hand.
    const sway = i % 2 === 0 ? 1 : 0.6;
    return { point, at: [X + offMm[0] * mm * sway, Z + offMm[1] * mm * sway] as const };
  });
  return { format: "plasterline.marks/1", exercise: exercise.id, version: exercise.version, marks };
}

export type Drawn = {
  readonly id: string;
  readonly memberId: string;
  readonly item: keyof typeof FILES;
  readonly receivedAt: string;
  /** By the student's clock; left out, the same. */
  readonly madeAt?: string;
  readonly offMm?: readonly [number, number];
  readonly habit?: string;
};

/** One homework of two exercises, due on the 10th of November 2026, with what the class has handed in. */
export async function putDrawnClass({ db }: Store, classId: string, drawn: readonly Drawn[]): Promise<void> {
  await db
    .insertInto("homework")
    .values({
      id: "week-one",
      class_id: classId,
      title: "Week one",
      due_at: "2026-11-10T12:00:00.000Z",
      attempts: 0,
      counts: "best",
      feedback: "at-once",
      strictness: null,
      hints: "allowed",
      to_whom: "all",
      weight: 1,
      criteria: JSON.stringify([{ name: "Line quality", points: 5 }]),
      created_at: "2026-11-01T09:00:00.000Z",
      archived: 0,
    })
    .execute();
  const items = Object.entries(FILES).map(([id, exercise], i) => ({
    id,
    homework_id: "week-one",
    place: i + 1,
    source: "course" as const,
    exercise_id: exerciseOf(exercise).id,
    unit: null,
    level: null,
    exercise,
    weight: 1,
  }));
  await db.insertInto("homework_item").values(items).execute();
  for (const { id, memberId, item, receivedAt, madeAt = receivedAt, offMm, habit } of drawn) {
    const marks = JSON.stringify(marksOf(FILES[item], offMm, habit));
    const graded = gradeAgain(readMeasure(FILES[item], null), marks);
    if (!graded.ok) throw new Error(graded.sentence);
    await db
      .insertInto("hand_in")
      .values({
        id,
        item_id: item,
        member_id: memberId,
        exercise: FILES[item],
        marks,
        score: graded.grade.score,
        grade: JSON.stringify(graded.grade),
        engine_version: "0.1.0",
        made_at: madeAt,
        received_at: receivedAt,
        late: receivedAt > "2026-11-10T12:00:00.000Z" ? 1 : 0,
      })
      .execute();
  }
}
