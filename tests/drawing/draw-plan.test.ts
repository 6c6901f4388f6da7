import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planeBox } from "@/lib/drawing/clear-lettering";
import { drawPlace } from "@/lib/drawing/draw-place";
import { drawPlan } from "@/lib/drawing/draw-plan";
import { readExercise } from "@/lib/exercise/read-exercise";
import { wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";
import { firstOf, lastOf, letteringOf, numbersOf, strokeOf } from "./fixtures/find-stroke";
import { loadFixture } from "./fixtures/load-fixture";
import { planOf, wallAB } from "./fixtures/plan-of";

const FIXTURES = [loadFixture("tide-mill"), loadFixture("rope-walk")];
const STAGE = { opening: { width: 10, height: 6 }, depth: 8, apron: 1, rake: 0 };

const SHIPPED = readdirSync("exercises", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".json"))
  .map((name) => ({ name, read: readExercise(readFileSync(`exercises/${name}`, "utf8")) }));

describe("the ground plan", () => {
  it.each(FIXTURES)("gives $id unique ids and finite numbers only", (exercise) => {
    const list = drawPlan(exercise);
    expect(numbersOf(list).every(Number.isFinite)).toBe(true);
    expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
  });

  it.each(SHIPPED)("draws $name", ({ read }) => {
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const list = drawPlan(read.exercise);
    expect(numbersOf(list).every(Number.isFinite)).toBe(true);
    expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
    for (const wall of read.exercise.plan.walls)
      expect(list.some(({ id }) => id.startsWith(`plan.wall.${wall.id}.`))).toBe(true);
  });

  it("survives whatever plan is thrown at it", () => {
    const length = fc.double({ min: -6, max: 6, noNaN: true });
    const place = fc.tuple(length, length) as fc.Arbitrary<PlanPoint>;
    fc.assert(
      fc.property(
        fc.array(place, { minLength: 2, maxLength: 6 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (places, thickness) => {
          const corners = Object.fromEntries(places.map((at, i) => [`C${i}`, at]));
          const walls = places
            .slice(1)
            .map((_, i) => wallAB({ id: `W${i}`, from: `C${i}`, to: `C${i + 1}`, thickness }));
          const platforms = [{ id: "P", outline: places, height: 1, base: 0 }];
          const stairs = [
            {
              id: "S",
              nosing: [places[0], places[1]] as [PlanPoint, PlanPoint],
              steps: 4,
              tread: 0.3,
              riser: 0.2,
              base: 0,
            },
          ];
          const list = drawPlan({
            plan: planOf({ corners, walls, platforms, stairs }),
            stage: STAGE,
            units: "m",
            scaleRatio: 50,
          });
          expect(numbersOf(list).every(Number.isFinite)).toBe(true);
          expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
        },
      ),
      { seed: 7, numRuns: 150 },
    );
  });

  it("cuts the proscenium wall at the two jambs of the opening, with the plaster line between and beyond them", () => {
    const list = drawPlan({ plan: planOf({}), stage: STAGE, units: "m", scaleRatio: 50 });
    for (const [side, jamb] of [
      ["left", -5],
      ["right", 5],
    ] as const) {
      const face = strokeOf(list, `plan.stage.proscenium.${side}.face`);
      expect(face.weight).toBe("extra-thick");
      expect(Math.min(...face.points.map(([x]) => Math.abs(x)))).toBe(Math.abs(jamb));
      expect(Math.max(...face.points.map(([, y]) => y))).toBe(0);
    }
    const plaster = strokeOf(list, "plan.stage.plaster-line");
    expect(plaster.line).toBe("plaster");
    expect(firstOf(plaster)[0]).toBeLessThan(-5);
    expect(lastOf(plaster)[0]).toBeGreaterThan(5);
    expect(strokeOf(list, "plan.stage.centre-line").points.every(([x]) => x === 0)).toBe(true);
    expect(Math.min(...strokeOf(list, "plan.stage.apron").points.map(([, y]) => y))).toBe(-1);
  });

  it("runs the centre line on across a platform and what stands there, as the line all is measured from", () => {
    // Common practice, no source.
    const platform = {
      id: "P",
      outline: [
        [-1, 1],
        [1, 1],
        [1, 3],
        [-1, 3],
      ] satisfies PlanPoint[],
      height: 0.5,
      base: 0,
    };
    const ids = drawPlan({ plan: planOf({ platforms: [platform] }), stage: STAGE, units: "m", scaleRatio: 50 }).map(
      ({ id }) => id,
    );
    expect(ids.indexOf("plan.stage.centre-line")).toBeGreaterThan(ids.indexOf("plan.platform.P.top"));
  });

  it.each([
    { height: 0.7, units: "m", said: null },
    { height: 0.8, units: "m", said: "GUARD: A DROP OF MORE THAN 762 mm." },
    { height: 0.8, units: "ft-in", said: "GUARD: A DROP OF MORE THAN 2'-6\"." },
  ] as const)("says the caution on a plan that marks a drop ($height m, $units), and only there", (each) => {
    const { height, units, said } = each;
    const outline: PlanPoint[] = [
      [-1, 1],
      [1, 1],
      [1, 3],
      [-1, 3],
    ];
    const plan = planOf({ platforms: [{ id: "P", outline, height, base: 0 }] });
    const caution = drawPlan({ plan, stage: STAGE, units, scaleRatio: 50 }).flatMap((item) =>
      item.kind === "lettering" && item.id.startsWith("plan.caution") ? [item.text] : [],
    );
    expect(caution).toEqual(
      said === null
        ? []
        : [said, "A TEACHING SKETCH IS NOT A CONSTRUCTION DRAWING:", "LOCAL CODES AND LICENSED PRACTICE DECIDE."],
    );
  });

  it("notes a rake with its ratio and an arrow up it, and no rake without", () => {
    const rope = drawPlan(FIXTURES[1] as (typeof FIXTURES)[number]);
    expect(letteringOf(rope, "plan.stage.rake.ratio").text).toBe("RAKE 1 IN 20");
    const arrow = strokeOf(rope, "plan.stage.rake.arrow");
    expect(lastOf(arrow)[1]).toBeGreaterThan(firstOf(arrow)[1]);
    expect(drawPlan(FIXTURES[0] as (typeof FIXTURES)[number]).some(({ id }) => id.startsWith("plan.stage.rake"))).toBe(
      false,
    );
  });

  it.each(FIXTURES)("letters the corners of $id offstage of the walls that meet there", (exercise) => {
    const list = drawPlan(exercise);
    for (const wall of exercise.plan.walls) {
      const line = wallLine(exercise.plan, wall);
      for (const corner of [wall.from, wall.to]) {
        const [left, bottom, right, top] = planeBox(
          letteringOf(list, `plan.corner.${corner}.name`),
          exercise.scaleRatio,
        );
        const [x, y] = exercise.plan.corners.get(corner) ?? [0, 0];
        const offstage =
          ((left + right) / 2 - x) * (line?.offstage[0] ?? 0) + ((bottom + top) / 2 - y) * (line?.offstage[1] ?? 0);
        expect(offstage, corner).toBeGreaterThan(0);
      }
    }
  });

  it("letters no two names over each other", () => {
    for (const exercise of FIXTURES) {
      const boxes = drawPlan(exercise)
        .filter((item) => item.kind === "lettering")
        .filter(({ id }) => !id.startsWith("plan.stage.centre-line"))
        .map((lettering) => ({ id: lettering.id, box: planeBox(lettering, exercise.scaleRatio) }));
      const clashes = boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          .filter((b) => a.box[0] < b.box[2] && b.box[0] < a.box[2] && a.box[1] < b.box[3] && b.box[1] < a.box[3])
          .map((b) => `${a.id} ${b.id}`),
      );
      expect(clashes).toEqual([]);
    }
  });
});

describe("the place of a point", () => {
  const sheet = { units: "ft-in", scaleRatio: 48 } as const;

  it("is dimensioned square from the centre line and from the plaster line, in true lengths", () => {
    const list = drawPlace(sheet, [-7 * 0.3048, 14 * 0.3048], "B");
    expect(letteringOf(list, "place.B.across.length").text).toBe("7'-0\"");
    expect(letteringOf(list, "place.B.upstage.length").text).toBe("14'-0\"");
    expect(strokeOf(list, "place.B.across").points).toEqual([
      [0, 14 * 0.3048],
      [-7 * 0.3048, 14 * 0.3048],
    ]);
    expect(list.every(({ pencil }) => pencil === "blue")).toBe(true);
  });

  it("writes a short dimension's number clear of the mark that stands at the point", () => {
    const at: PlanPoint = [-4.2, 0.6];
    const [left, bottom, right, top] = planeBox(
      letteringOf(drawPlace({ units: "m", scaleRatio: 60 }, at, "A"), "place.A.upstage.length"),
      60,
    );
    const away = Math.hypot(Math.max(left - at[0], 0, at[0] - right), Math.max(bottom - at[1], 0, at[1] - top));
    // The ring round a point is some 5 mm wide on paper, as it is shown.
    expect(away).toBeGreaterThan(0.0025 * 60);
  });

  it("leaves out a dimension of no length, and the numbers where they are to be read with the rule", () => {
    expect(drawPlace(sheet, [0, 3], "C").some(({ id }) => id.startsWith("place.C.across"))).toBe(false);
    expect(drawPlace(sheet, [1, 3], "C", { numbers: false }).every(({ kind }) => kind === "stroke")).toBe(true);
  });
});
