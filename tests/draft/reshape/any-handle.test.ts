import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Draft } from "@/lib/draft/draft";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { type Handle, nameOfHandle } from "@/lib/draft/reshape/handle";
import { handlesOf } from "@/lib/draft/reshape/handles-of";
import { reshape } from "@/lib/draft/reshape/reshape";
import type { PlanPoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";
import { anyMaking, anyStart, everything } from "../any-edit";
import { edited } from "../edits/five-walls";

const BY_KEYS = { grid: 0.1, tolerance: 0, units: "m" } as const;
const BY_MOUSE = { grid: 0.1, tolerance: 0.15, units: "m" } as const;
const SQUARE: readonly PlanPoint[] = [
  [-1, 2],
  [1, 2],
  [1, 3],
  [-1, 3],
];

describe("any handle of any thing", () => {
  const place = fc.tuple(fc.double({ min: -9, max: 9, noNaN: true }), fc.double({ min: -3, max: 9, noNaN: true }));
  it("brought anywhere gives an edit that can be made, and has its handle still, or gives none", () => {
    fc.assert(
      fc.property(
        anyStart,
        fc.array(anyMaking, { maxLength: 12 }),
        fc.nat(),
        fc.nat(),
        place,
        fc.constantFrom(BY_KEYS, BY_MOUSE),
        (start, makings, n, h, [x, y], by) => {
          const draft = [...makings].reduce<Draft>((before, make) => {
            const after = applyEdit(before, make(before));
            return after.ok ? after.draft : before;
          }, furnishedFrom(start));
          const withHandles = everything(draft).filter((thing) => handlesOf(draft.exercise.plan, thing).length > 0);
          const thing = withHandles[n % Math.max(1, withHandles.length)];
          if (!thing) return;
          const handles = handlesOf(draft.exercise.plan, thing);
          const held = handles[h % handles.length] as Handle;
          const reshaped = reshape(draft.exercise.plan, thing, held, [x, y], by);
          if (!reshaped) return;
          const after = applyEdit(draft, reshaped.edit);
          if (!after.ok) {
            // Only a corner on another is refused.
            expect(after.say).toContain("stands there already");
            return;
          }
          const now = handlesOf(after.draft.exercise.plan, thing);
          expect(now.map(nameOfHandle)).toContain(reshaped.handle);
          expect(now.flatMap(({ at }) => at).every(Number.isFinite)).toBe(true);
          expect(after.draft.exercise.plan.walls.length).toBe(draft.exercise.plan.walls.length);
        },
      ),
      seeded,
    );
  });
});

/** A drawn-at-random start with a platform on it, so that there is something to reshape. */
function furnishedFrom(start: Draft): Draft {
  return edited(start, { edit: "add-platform", platform: { outline: SQUARE, height: 0.3, base: 0 } });
}
