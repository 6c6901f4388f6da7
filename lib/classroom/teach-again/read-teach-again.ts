import type { Exercise } from "../../exercise/exercise";
import { readExercise } from "../../exercise/read-exercise";
import type { Grade } from "../../grading/grade";
import { revealedHabits } from "../../habits/reveal";
import type { Gradebook } from "../gradebook/gradebook";
import { makeGradebook } from "../gradebook/make-gradebook";
import { readGradebook } from "../gradebook/read-gradebook";
import type { Store } from "../store/store";
import { type ClassHabit, type HabitAttempt, habitsOfClass } from "./habits-of-class";
import { type ItemFigures, itemAnalysis } from "./item-analysis";

export type TeachAgain = {
  readonly gradebook: Gradebook;
  /** In the order of the gradebook's columns. */
  readonly figures: readonly ItemFigures[];
  readonly habits: readonly ClassHabit[];
};

/** What a class's work tells its teacher. Figures are of the program's scores: a score by hand says nothing of an exercise. */
export async function readTeachAgain(store: Store, classId: string, now: string): Promise<TeachAgain> {
  const rows = await readGradebook(store, classId);
  const gradebook = makeGradebook(rows, now);
  const figures = itemAnalysis(gradebook.rows.map(({ cells }) => cells.map(({ graded }) => graded)));
  return { gradebook, figures, habits: habitsOfClass(await readAttempts(store, classId)) };
}

async function readAttempts({ db }: Store, classId: string): Promise<readonly HabitAttempt[]> {
  const found = await db
    .selectFrom("hand_in")
    .innerJoin("homework_item", "homework_item.id", "hand_in.item_id")
    .innerJoin("homework", "homework.id", "homework_item.homework_id")
    .innerJoin("member", "member.id", "hand_in.member_id")
    .leftJoin("homework_member", (join) =>
      join
        .onRef("homework_member.homework_id", "=", "homework.id")
        .onRef("homework_member.member_id", "=", "hand_in.member_id"),
    )
    .select(["hand_in.member_id", "hand_in.grade", "hand_in.exercise", "hand_in.received_at", "homework_item.source"])
    .select(["homework.feedback", "homework.due_at", "homework_member.due_at as own_due_at"])
    .where("homework.class_id", "=", classId)
    .where("homework.archived", "=", 0)
    .where("homework_item.taken_out_at", "is", null)
    .where("member.removed", "=", 0)
    .execute();
  // One exercise is drawn by many; what it can show is found once.
  const told = new Map<string, readonly string[]>();
  return found.map((row) => {
    const grade = JSON.parse(row.grade) as Grade;
    return {
      memberId: row.member_id,
      exercise: grade.exercise,
      inCourse: row.source !== "own",
      receivedAt: row.received_at,
      feedbackAt: row.feedback === "at-once" ? row.received_at : (row.own_due_at ?? row.due_at),
      habits: grade.habits.map(({ id }) => id),
      tells: () => {
        const known = told.get(row.exercise) ?? tells(row.exercise);
        told.set(row.exercise, known);
        return known;
      },
    };
  });
}

function tells(exercise: string): readonly string[] {
  const reading = readExercise(exercise);
  return reading.ok ? revealedHabits(reading.exercise) : [];
}

export type ClassMark = {
  readonly name: string;
  readonly at: readonly [number, number];
  readonly habit: string | null;
  readonly handInId: string;
};

export type OneExercise = {
  readonly exercise: Exercise;
  /** The class's marks by point, in the order asked: of each student the attempt that counts. */
  readonly marks: ReadonlyMap<string, readonly ClassMark[]>;
};

/** Everyone's marks of one exercise of a gradebook; nothing where each student drew a variant of their own. */
export async function readMarksOfClass(
  { db }: Store,
  { rows }: Gradebook,
  itemId: string,
): Promise<OneExercise | undefined> {
  const item = await db.selectFrom("homework_item").select("source").where("id", "=", itemId).executeTakeFirst();
  if (!item || item.source === "variant") return undefined;
  const counting = rows.flatMap(({ student, cells }) =>
    cells.flatMap((cell) =>
      cell.itemId === itemId && cell.handInId ? [{ id: cell.handInId, name: student.name }] : [],
    ),
  );
  const found = await db
    .selectFrom("hand_in")
    .select(["id", "grade", "exercise", "received_at"])
    .where("id", "in", ["", ...counting.map(({ id }) => id)])
    .execute();
  const newest = [...found].sort((a, b) => (a.received_at < b.received_at ? 1 : -1))[0];
  const reading = newest ? readExercise(newest.exercise) : undefined;
  if (!reading?.ok) return undefined;
  const { exercise } = reading;
  const marked = counting.flatMap(({ id, name }) => {
    const row = found.find((each) => each.id === id);
    // Someone who drew the exercise before it was changed drew another one.
    if (!row || row.exercise !== newest?.exercise) return [];
    return (JSON.parse(row.grade) as Grade).marks.map(({ point, at, habit }) => ({
      point,
      mark: { name, handInId: id, at: [at[0], at[1]] as const, habit },
    }));
  });
  const marks = exercise.task.marks.map((point): [string, ClassMark[]] => [
    point,
    marked.flatMap((each) => (each.point === point ? [each.mark] : [])),
  ]);
  return { exercise, marks: new Map(marks) };
}
