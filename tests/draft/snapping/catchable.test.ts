import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { newDraft } from "@/lib/draft/new-draft";
import { catchable } from "@/lib/draft/snapping/catchable";
import { snapPoint } from "@/lib/draft/snapping/snap-point";
import type { PlanPoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";

const place = fc
  .tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 0, max: 20 }))
  .map(([x, y]): PlanPoint => [x / 4, y / 4]);

describe("the walls that may catch a place", () => {
  it("catch it as all of them would", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(place, { minLength: 3, maxLength: 12, selector: String }),
        place,
        fc.option(place),
        fc.double({ min: 0.01, max: 0.4, noNaN: true }),
        (corners, at, from, tolerance) => {
          const drawn = applyEdit(newDraft("m"), {
            edit: "add-walls",
            corners,
            closed: false,
            height: 3,
            thickness: 0,
          });
          if (!drawn.ok) return;
          const { plan } = drawn.draft.exercise;
          const rest = { grid: 0.1, tolerance, from, without: new Set<string>() };
          const all = snapPoint(at, { plan, ...rest });
          expect(snapPoint(at, { plan: catchable(plan, at, tolerance, from), ...rest })).toEqual(all);
        },
      ),
      seeded,
    );
  });
});
