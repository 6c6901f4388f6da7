import { expect } from "vitest";
import type { Draft } from "@/lib/draft/draft";

/** What a file may lose of a length, metres. */
const WITHIN_M = 1e-6;

/** Expects one draft to be another, every figure within a millionth of a metre and everything else exactly. */
export function expectSameDraft(one: Draft, other: Draft): void {
  expect(differences(plain(one), plain(other), "draft")).toEqual([]);
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

/** Where two values differ, and how. */
function differences(one: unknown, other: unknown, where: string): readonly string[] {
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) < WITHIN_M ? [] : [`${where}: ${one} and ${other}`];
  if (typeof one !== "object" || one === null || typeof other !== "object" || other === null)
    return one === other ? [] : [`${where}: ${String(one)} and ${String(other)}`];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].flatMap((key) =>
    differences((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key], `${where}.${key}`),
  );
}
