import { capital } from "../plan/first-letter";
import { HABITS } from "./all-habits";

/** A habit's short name; one unknown here, of an old record, goes by its id in words. */
export function habitName(id: string): string {
  const known = HABITS.find((habit) => habit.id === id);
  if (known) return known.name;
  const words = id.replaceAll("-", " ");
  return capital(words);
}
