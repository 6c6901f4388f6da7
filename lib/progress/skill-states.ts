import { type AttemptRecord, type Evidence, inOrder, type MarkRecord } from "./record";
import { DAY_MS } from "./say-number";
import { skillOf } from "./skill-of";
import { SKILLS, type Skill } from "./skills";
import { MASTERED_AT, type Observation, traceSkill, USUAL_TRACE } from "./trace-skill";

/** Days after which a mastered skill comes back, each time it is kept: common practice, no source. */
const RETURN_DAYS = [1, 3, 7, 16, 35] as const;

/** One mark as evidence for one skill. */
export type SkillMark = {
  readonly exercise: string;
  readonly when: string;
  readonly mark: MarkRecord;
  readonly evidence: Evidence;
  /** `shown`: right, but after a hint. */
  readonly kind: Observation["kind"];
  /** That the skill is known, after it. */
  readonly probability: number;
};

export type SkillState = {
  readonly skill: Skill;
  readonly state: "mastered" | "shaky" | "not begun";
  readonly probability: number;
  /** Oldest first. */
  readonly marks: readonly SkillMark[];
  /** Since when it is mastered, ISO 8601; null when it is not. */
  readonly masteredOn: string | null;
  /** It was mastered once and has been lost. */
  readonly slipped: boolean;
  /** When a mastered skill should come back, milliseconds since 1970; null when it is not mastered. */
  readonly dueAt: number | null;
  /** When it last came back on time and was kept, ISO 8601; null when it has not yet. */
  readonly keptOn: string | null;
};

/**
 * What the records say of every skill of the course, in the course's order, then of those that only the records name.
 *
 * Mastery is looked at when an exercise is finished. A skill newly mastered comes back after the first of `RETURN_DAYS`;
 * each time it is practised when due and stays mastered, after the next longer; practised earlier, after the same again;
 * lost and mastered anew, it begins at the first. The order in which records of one moment come does not matter.
 */
export function skillStates(records: readonly AttemptRecord[]): readonly SkillState[] {
  const ordered = inOrder(records);
  const seen = new Set(
    ordered.flatMap(({ marks }) => marks.flatMap(({ evidence }) => evidence.map((one) => one.skill))),
  );
  const others = [...seen].filter((id) => !SKILLS.some((skill) => skill.id === id)).sort();
  return [...SKILLS, ...others.map(skillOf)].map((skill) => stateOf(skill, ordered));
}

function stateOf(skill: Skill, ordered: readonly AttemptRecord[]): SkillState {
  const found = ordered.flatMap(({ exercise, when, marks }, attempt) =>
    marks.flatMap((mark) =>
      mark.evidence
        .filter((evidence) => evidence.skill === skill.id)
        .map((evidence) => ({ attempt, exercise, when, mark, evidence, kind: kindOf(mark, evidence) })),
    ),
  );
  const { probability, history } = traceSkill(
    found.map(({ kind, evidence }) => ({ kind, guess: evidence.guess })),
    { ...USUAL_TRACE, ...skill.trace },
  );
  const marks = found.map((each, i) => ({ ...each, probability: history[i] as number }));
  const ends = marks.filter(({ attempt }, i) => marks[i + 1]?.attempt !== attempt);
  const kept = ends.reduce<Kept>(keep, { step: 0, masteredOn: null, slipped: false, dueAt: null, keptOn: null });
  return {
    skill,
    state: marks.length === 0 ? "not begun" : kept.masteredOn === null ? "shaky" : "mastered",
    probability,
    marks: marks.map(({ attempt, ...mark }) => mark),
    masteredOn: kept.masteredOn,
    slipped: kept.slipped,
    dueAt: kept.dueAt,
    keptOn: kept.keptOn,
  };
}

function kindOf({ hints }: MarkRecord, { right }: Evidence): Observation["kind"] {
  if (!right) return "wrong";
  return hints > 0 ? "shown" : "right";
}

type Kept = Pick<SkillState, "masteredOn" | "slipped" | "dueAt" | "keptOn"> & { readonly step: number };

function keep(before: Kept, { probability, when }: Pick<SkillMark, "probability" | "when">): Kept {
  const time = Date.parse(when);
  if (probability < MASTERED_AT) {
    const slipped = before.slipped || before.masteredOn !== null;
    return { step: 0, masteredOn: null, slipped, dueAt: null, keptOn: null };
  }
  if (before.dueAt === null)
    return { step: 0, masteredOn: when, slipped: false, dueAt: dueAfter(time, 0), keptOn: null };
  const due = time >= before.dueAt;
  const step = due ? before.step + 1 : before.step;
  return { ...before, step, dueAt: dueAfter(time, step), keptOn: due ? when : before.keptOn };
}

function dueAfter(time: number, step: number): number {
  return time + (RETURN_DAYS[Math.min(step, RETURN_DAYS.length - 1)] as number) * DAY_MS;
}
