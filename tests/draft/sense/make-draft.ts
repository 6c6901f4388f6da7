import fc from "fast-check";
import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { draftFromExercise, newDraft } from "@/lib/draft/new-draft";
import { type Change, readTideOffice } from "../../fixtures/tide-office";
import { anyMaking } from "../any-edit";

/** The draft after some edits; fails the test when one is refused. */
export function edited(draft: Draft, ...edits: readonly Edit[]): Draft {
  return edits.reduce((before, edit) => {
    const after = applyEdit(before, edit);
    if (!after.ok) throw new Error(after.say);
    return after.draft;
  }, draft);
}

/** The format's own example as a draft, with some values of its file changed. */
export function tideOfficeDraft(...changes: readonly Change[]): Draft {
  return draftFromExercise(readTideOffice(...changes));
}

/** Whatever comes of some edits on an empty stage: much of it makes no sense. */
export const anyDraft: fc.Arbitrary<Draft> = fc
  .tuple(fc.constantFrom("ft-in" as const, "m" as const), fc.array(anyMaking, { minLength: 1, maxLength: 20 }))
  .map(([units, makings]) =>
    makings.reduce<Draft>((before, make) => {
      const after = applyEdit(before, make(before));
      return after.ok ? after.draft : before;
    }, newDraft(units)),
  );
