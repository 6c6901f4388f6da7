import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layOut } from "@/app/draft/layers/layering";
import { type Layer, rememberIn } from "@/app/draft/layers/remember";
import { createPictureChange } from "@/app/draft/live/picture-change";
import { pictureLayers } from "@/app/draft/picture/picture-layers";
import { planLayers } from "@/app/draft/plan/plan-layers";
import type { Draft } from "@/lib/draft/draft";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import type { DisplayItem } from "@/lib/drawing/display-list";
import { anyMaking, anyStart } from "../../../draft/any-edit";
import type { Making } from "../../../draft/making";
import { seeded } from "../../../seeded";

function run(draft: Draft, list: readonly Making[]): Draft {
  return list.reduce((before, make) => {
    const edited = applyEdit(before, make(before));
    return edited.ok ? edited.draft : before;
  }, draft);
}

/** A plan, and what is tried out on it, one after the other. */
const anyTrying = fc.tuple(
  anyStart,
  fc.array(anyMaking, { maxLength: 8 }),
  fc.array(fc.array(anyMaking, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 3 }),
);

const byName = (layers: readonly Layer[]) => new Map(layers.map(({ key, list }) => [key, list]));

/** The lines of a drawing, in no order, each once: walls that meet share an upright. */
function linesOf(items: readonly DisplayItem[]): readonly string[] {
  const lines = items.flatMap((item) => (item.kind === "stroke" ? [JSON.stringify([item.weight, item.points])] : []));
  return [...new Set(lines)].sort();
}

describe("what is shown while something moves", () => {
  it("is, on the plan, what will be drawn when it is let go", () => {
    fc.assert(
      fc.property(anyTrying, ([start, first, tries]) => {
        const { exercise: rest } = run(start, first);
        const { still, tried } = layOut(planLayers, rest);
        for (const list of tries) {
          const { exercise: trying } = run({ ...start, exercise: rest }, list);
          // Only the view and the plan are drawn; a sheet of another scale is laid out anew.
          if (trying.scaleRatio !== rest.scaleRatio) continue;
          const { moving, gone } = tried(trying);
          const shown = new Map([...byName(still.filter(({ key }) => !gone.has(key))), ...byName(moving)]);
          const settled = byName(layOut(planLayers, trying).still);
          expect([...shown.keys()].sort()).toEqual([...settled.keys()].sort());
          for (const [key, items] of settled) expect(shown.get(key)).toEqual(items);
        }
      }),
      seeded,
    );
  });

  it("is, in the picture, every line that will be drawn and no other, whatever moves", () => {
    fc.assert(
      fc.property(anyTrying, ([start, first, tries]) => {
        const { exercise: rest } = run(start, first);
        const still = pictureLayers(rest, rememberIn(new Map()));
        const change = createPictureChange();
        for (const list of tries) {
          const { exercise: trying } = run({ ...start, exercise: rest }, list);
          const { lists, gone } = change(rest, trying);
          const left = gone.has("set") ? [] : still.filter(({ key }) => !gone.has(key));
          const settled = pictureLayers(trying, rememberIn(new Map())).flatMap((layer) => layer.list);
          const shown = [...left.flatMap((layer) => layer.list), ...lists.flat()];
          expect(linesOf(shown)).toEqual(linesOf(settled));
        }
      }),
      seeded,
    );
  });

  it("takes nothing off the drawings that is drawn as before", () => {
    fc.assert(
      fc.property(anyStart, fc.array(anyMaking, { maxLength: 8 }), (start, first) => {
        const { exercise } = run(start, first);
        expect(layOut(planLayers, exercise).tried(exercise)).toEqual({ moving: [], gone: new Set() });
        expect(createPictureChange()(exercise, { ...exercise })).toEqual({ lists: [], gone: new Set() });
      }),
      seeded,
    );
  });

  it("names the layers it takes off with the very same set from one moment of a drag to the next", () => {
    const { exercise: rest } = run(edited(), []);
    const { tried } = layOut(planLayers, rest);
    const change = createPictureChange();
    const moved = [0.1, 0.2, 0.3].map((by) => {
      const at = rest.plan.corners.get("B") ?? [0, 0];
      const corners = new Map(rest.plan.corners).set("B", [at[0] + by, at[1] + by]);
      return { ...rest, plan: { ...rest.plan, corners } };
    });
    const plan = moved.map((trying) => tried(trying).gone);
    const picture = moved.map((trying) => change(rest, trying).gone);
    expect([...(plan[0] ?? [])]).toEqual(expect.arrayContaining(["wall.W1", "wall.W2", "corner.B"]));
    expect([...(picture[0] ?? [])].sort()).toEqual(["wall.W1", "wall.W2"]);
    for (const names of plan) expect(names).toBe(plan[0]);
    for (const names of picture) expect(names).toBe(picture[0]);
  });

  it("keeps off the paper what stands as before for a moment, and paints it as it stands", () => {
    const { exercise: rest } = run(edited(), []);
    const { still, tried } = layOut(planLayers, rest);
    const at = rest.plan.corners.get("B") ?? [0, 0];
    const [first, back, last] = [0.1, 0, 0.2].map((by) => {
      const corners = new Map(rest.plan.corners).set("B", by === 0 ? at : [at[0] + by, at[1] + by]);
      return tried({ ...rest, plan: { ...rest.plan, corners } });
    });
    expect(first?.gone.size).toBeGreaterThan(0);
    expect(back?.gone).toBe(first?.gone);
    expect(last?.gone).toBe(first?.gone);
    expect(byName(back?.moving ?? [])).toEqual(byName(still.filter(({ key }) => first?.gone.has(key))));
  });
});

function edited(): Draft {
  const [draft] = fc.sample(
    anyStart.filter(({ exercise }) => exercise.plan.walls.length > 1),
    { numRuns: 1, seed: seeded.seed },
  );
  if (!draft) throw new Error("No start has walls.");
  return draft;
}
