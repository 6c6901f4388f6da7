import type { Exercise } from "@/lib/exercise/exercise";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { gradeMarks } from "@/lib/grading/grade-marks";
import type { Hypothesis } from "@/lib/habits/hypothesis";
import { revealedWays } from "@/lib/habits/reveal";
import { type Dice, drawMarks, type Held } from "./student";

/** Exercises that are long enough to show a habit. */
const FEWEST_MARKS = 6;

/** Marks that each of two habits held at once must have to itself, or it cannot show. */
const MARKS_OF_ITS_OWN = 2;

export type Shown = { readonly exercise: Exercise; readonly ways: readonly Hypothesis[] };

/** The course's exercises of six marks or more, each with the ways of holding a habit that it can reveal. */
export async function longExercises(): Promise<readonly Shown[]> {
  const course = await loadExercises("exercises");
  return course.flatMap((entry) =>
    entry.ok && entry.exercise.task.marks.length >= FEWEST_MARKS
      ? [{ exercise: entry.exercise, ways: revealedWays(entry.exercise) }]
      : [],
  );
}

/** What was named for students who hold one habit, by that habit: how often each answer. "none" where nothing was claimed. */
export type Confusion = ReadonlyMap<string, ReadonlyMap<string, number>>;

export type Trial = {
  readonly confusion: Confusion;
  /** Of students with no habit: how many there were, and which habits were claimed of them. */
  readonly none: { readonly students: number; readonly claims: readonly string[]; readonly accused: number };
  /** Of students with two habits: how many there were, and of how many both were named. */
  readonly two: { readonly students: number; readonly bothNamed: number };
};

export type Sizes = { readonly none: number; readonly one: number; readonly two: number };

/** What is claimed of a student of an exercise who holds these ways, with a hand of a share of the opening's width. */
function claimsOf(exercise: Exercise, held: readonly Held[], hand: number, dice: Dice): readonly string[] {
  const marks = drawMarks(exercise, held, hand * exercise.stage.opening.width, dice);
  return gradeMarks(exercise, marks).habits.map(({ id }) => id);
}

function pick<T>(list: readonly T[], dice: Dice): T {
  return list[Math.floor(dice() * list.length)] as T;
}

/**
 * Synthetic students over the exercises: in each so many with no habit, with each habit it can reveal, and with each two
 * of them that have marks of their own. Deterministic for the dice.
 */
export function tryStudents(shown: readonly Shown[], hand: number, sizes: Sizes, dice: Dice): Trial {
  const confusion = new Map<string, Map<string, number>>();
  const claims: string[] = [];
  const none = { students: 0, accused: 0 };
  const two = { students: 0, bothNamed: 0 };
  for (const { exercise, ways } of shown) {
    const ids = [...new Set(ways.map(({ id }) => id))];
    const wayOf = (id: string) =>
      pick(
        ways.filter((way) => way.id === id),
        dice,
      );
    for (let k = 0; k < sizes.none; k++) {
      const named = claimsOf(exercise, [], hand, dice);
      none.students += 1;
      if (named.length > 0) none.accused += 1;
      claims.push(...named);
    }
    for (const id of ids)
      for (let k = 0; k < sizes.one; k++) {
        const named = claimsOf(exercise, [wayOf(id)], hand, dice);
        const answer = named.includes(id) ? id : named.join(" + ") || "none";
        const row = confusion.get(id) ?? new Map<string, number>();
        confusion.set(id, row.set(answer, (row.get(answer) ?? 0) + 1));
      }
    for (const [i, id] of ids.entries())
      for (const other of ids.slice(i + 1))
        for (let k = 0; k < sizes.two; k++) {
          const [a, b] = [wayOf(id), wayOf(other)];
          if (marksOfItsOwn(a, b) < MARKS_OF_ITS_OWN || marksOfItsOwn(b, a) < MARKS_OF_ITS_OWN) continue;
          const named = claimsOf(exercise, [a, b], hand, dice);
          two.students += 1;
          if (named.includes(id) && named.includes(other)) two.bothNamed += 1;
        }
  }
  return { confusion, none: { ...none, claims }, two };
}

function marksOfItsOwn({ places }: Hypothesis, other: Hypothesis): number {
  return places.filter((place, i) => place !== null && other.places[i] === null).length;
}

/** The share of each habit's students whose habit was among those named. */
export function sharesRight(confusion: Confusion): ReadonlyMap<string, number> {
  return new Map(
    [...confusion].map(([id, row]) => {
      const students = [...row.values()].reduce((sum, n) => sum + n, 0);
      return [id, (row.get(id) ?? 0) / students];
    }),
  );
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
