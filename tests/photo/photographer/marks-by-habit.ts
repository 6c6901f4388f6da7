import type { Exercise } from "@/lib/exercise/exercise";
import type { Mark } from "@/lib/exercise/marks";
import { revealedWays } from "@/lib/habits/reveal";
import { drawMarks, type Held } from "@/tests/habits/student";
import { throwDice } from "./dice";

/** How far a careful hand misses the place it means, as a share of the opening's width: about half a millimetre on Letter. */
const HAND_SHARE = 0.004;

/**
 * Marks of a student who holds a habit wherever it applies, in the way that shows most plainly; with no habit, true marks.
 * Paper corrects nobody: whatever the exercise does on screen, a top stands over the student's own foot.
 */
export function marksByHabit(exercise: Exercise, habit: string | null, seed: number): readonly Mark[] {
  const dice = throwDice(seed, "marks");
  const onPaper = goesOnFromOwn(exercise);
  const held: readonly Held[] = habit === null ? [] : [plainestWay(onPaper, habit)];
  return drawMarks(onPaper, held, HAND_SHARE * exercise.stage.opening.width, dice.next).marks;
}

/** An exercise as it is on paper. */
export function goesOnFromOwn(exercise: Exercise): Exercise {
  return { ...exercise, task: { ...exercise.task, goOnFrom: "own" } };
}

function plainestWay(exercise: Exercise, habit: string): Held {
  const ways = revealedWays(exercise).filter(({ id }) => id === habit);
  const told = (places: readonly unknown[]) => places.filter((place) => place !== null).length;
  const [way] = [...ways].sort((a, b) => told(b.places) - told(a.places));
  if (!way) throw new Error(`${exercise.id} cannot reveal ${habit}.`);
  return way;
}
