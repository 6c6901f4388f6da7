import { sayCount, sayMany } from "./say-number";
import type { SkillMark, SkillState } from "./skill-states";

/** How many marks back the words look. */
const LOOKS_BACK = 5;

/** Fewer marks than these say little either way. */
const FEW_MARKS = 3;

/**
 * Why a skill counts as shaky, in a sentence with the student's own marks: "Depth by eye is shaky: two of your last five marks
 * were too far upstage."
 */
export function sayShaky({ skill, marks, slipped }: Pick<SkillState, "skill" | "marks" | "slipped">): string {
  const { name, many } = skill;
  const last = marks.slice(-LOOKS_BACK);
  const wrong = last.filter(({ kind }) => kind === "wrong");
  const shown = last.filter(({ kind }) => kind === "shown");
  const is = slipped ? `${many ? "have" : "has"} slipped` : `${many ? "are" : "is"} shaky`;
  if (wrong.length > 0) return `${name} ${is}: ${share(wrong.length, last.length)} ${sayErrors(wrong)}.`;
  if (shown.length > 0)
    return `${name} ${many ? "lean" : "leans"} on hints: ${share(shown.length, last.length)} made after one.`;
  if (last.length < FEW_MARKS)
    return `${name} ${many ? "have" : "has"} only been tried ${["", "once", "twice"][last.length] || sayCount(last.length)}.`;
  return `${name} ${many ? "are" : "is"} nearly there: your last ${sayMany(last.length, "mark")} ${were(last.length)} right.`;
}

/** "two of your last five marks were", "your last mark was". */
function share(count: number, of: number): string {
  if (of === 1) return "your last mark was";
  if (count === of) return `your last ${sayMany(of, "mark")} were`;
  return `${sayCount(count)} of your last ${sayMany(of, "mark")} ${were(count)}`;
}

function were(count: number): string {
  return count === 1 ? "was" : "were";
}

/** Which way the marks were off: one way for all of them, or how many each way. */
function sayErrors(wrong: readonly SkillMark[]): string {
  const ways = new Map<string, number>();
  for (const each of wrong) ways.set(wayOf(each), (ways.get(wayOf(each)) ?? 0) + 1);
  const [first, ...others] = [...ways].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
  if (!first) return "off";
  if (others.length === 0) return first[0];
  return `off, ${[first, ...others].map(([way, count]) => `${sayCount(count)} ${way}`).join(" and ")}`;
}

/** The way in which a mark was off in the part that told, the paper's right and left, the stage's up and down. */
function wayOf({ mark, evidence }: SkillMark): string {
  switch (evidence.part) {
    case "depth":
      return (mark.depthMm ?? 0) > 0 ? "too far upstage" : "too far downstage";
    case "across":
      return (mark.acrossMm ?? 0) > 0 ? "too far right on paper" : "too far left on paper";
    case "height":
      return (mark.heightMm ?? 0) > 0 ? "too high" : "too low";
    case "wall":
      return "off the wall's line";
    case "place":
      return "out of place";
  }
}
