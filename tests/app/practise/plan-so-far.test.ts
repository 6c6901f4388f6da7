import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawnPoints, truePlaces } from "@/app/_sheet/drawn-points";
import { drawPlanSoFar } from "@/app/_sheet/plan-so-far";
import { emptyPlan } from "@/app/_sheet/ruled-plan";
import { sheetBounds } from "@/app/_sheet/sheet-bounds";
import { drawTruePicture } from "@/app/practise/[id]/true-picture";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { readExercise } from "@/lib/exercise/read-exercise";
import { listEdges } from "@/lib/plan/list-edges";

type Corners = Readonly<Record<string, readonly [number, number]>>;
type Change = { readonly plan?: Record<string, unknown>; readonly task?: Record<string, unknown> };

const CORNERS: Corners = { A: [-12, 3], B: [-8, 12], C: [7, 12] };

/** Two walls with a door between three corners, on a stage 32 ft wide and 26 ft deep. */
function room(corners: Corners = CORNERS, { plan = {}, task = {} }: Change = {}): Exercise {
  const reading = readExercise(
    JSON.stringify({
      format: "plasterline.exercise/1",
      id: "room",
      title: "Room",
      unit: "reading",
      level: 1,
      units: "ft-in",
      scale: "1/4in=1ft",
      stage: { opening: { width: 32, height: 20 }, depth: 26, apron: 3 },
      viewer: { distance: 36, eyeHeight: 8 },
      plan: {
        corners,
        walls: [
          { id: "W1", from: "A", to: "B", height: 12, thickness: 0.5 },
          {
            id: "W2",
            from: "B",
            to: "C",
            height: 12,
            thickness: 0.5,
            openings: [{ id: "door", kind: "door", at: 2, width: 3, head: 7 }],
          },
        ],
        ...plan,
      },
      task: { kind: "picture-to-plan", marks: ["A.foot", "B.foot", "C.foot"], ...task },
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

function partsOf(exercise: Exercise) {
  const points = exercisePoints(exercise);
  return { exercise, points, edges: listEdges(exercise.plan, points) };
}

/** The ids of what is drawn beyond the empty plan once the first `placed` marks are down, each `off` by so many metres. */
function drawnIds(exercise: Exercise, placed: number, off = 0): string[] {
  const parts = partsOf(exercise);
  const truth = truePlaces(exercise, parts.points);
  const marks = exercise.task.marks.slice(0, placed).map((point) => {
    const [x, y] = truth.get(point) ?? [0, 0];
    return { point, at: [x + off, y] as const, with: "mouse" as const };
  });
  const empty = new Set(emptyPlan(exercise).map(({ id }) => id));
  return drawPlanSoFar(parts, drawnPoints(exercise, truth, marks))
    .map(({ id }) => id)
    .filter((id) => !empty.has(id));
}

const starts = (ids: readonly string[], start: string) => ids.some((id) => id.startsWith(start));

describe("the plan as far as it has been read back", () => {
  it("is the empty stage with its rule before anything is set down", () => {
    const empty = emptyPlan(room());
    expect(drawnIds(room(), 0)).toEqual([]);
    // A tick each foot within 32 ft, and the zero.
    expect(empty.filter(({ id }) => /^plan\.rule\.-?\d+$/.test(id))).toHaveLength(33);
    expect(empty.filter(({ id }) => id === "plan.rule.5")).toMatchObject([
      {
        points: [
          [5 * 0.3048, 0],
          [5 * 0.3048, expect.any(Number)],
        ],
      },
    ]);
  });

  it("depends on nothing that is still asked, nor does its size", () => {
    const place = (from: number, to: number) => fc.integer({ min: from, max: to });
    const corner = fc.tuple(place(-14, 14), place(2, 24));
    fc.assert(
      fc.property(corner, corner, corner, (A, B, C) => {
        const other = room({ A, B, C });
        expect(drawPlanSoFar(partsOf(other), new Map())).toEqual(emptyPlan(room()));
        expect(sheetBounds(other).plan).toEqual(sheetBounds(room()).plan);
        // One corner read: the same drawing, wherever the two others are.
        const read = new Map([["A.foot", [-2, 5] as const]]);
        const [one, two] = [room({ A: [-6, 16], B, C }), room({ A: [-6, 16], B: C, C: B })].map(partsOf);
        if (one && two) expect(drawPlanSoFar(one, read)).toEqual(drawPlanSoFar(two, read));
      }),
      { numRuns: 40 },
    );
  });

  it("names a corner as it is read, and draws a wall once both its corners are", () => {
    expect(drawnIds(room(), 1)).toContain("plan.corner.A.name");
    expect(starts(drawnIds(room(), 1), "plan.wall")).toBe(false);
    expect(starts(drawnIds(room(), 2), "plan.wall.W1")).toBe(true);
    expect(starts(drawnIds(room(), 2), "plan.wall.W2")).toBe(false);
    expect(starts(drawnIds(room(), 3), "plan.wall.W2.door")).toBe(true);
  });

  it("keeps a door back until its jambs are read, and draws the wall's foot as a line", () => {
    const marks = ["A.foot", "B.foot", "C.foot", "W2.door.start.sill", "W2.door.end.sill"];
    const asksDoor = room(CORNERS, { task: { marks } });
    expect(drawnIds(asksDoor, 3)).toContain("own.B.foot~C.foot");
    for (const placed of [3, 4]) expect(starts(drawnIds(asksDoor, placed), "plan.wall.W2")).toBe(false);
    expect(drawnIds(asksDoor, 4)).toContain("cross.W2.door.start.sill.across");
    expect(starts(drawnIds(asksDoor, 5), "plan.wall.W2.door")).toBe(true);
    expect(drawnIds(asksDoor, 5)).not.toContain("own.B.foot~C.foot");
  });

  it("keeps a thing back that stands where something is still asked", () => {
    const P1 = {
      id: "P1",
      outline: [
        [2, 6],
        [6, 6],
        [6, 9],
        [2, 9],
      ],
      height: 1,
    };
    const crate = { id: "crate", kind: "box", at: [7, 7.5], width: 2, depth: 3, height: 2 };
    const touching = room(
      {},
      {
        plan: { walls: [], platforms: [P1], furniture: [crate] },
        task: { marks: ["crate.1.foot", "P1.1.foot", "P1.2.foot"] },
      },
    );
    // The crate's near corner on the viewer's left is the platform's second.
    expect(drawnIds(touching, 1)).not.toContain("plan.furniture.crate");
    expect(starts(drawnIds(touching, 2), "plan.furniture.crate")).toBe(false);
    expect(starts(drawnIds(touching, 3), "plan.furniture.crate")).toBe(true);
    expect(starts(drawnIds(touching, 3), "plan.platform.P1")).toBe(true);
  });

  it("draws what is given from the start", () => {
    const given = room(CORNERS, { task: { marks: ["C.foot"], given: ["A.foot", "B.foot"] } });
    expect(starts(drawnIds(given, 0), "plan.wall.W1")).toBe(true);
    expect(drawnIds(given, 0)).not.toContain("plan.corner.C.name");
  });

  it("goes on from the student's own places where the exercise says so, in lines alone", () => {
    const own = room(CORNERS, { task: { goOnFrom: "own" } });
    const ids = drawnIds(own, 3, 0.4);
    expect(ids).toContain("own.A.foot~B.foot");
    expect(ids).toContain("name.C.foot");
    expect(starts(ids, "plan.")).toBe(false);
  });

  it("has room for a point past the stage's box, as much for any such point", () => {
    const past = (x: number) => sheetBounds(room({ ...CORNERS, C: [x, 24] })).plan;
    expect(past(22).right).toBeGreaterThan(22 * 0.3048);
    expect(past(23)).toEqual(past(22));
  });
});

describe("the picture that is read back", () => {
  it("shows a spike mark that no line runs to as a cross", () => {
    const spikes = room({ Q: [4, 9], S: [-6, 5] }, { plan: { walls: [] }, task: { marks: ["Q.foot", "S.foot"] } });
    const ids = drawTruePicture(partsOf(spikes), []).map(({ id }) => id);
    expect(ids).toContain("cross.Q.foot.across");
    expect(ids).toContain("cross.S.foot.up");
  });

  it("shows the whole set with its corners named, cut at the opening", () => {
    const exercise = room(
      { ...CORNERS, D: [30, 4] },
      {
        plan: {
          walls: [
            { id: "W1", from: "A", to: "B", height: 12 },
            { id: "W3", from: "C", to: "D", height: 30 },
          ],
        },
      },
    );
    const list = drawTruePicture(partsOf(exercise), []);
    const ids = list.map(({ id }) => id);
    expect(ids).toContain("given.A.foot~B.foot");
    expect(ids).toContain("given.C.foot~D.foot");
    expect(ids).toContain("name.A.foot");
    expect(ids).not.toContain("name.D.foot");
    expect(ids).not.toContain("given.D.foot~D.top");
    for (const item of list) {
      if (item.kind !== "stroke") continue;
      for (const [x, z] of item.points) {
        expect(Math.abs(x)).toBeLessThanOrEqual(16 * 0.3048 + 1e-9);
        expect(z).toBeLessThanOrEqual(20 * 0.3048 + 1e-9);
      }
    }
  });
});
