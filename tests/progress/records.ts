import type { Part } from "@/lib/progress/error-parts";
import { type AttemptRecord, type Evidence, type MarkRecord, RECORD_FORMAT } from "@/lib/progress/record";

/** Day `n` of a made-up term, from ten in the morning of its first, with `hours` more. */
export function day(n: number, hours = 0): string {
  return new Date(Date.UTC(2026, 0, 5, 10) + (24 * n + hours) * 60 * 60 * 1000).toISOString();
}

/** A mark on the floor, right in every way where nothing is said. */
export function aMark(changes: Partial<MarkRecord> = {}): MarkRecord {
  return {
    point: "A.foot",
    score: 100,
    within: true,
    offMm: 0,
    toleranceMm: 2,
    depthMm: 0,
    acrossMm: 0,
    heightMm: null,
    upstageM: 0,
    acrossM: 0,
    heightM: null,
    depthRatio: 1,
    hints: 0,
    evidence: [],
    ...changes,
  };
}

/** Evidence for a skill with a guess of .2: the usual. */
export function evidenceFor(skill: string, right: boolean, part: Part = "depth"): Evidence {
  return { skill, part, right, guess: 0.2 };
}

/**
 * Marks for one skill by its depth, in signs: `+` right, `u` too far upstage, `d` too far downstage, `o` right after a hint.
 */
export function marksFor(skill: string, signs: string): readonly MarkRecord[] {
  const off: Readonly<Record<string, number>> = { u: 5, d: -5 };
  return [...signs].map((sign) => {
    const right = sign === "+" || sign === "o";
    return aMark({
      within: right,
      depthMm: off[sign] ?? 0,
      hints: sign === "o" ? 1 : 0,
      evidence: [evidenceFor(skill, right)],
    });
  });
}

export function aRecord(
  exercise: string,
  when: string,
  marks: readonly MarkRecord[] = [],
  changes: Partial<AttemptRecord> = {},
): AttemptRecord {
  return { format: RECORD_FORMAT, exercise, version: 1, when, score: 80, marks, habits: [], tells: [], ...changes };
}
