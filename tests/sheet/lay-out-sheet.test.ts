import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layOutSheet, type SheetLayout, type SheetNeeds } from "@/lib/sheet/lay-out-sheet";
import { MARKER_QUIET_MM } from "@/lib/sheet/marker-places";
import { PAPERS } from "@/lib/sheet/paper-size";
import { grow, holds, overlap, type SheetBox } from "@/lib/sheet/sheet-box";

/** A drawing so wide and so far up and down from its plaster line. */
const drawing = (width: number, up: number, down: number): SheetBox[] => [
  { left: -width / 2, top: -up, right: width / 2, bottom: down },
];
const words = (area: number) => (width: number) => area / width;

function needs(over: Partial<SheetNeeds> = {}): SheetNeeds {
  return {
    picture: drawing(120, 70, 8),
    plan: drawing(130, 85, 18),
    introHeight: words(1200),
    tasksHeight: words(4000),
    codeMm: 24,
    ...over,
  };
}

function everything(layout: SheetLayout): SheetBox[] {
  const { markers, title, name, intro, tasks, bar, code, scale, caution, picture, plan } = layout;
  const quiet = markers.map(({ box }) => grow(box, MARKER_QUIET_MM));
  return [...quiet, title, name, intro, tasks, bar, code, scale, caution, ...picture.boxes, ...plan.boxes];
}

function expectClear(layout: SheetLayout) {
  const boxes = everything(layout);
  for (const [i, a] of boxes.entries()) for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(false);
  const paper = grow(layout.printable, MARKER_QUIET_MM + 1e-6);
  for (const box of boxes) expect(holds(paper, box)).toBe(true);
  expect(layout.picture.at[0]).toBe(layout.plan.at[0]);
  expect(layout.picture.at[1]).toBeLessThan(layout.plan.at[1]);
}

describe("the layout of a sheet", () => {
  it.each(PAPERS)("has on %s the picture over the plan on one centre line, and nothing over anything else", (paper) => {
    const layout = layOutSheet(paper, needs());
    expect(layout).not.toBeNull();
    if (layout) expectClear(layout);
  });

  it("has drawings that leave the words room under them in the middle of the paper", () => {
    const layout = layOutSheet("letter", needs());
    expect(layout?.picture.at[0]).toBeCloseTo(215.9 / 2, 9);
    expect(layout?.tasks.top).toBeGreaterThan(layout?.plan.boxes[0]?.bottom ?? Infinity);
  });

  it("has drawings that are too high for that with the words beside them", () => {
    const layout = layOutSheet("letter", needs({ picture: drawing(100, 90, 8), plan: drawing(110, 90, 18) }));
    expect(layout).not.toBeNull();
    if (!layout) return;
    expectClear(layout);
    expect(layout.tasks.left).toBeGreaterThan(layout.plan.boxes[0]?.right ?? Infinity);
  });

  it("is none for drawings larger than the paper", () => {
    expect(layOutSheet("letter", needs({ picture: drawing(300, 70, 8) }))).toBeNull();
    expect(layOutSheet("letter", needs({ plan: drawing(100, 300, 8) }))).toBeNull();
    expect(layOutSheet("letter", needs({ tasksHeight: () => 500 }))).toBeNull();
  });

  it("never lays one thing over another, whatever is asked", () => {
    const mm = (max: number) => fc.double({ min: 1, max, noNaN: true });
    const asked = fc.record({
      w: mm(300),
      up: mm(200),
      down: mm(30),
      W: mm(300),
      UP: mm(250),
      DOWN: mm(40),
      area: mm(20_000),
    });
    fc.assert(
      fc.property(fc.constantFrom(...PAPERS), asked, (paper, { w, up, down, W, UP, DOWN, area }) => {
        const layout = layOutSheet(
          paper,
          needs({ picture: drawing(w, up, down), plan: drawing(W, UP, DOWN), tasksHeight: words(area) }),
        );
        if (layout) expectClear(layout);
      }),
      { numRuns: 400 },
    );
  });
});
