import type { Exercise } from "../exercise/exercise";
import { type AttemptRecord, inOrder } from "./record";
import { sayAgo } from "./say-number";
import { sayShaky } from "./say-shaky";
import { nameInside, skillOf } from "./skill-of";
import { type SkillState, skillStates } from "./skill-states";

/** An exercise as the course's list has it. */
export type CourseItem = Pick<Exercise, "id" | "title" | "skills">;

export type NextExercise = {
  readonly exercise: string;
  /** Why: the first of all, a shaky skill, a mastered one that is due, the next in the course, or one to draw again. */
  readonly kind: "first" | "shaky" | "keep" | "next" | "again";
  /** The skill it is for, where it is for one. */
  readonly skill: string | null;
  /** The same in words for the student. */
  readonly reason: string;
};

/** An exercise brings in at most this many skills at once, where there is a choice. */
const MOST_NEW_SKILLS = 1;

type Course = {
  readonly catalogue: readonly CourseItem[];
  readonly ordered: readonly AttemptRecord[];
  readonly states: readonly SkillState[];
  readonly now: number;
};

/**
 * What to draw next, from a catalogue in the course's order; null when it is empty. In this order:
 * nothing drawn yet, the first exercise; a mastered skill that is due, the one most overdue, though not two such returns
 * in a row while there is something else; the shakiest skill; the first exercise not yet drawn; and when all are, the one drawn longest ago.
 * For a skill it takes an exercise that lists it: not the one just drawn, with no more than one new skill, the least often
 * drawn, in the course's order. The same records, in any order, give the same answer.
 */
export function nextExercise(
  records: readonly AttemptRecord[],
  catalogue: readonly CourseItem[],
  now: Date,
): NextExercise | null {
  const course = { catalogue, ordered: inOrder(records), states: skillStates(records), now: now.getTime() };
  const returning = justKept(course) ? null : keep(course);
  return first(course) ?? returning ?? shaky(course) ?? next(course) ?? keep(course) ?? again(course);
}

function first({ catalogue, ordered }: Course): NextExercise | null {
  const [item] = catalogue;
  if (!item || ordered.length > 0) return null;
  return { exercise: item.id, kind: "first", skill: null, reason: `Begin at the beginning: ${item.title}.` };
}

/** The exercise drawn last brought a mastered skill back on time. */
function justKept({ ordered, states }: Course): boolean {
  const last = ordered.at(-1)?.when;
  return states.some(({ keptOn }) => keptOn !== null && keptOn === last);
}

function keep(course: Course): NextExercise | null {
  const { states, now } = course;
  const due = states
    .filter(({ dueAt }) => dueAt !== null && dueAt <= now)
    .sort((a, b) => (a.dueAt as number) - (b.dueAt as number));
  return firstOf(due, (state) => {
    const { name, many } = state.skill;
    const since = state.marks.at(-1)?.when ?? "";
    const done = since === state.masteredOn ? "mastered" : "last practised";
    const ago = sayAgo(now - Date.parse(since));
    const reason = `${name} ${many ? "were" : "was"} ${done} ${ago}; one to keep ${many ? "them" : "it"}.`;
    return forSkill(course, state, "keep", reason);
  });
}

function shaky(course: Course): NextExercise | null {
  const weakest = course.states.filter(({ state }) => state === "shaky").sort((a, b) => a.probability - b.probability);
  return firstOf(weakest, (state) => forSkill(course, state, "shaky", sayShaky(state)));
}

function next({ catalogue, ordered, states }: Course): NextExercise | null {
  const item = catalogue.find(({ id }) => !ordered.some(({ exercise }) => exercise === id));
  if (!item) return null;
  const fresh = newSkills(item, states).map((id) => nameInside(skillOf(id)));
  const begun = states.some(({ state }) => state === "mastered") ? "What you have begun is mastered. " : "";
  const brings = fresh.length > 0 ? `, which brings in ${fresh.join(" and ")}` : "";
  return {
    exercise: item.id,
    kind: "next",
    skill: null,
    reason: `${begun}Next in the course: ${item.title}${brings}.`,
  };
}

function again({ catalogue, ordered, now }: Course): NextExercise | null {
  const lastDrawn = (id: string) => Date.parse(ordered.findLast(({ exercise }) => exercise === id)?.when ?? "");
  const [item] = [...catalogue].sort((a, b) => lastDrawn(a.id) - lastDrawn(b.id));
  if (!item) return null;
  const when = sayAgo(now - lastDrawn(item.id));
  const reason = `You have drawn every exercise, and nothing is due. This one you drew longest ago: ${when}.`;
  return { exercise: item.id, kind: "again", skill: null, reason };
}

function forSkill(
  { catalogue, ordered, states }: Course,
  { skill }: SkillState,
  kind: NextExercise["kind"],
  reason: string,
): NextExercise | null {
  const last = ordered.at(-1)?.exercise;
  const rank = (item: CourseItem): readonly number[] => [
    item.id === last ? 1 : 0,
    Math.max(0, newSkills(item, states).length - MOST_NEW_SKILLS),
    ordered.filter(({ exercise }) => exercise === item.id).length,
  ];
  const [best] = catalogue
    .filter(({ skills }) => skills.includes(skill.id))
    .map((item) => ({ item, ranks: rank(item) }))
    .sort((a, b) => a.ranks.map((each, i) => each - (b.ranks[i] as number)).find((each) => each !== 0) ?? 0);
  return best ? { exercise: best.item.id, kind, skill: skill.id, reason } : null;
}

function newSkills({ skills }: CourseItem, states: readonly SkillState[]): readonly string[] {
  return skills.filter((id) => states.every(({ skill, state }) => skill.id !== id || state === "not begun"));
}

function firstOf<T, R>(items: readonly T[], make: (item: T) => R | null): R | null {
  for (const item of items) {
    const made = make(item);
    if (made !== null) return made;
  }
  return null;
}
