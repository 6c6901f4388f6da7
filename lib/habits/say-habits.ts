import { inside } from "../plan/first-letter";
import { HABITS } from "./all-habits";
import type { Asked } from "./asked";
import type { MarkHabit } from "./claim";

/** The ideas that explain a mark, in words: claimed ones as statements, a likely one as a question, ties all named. */
export function sayHabits(habits: readonly MarkHabit[], asked: Asked): string {
  const sentences = habits.flatMap(
    ({ id, amount }) => HABITS.find((habit) => habit.id === id)?.say(asked, amount) ?? [],
  );
  const [first, ...others] = sentences;
  if (first === undefined) return "";
  const all = [first, ...others.map((sentence) => `Or, which comes to the same place here: ${inside(sentence)}`)].join(
    " ",
  );
  return habits[0]?.question ? `Could it be this? ${all}` : all;
}
