import { isReservedName, MAX_NAME, NAME_PATTERN } from "../../exercise/limits";
import type { Plan } from "../../plan/plan";

/** Every name on the plan that another thing may not have: all but those of openings, which are apart in each wall. */
export function takenNames(plan: Plan): Set<string> {
  const lists = [plan.walls, plan.platforms, plan.stairs, plan.furniture, plan.columns, plan.masking];
  return new Set([...plan.corners.keys(), ...lists.flatMap((items) => items.map(({ id }) => id))]);
}

/** Why a thing cannot have a name, in a sentence; null when it can. */
export function refuseName(name: string, taken: ReadonlySet<string>): string | null {
  const shown = name.length > MAX_NAME ? `${name.slice(0, MAX_NAME)}…` : name;
  if (name.length > MAX_NAME || !NAME_PATTERN.test(name))
    return `"${shown}" cannot be a name. Use letters, digits, - and _, beginning with a letter or digit, at most ${MAX_NAME}.`;
  if (isReservedName(name)) return `"${shown}" cannot be a name. Choose another.`;
  if (taken.has(name)) return `"${shown}" is the name of something else already.`;
  return null;
}

const LETTERS = 26;

/** Names for corners, A to Z, then AA to AZ and on, leaving out what is taken. */
export function* cornerNames(taken: ReadonlySet<string>): Generator<string, never> {
  for (let i = 0; ; i++) {
    const name = letters(i);
    if (!taken.has(name)) yield name;
  }
}

/** 0 is A, 25 Z, 26 AA. */
function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % LETTERS));
  return index < LETTERS ? last : letters(Math.floor(index / LETTERS) - 1) + last;
}

/** Names with a number, W1, W2 and on, leaving out what is taken. */
export function* numberedNames(letter: string, taken: ReadonlySet<string>): Generator<string, never> {
  for (let i = 1; ; i++) {
    const name = `${letter}${i}`;
    if (!taken.has(name)) yield name;
  }
}

/** A kind's own word for the first of it, then with a number: door, door2, door3. */
export function* kindNames(kind: string, taken: ReadonlySet<string>): Generator<string, never> {
  if (!taken.has(kind)) yield kind;
  for (let i = 2; ; i++) {
    const name = `${kind}${i}`;
    if (!taken.has(name)) yield name;
  }
}
