import { habitName } from "../../habits/habit-name";

/** One attempt of one student, as far as it tells of habits. */
export type HabitAttempt = {
  readonly memberId: string;
  readonly exercise: string;
  /** Whether the exercise can be opened by its id. */
  readonly inCourse: boolean;
  readonly receivedAt: string;
  /** From when its corrections can be seen; null while they are kept back for good. ISO 8601. */
  readonly feedbackAt: string | null;
  readonly habits: readonly string[];
  /** Habits that its exercise can show; asked only where it matters, as it takes a while to find out. */
  readonly tells: () => readonly string[];
};

/** `gone`: not in the last attempt since its correction that could show it. `untried`: there was no such attempt. */
export type HabitState = "still" | "gone" | "untried";

export type ClassHabit = {
  readonly id: string;
  readonly name: string;
  readonly holders: readonly { readonly memberId: string; readonly state: HabitState }[];
  readonly counts: Readonly<Record<HabitState, number>>;
  /** The course's exercise that showed it most often, for showing how it is done; null where none did. */
  readonly exercise: string | null;
};

/** The habits of a class, the commonest first: who holds each, and whether it went once it had been corrected. */
export function habitsOfClass(attempts: readonly HabitAttempt[]): readonly ClassHabit[] {
  const ids = [...new Set(attempts.flatMap(({ habits }) => habits))].sort();
  const inOrder = [...attempts].sort((a, b) =>
    a.receivedAt < b.receivedAt ? -1 : a.receivedAt > b.receivedAt ? 1 : 0,
  );
  return ids
    .map((id) => {
      const showing = inOrder.filter(({ habits }) => habits.includes(id));
      const holders = [...new Set(showing.map(({ memberId }) => memberId))].map((memberId) => ({
        memberId,
        state: stateOf(
          id,
          inOrder.filter((each) => each.memberId === memberId),
        ),
      }));
      const count = (state: HabitState) => holders.filter((each) => each.state === state).length;
      return {
        id,
        name: habitName(id),
        holders,
        counts: { still: count("still"), gone: count("gone"), untried: count("untried") },
        exercise: commonest(showing.filter(({ inCourse }) => inCourse).map(({ exercise }) => exercise)),
      };
    })
    .sort((a, b) => b.holders.length - a.holders.length || b.counts.still - a.counts.still || (a.id < b.id ? -1 : 1));
}

function stateOf(id: string, attempts: readonly HabitAttempt[]): HabitState {
  const first = attempts.find(({ habits }) => habits.includes(id));
  const corrected = first?.feedbackAt ?? null;
  if (first === undefined || corrected === null) return "untried";
  const later = attempts.filter(
    (each) =>
      each !== first &&
      each.receivedAt > first.receivedAt &&
      each.receivedAt >= corrected &&
      (each.habits.includes(id) || each.tells().includes(id)),
  );
  const last = later.at(-1);
  if (!last) return "untried";
  return last.habits.includes(id) ? "still" : "gone";
}

function commonest(words: readonly string[]): string | null {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))[0]?.[0] ?? null;
}
