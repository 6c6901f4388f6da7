import type { SkillState } from "./skill-states";
import { MASTERED_AT } from "./trace-skill";

export type SkillPoint = {
  /** Number of the mark among those that were evidence for the skill, from 1. */
  readonly x: number;
  /** That the skill is known, after it. */
  readonly y: number;
  readonly kind: "right" | "wrong" | "shown";
  readonly exercise: string;
  readonly point: string;
  /** ISO 8601. */
  readonly when: string;
};

/** A chart of one skill: probability, 0 to 1, over the marks that were evidence for it, with the line of mastery. */
export type SkillCurve = {
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly masteredAt: number;
  readonly points: readonly SkillPoint[];
};

export function skillCurve({ skill, marks }: Pick<SkillState, "skill" | "marks">): SkillCurve {
  return {
    title: skill.name,
    xTitle: "Marks",
    yTitle: "Known, as a probability",
    masteredAt: MASTERED_AT,
    points: marks.map(({ probability, kind, exercise, mark, when }, i) => ({
      x: i + 1,
      y: probability,
      kind,
      exercise,
      point: mark.point,
      when,
    })),
  };
}
