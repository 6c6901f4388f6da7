import { describe, expect, it } from "vitest";
import { DEMONSTRATION_MARGINS, demonstrationBoxes } from "@/lib/drawing/demonstration/demonstration-boxes";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import { startDemonstrationDrawing } from "@/lib/drawing/demonstration/draw-demonstration";
import { fitDrawing } from "@/lib/drawing/demonstration/fit-drawing";
import type { DisplayList } from "@/lib/drawing/display-list";
import { LETTER_MM } from "@/lib/drawing/make-stroke";
import type { Exercise } from "@/lib/exercise/exercise";
import { SHIPPED } from "../../exercises/shipped";
import { readTideOffice } from "../../fixtures/tide-office";

/** The drawings of a projector's screen of 1280 by 720, about. */
function drawn(exercise: Exercise) {
  const steps = demonstrationSteps(exercise);
  const boxes = demonstrationBoxes(exercise, steps);
  const room = { width: 640, height: 520, letterUnit: 9 };
  const layout = {
    picture: fitDrawing(boxes.picture, DEMONSTRATION_MARGINS.picture, room),
    plan: fitDrawing(boxes.plan, DEMONSTRATION_MARGINS.plan, room),
  };
  return { steps, layout, draw: startDemonstrationDrawing(exercise, layout) };
}

const ids = (list: DisplayList) => list.map(({ id }) => id);

describe.each(SHIPPED.map(({ exercise }) => ({ id: exercise.id, exercise })))("the drawings of $id", ({ exercise }) => {
  const { steps, draw, layout } = drawn(exercise);

  it("have their points in numbers, their ids once each, and no letter smaller than a note", () => {
    for (const step of steps) {
      const { picture, plan } = draw(step);
      for (const plane of [picture, plan]) {
        const all = [...plane.sheet, ...plane.set, ...plane.construction];
        expect(new Set(ids(all)).size, `step ${step.number}`).toBe(all.length);
        for (const item of all) {
          if (item.kind === "lettering") expect(item.heightMm).toBeGreaterThanOrEqual(LETTER_MM.note);
          else expect(item.points.flat().every(Number.isFinite)).toBe(true);
        }
      }
    }
  });

  it("show the asked points inside what is seen", () => {
    for (const step of steps)
      for (const plane of ["picture", "plan"] as const) {
        const lit = draw(step)[plane].lit;
        const [left, bottom, right, top] = layout[plane].window;
        if (!lit || (plane === "picture" && Math.abs(lit[0]) > exercise.stage.opening.width * 0.64)) continue;
        expect(lit[0]).toBeGreaterThan(left);
        expect(lit[0]).toBeLessThan(right);
        expect(lit[1]).toBeGreaterThan(bottom);
        expect(lit[1]).toBeLessThan(top);
      }
  });
});

describe("what a step draws", () => {
  const exercise = readTideOffice();
  const { steps, draw } = drawn(exercise);
  const of = (point: string, kind: string) => {
    const found = steps.filter((step) => step.point === point && step.kind === kind).at(-1);
    if (!found) throw new Error(`${point} has no such step`);
    return draw(found);
  };

  it("leaves the picture empty beside the plan, then draws the sheet part by part", () => {
    const shown = steps.filter(({ kind }) => kind === "sheet").map((step) => ids(draw(step).picture.sheet).length);
    expect(shown[0]).toBe(0);
    for (const [i, count] of shown.slice(1).entries()) expect(count).toBeGreaterThan(shown[i] ?? 0);
  });

  it("draws a mark's lines in blue, the one on hand thick, each with its number", () => {
    const { construction } = of("B.foot", "line").picture;
    const strokes = construction.filter((item) => item.kind === "stroke");
    expect(strokes.every(({ pencil }) => pencil === "blue")).toBe(true);
    const last = steps.filter(({ point, kind }) => point === "B.foot" && kind === "line").at(-1);
    const thick = strokes.filter(({ weight }) => weight === "thick").map(({ id }) => id);
    expect(thick).toEqual([`construction.${last?.shown.drawn}.crossing`]);
    const numbers = construction.flatMap((item) => (item.kind === "lettering" ? [item.text] : []));
    expect(numbers).toEqual(Array.from({ length: last?.shown.drawn ?? 0 }, (_, i) => String(i + 1)));
  });

  it("makes the lines that a point completes stand out when it is set down, and not after", () => {
    const bold = (list: DisplayList) =>
      list.flatMap((item) => (item.kind === "stroke" && item.weight === "extra-thick" ? [item.id] : []));
    expect(bold(of("A.top", "set-down").picture.set)).toContain("own.A.foot~A.top");
    expect(bold(of("B.foot", "place").picture.set)).toEqual([]);
    expect(ids(of("B.foot", "place").picture.set)).toContain("own.A.foot~A.top");
  });

  it("brightens the plan's place with its two dimensions", () => {
    const { plan } = of("B.foot", "place");
    expect(plan.lit?.[0]).toBeCloseTo(-7 * 0.3048, 12);
    expect(plan.lit?.[1]).toBeCloseTo(14 * 0.3048, 12);
    const words = plan.construction.flatMap((item) => (item.kind === "lettering" ? [item.text] : []));
    expect(words.sort()).toEqual(["14'-0\"", "7'-0\""]);
  });

  it("draws what stays the same once, so that a page has nothing to draw anew", () => {
    expect(of("B.foot", "place").plan.sheet).toBe(of("A.top", "line").plan.sheet);
    expect(of("B.foot", "place").picture.sheet).toBe(of("A.top", "line").picture.sheet);
  });

  it("shows of a plan to be read back only what is read", () => {
    const read = readTideOffice(["/task", { kind: "picture-to-plan", marks: ["A.foot", "B.foot", "C.foot"] }]);
    const { steps: all, draw: drawRead } = drawn(read);
    const before = all.find(({ point }) => point === "C.foot");
    const after = all.filter(({ point }) => point === "C.foot").at(-1);
    if (!before || !after) throw new Error("C is read back");
    expect(ids(drawRead(before).plan.set).filter((id) => id.includes("~"))).toEqual(["own.A.foot~B.foot"]);
    expect(ids(drawRead(after).plan.set)).toContain("own.B.foot~C.foot");
    expect(ids(drawRead(before).plan.sheet).some((id) => id.startsWith("plan.wall"))).toBe(false);
    expect(ids(drawRead(before).picture.set)).toContain("own.B.foot~C.foot");
  });
});
