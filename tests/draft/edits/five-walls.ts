import { expect } from "vitest";
import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { newDraft } from "@/lib/draft/new-draft";
import type { Plan } from "@/lib/plan/plan";

/** The draft after edits that all must be possible. */
export function edited(draft: Draft, ...edits: readonly Edit[]): Draft {
  return edits.reduce((before, edit) => {
    const outcome = applyEdit(before, edit);
    expect(outcome.ok ? "" : outcome.say).toBe("");
    return outcome.ok ? outcome.draft : before;
  }, draft);
}

/** What an edit makes. */
export function madeBy(draft: Draft, edit: Edit): readonly Thing[] {
  const outcome = applyEdit(draft, edit);
  expect(outcome.ok ? "" : outcome.say).toBe("");
  return outcome.ok ? outcome.made : [];
}

/** Why an edit cannot be done; empty when it can. */
export function refusal(draft: Draft, edit: Edit): string {
  const outcome = applyEdit(draft, edit);
  return outcome.ok ? "" : outcome.say;
}

export function planEdited(draft: Draft, ...edits: readonly Edit[]): Plan {
  return edited(draft, ...edits).exercise.plan;
}

/** A run of five walls from stage right round to stage left, A to F, with a door in the second and a window in the third. */
export function fiveWalls(): Draft {
  return edited(
    newDraft("m"),
    {
      edit: "add-walls",
      corners: [
        [-5, 1],
        [-4, 1],
        [-3, 5],
        [3, 5],
        [4, 1],
        [5, 1],
      ],
      closed: false,
      height: 4,
      thickness: 0.1,
    },
    {
      edit: "add-opening",
      wall: "W2",
      opening: {
        kind: "door",
        at: 1,
        width: 0.9,
        sill: 0,
        head: 2.1,
        depth: null,
        leaves: 1,
        hinge: null,
        swing: "offstage",
      },
    },
    {
      edit: "add-opening",
      wall: "W3",
      opening: {
        kind: "window",
        at: 4,
        width: 1.5,
        sill: 0.9,
        head: 2.1,
        depth: null,
        leaves: 1,
        hinge: null,
        swing: "offstage",
      },
    },
  );
}
