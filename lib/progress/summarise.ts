import type { Unit } from "../exercise/exercise";
import type { AttemptRecord } from "./record";
import { DAY_MS, sayAgo, saySpan } from "./say-number";
import { sayShaky } from "./say-shaky";
import { type SkillState, skillStates } from "./skill-states";

/** One skill in numbers and words. */
export type SkillSummary = {
  readonly id: string;
  readonly name: string;
  readonly meaning: string;
  readonly unit: Unit;
  /** That it is known, 0 to 1; what is assumed of anyone where it is not begun. */
  readonly probability: number;
  /** Marks that were evidence for it, and how many of them were right (after a hint or not). */
  readonly marks: number;
  readonly right: number;
  /** Since when it is mastered, ISO 8601, or null. */
  readonly masteredOn: string | null;
  /** Days until it should come back, 0 when it is due, or null when it is not mastered. */
  readonly dueInDays: number | null;
  /** "Mastered nine days ago; it comes back in four days." */
  readonly words: string;
};

export type Summary = {
  /** Those due first come first. */
  readonly mastered: readonly SkillSummary[];
  /** The shakiest first. */
  readonly shaky: readonly SkillSummary[];
  /** In the course's order. */
  readonly notBegun: readonly SkillSummary[];
  /** "3 skills mastered, 1 shaky, 12 not begun." */
  readonly words: string;
};

/** What is mastered, shaky and not begun, from the records in any order. */
export function summarise(records: readonly AttemptRecord[], now: Date): Summary {
  const states = skillStates(records);
  const time = now.getTime();
  const list = (wanted: SkillState["state"], by: (state: SkillState) => number) =>
    states
      .filter(({ state }) => state === wanted)
      .sort((a, b) => by(a) - by(b))
      .map((state) => summaryOf(state, time));
  const mastered = list("mastered", ({ dueAt }) => dueAt ?? 0);
  const shaky = list("shaky", ({ probability }) => probability);
  const notBegun = list("not begun", () => 0);
  const skills = `skill${mastered.length === 1 ? "" : "s"}`;
  return {
    mastered,
    shaky,
    notBegun,
    words: `${mastered.length} ${skills} mastered, ${shaky.length} shaky, ${notBegun.length} not begun.`,
  };
}

function summaryOf(state: SkillState, now: number): SkillSummary {
  const { skill, probability, marks, masteredOn, dueAt } = state;
  const wait = dueAt === null ? null : Math.max(0, dueAt - now);
  return {
    id: skill.id,
    name: skill.name,
    meaning: skill.meaning,
    unit: skill.unit,
    probability,
    marks: marks.length,
    right: marks.filter(({ kind }) => kind !== "wrong").length,
    masteredOn,
    dueInDays: wait === null ? null : Math.ceil(wait / DAY_MS),
    words: sayState(state, wait, now),
  };
}

function sayState(state: SkillState, wait: number | null, now: number): string {
  if (state.state === "not begun") return "Not begun yet.";
  if (state.masteredOn === null || wait === null) return sayShaky(state);
  const due = wait === 0 ? "it is due for another" : `it comes back in ${saySpan(wait)}`;
  return `Mastered ${sayAgo(now - Date.parse(state.masteredOn))}; ${due}.`;
}
