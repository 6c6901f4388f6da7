import { habitName } from "../habits/habit-name";
import { type AttemptRecord, inOrder } from "./record";
import { sayAgo, sayCount, sayMany, saySpan } from "./say-number";

/** How many attempts back the count of claims looks. */
const HABIT_LOOKS_BACK = 5;

/** A habit is gone once this many attempts in a row that can show it did not: common practice, no source. */
const GONE_AFTER = 3;

/** A habit over time. Only attempts that can show it count: those whose exercise can tell it, or that claimed it. */
export type HabitHistory = {
  readonly id: string;
  readonly name: string;
  /** `fading`: not in the last attempt or attempts, but in too few to be gone. */
  readonly state: "here" | "fading" | "gone";
  /** Claimed in so many of the last `of` attempts that can show it. */
  readonly claimed: number;
  readonly of: number;
  /** Attempts in a row without it, up to now. */
  readonly without: number;
  /** ISO 8601. */
  readonly firstSeen: string;
  readonly lastSeen: string;
  /** The first attempt without it after the last with it; null unless it is gone. ISO 8601. */
  readonly goneSince: string | null;
  /** Oldest first: the attempts that can show it, and whether they did. `x` is the attempt's number, as in the error series. */
  readonly points: readonly { readonly x: number; readonly when: string; readonly claimed: boolean }[];
  readonly words: string;
};

/** Every habit ever claimed, those still here first, of one state the last seen first. Records in any order. */
export function habitHistory(records: readonly AttemptRecord[], now: Date): readonly HabitHistory[] {
  const attempts = inOrder(records).filter(({ marks }) => marks.length > 0);
  const ids = [...new Set(attempts.flatMap(({ habits }) => habits.map(({ id }) => id)))].sort();
  const states = ["here", "fading", "gone"];
  return ids
    .flatMap((id) => historyOf(id, attempts, now) ?? [])
    .sort(
      (a, b) => states.indexOf(a.state) - states.indexOf(b.state) || Date.parse(b.lastSeen) - Date.parse(a.lastSeen),
    );
}

function historyOf(id: string, attempts: readonly AttemptRecord[], now: Date): HabitHistory | null {
  const points = attempts.flatMap(({ habits, tells, when }, i) => {
    const claimed = habits.some((habit) => habit.id === id);
    return claimed || tells === null || tells.includes(id) ? [{ x: i + 1, when, claimed }] : [];
  });
  const seen = points.filter(({ claimed }) => claimed);
  const [first, last] = [seen[0], seen.at(-1)];
  if (!first || !last) return null;
  const since = points.slice(points.indexOf(last) + 1);
  const recent = points.slice(-HABIT_LOOKS_BACK);
  const gone = since.length >= GONE_AFTER;
  const history = {
    id,
    name: habitName(id),
    state: gone ? ("gone" as const) : since.length > 0 ? ("fading" as const) : ("here" as const),
    claimed: recent.filter(({ claimed }) => claimed).length,
    of: recent.length,
    without: since.length,
    firstSeen: first.when,
    lastSeen: last.when,
    goneSince: gone ? (since[0]?.when ?? null) : null,
    points,
  };
  return { ...history, words: sayHistory(history, now.getTime()) };
}

function sayHistory(history: Omit<HabitHistory, "words">, now: number): string {
  const { name, state, claimed, of, without, lastSeen, goneSince } = history;
  const ago = (when: string) => sayAgo(now - Date.parse(when));
  if (state === "gone")
    return `${name}: gone for ${saySpan(now - Date.parse(goneSince ?? lastSeen))}, and not once in ${sayMany(without, "exercise")} that could show it.`;
  const seen =
    of === 1
      ? "in the one exercise that could show it"
      : `in ${sayCount(claimed)} of the last ${sayCount(of)} that could show it`;
  if (state === "fading")
    return `${name}: ${seen}, but not in the last${without === 1 ? "" : ` ${sayCount(without)}`}.`;
  return `${name}: ${seen}, last ${ago(lastSeen)}.`;
}
