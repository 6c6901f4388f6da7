import { expect } from "vitest";
import type { Draft } from "@/lib/draft/draft";

/** What a file may lose of a length, metres. */
const WITHIN_M = 1e-6;

/** Expects one draft to be another, every figure within a millionth of a metre and everything else exactly. */
export function expectSameDraft(one: Draft, other: Draft): void {
  compare(plain(one), plain(other), "draft");
}

/**
 * Maps as lists of pairs, so that their order is compared as well. Marks that are worked out are compared without theirs: of
 * two points equally far upstage but for rounding, either may be asked first.
 */
function plain(draft: Draft): unknown {
  const { plan, task } = draft.exercise;
  const marks = draft.marksBy === "order" ? [...task.marks].sort() : task.marks;
  return {
    ...draft,
    exercise: { ...draft.exercise, plan: { ...plan, corners: [...plan.corners] }, task: { ...task, marks } },
  };
}

function compare(one: unknown, other: unknown, where: string): void {
  if (typeof one === "number" && typeof other === "number") {
    expect(Math.abs(one - other), `${where}: ${one} and ${other}`).toBeLessThan(WITHIN_M);
  } else if (typeof one === "object" && one !== null && typeof other === "object" && other !== null) {
    expect(Object.keys(one).sort(), where).toEqual(Object.keys(other).sort());
    for (const [key, inner] of Object.entries(one))
      compare(inner, (other as Record<string, unknown>)[key], `${where}.${key}`);
  } else expect(one, where).toBe(other);
}
