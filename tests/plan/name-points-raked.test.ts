import { describe, expect, it } from "vitest";
import { readExerciseJson } from "@/lib/exercise/read-exercise";
import { namePoints } from "@/lib/plan/name-points";
import type { NamedPoints } from "@/lib/plan/named-point";
import { expectPlace } from "./expect-place";

/** The named points of a plan in metres on a rake of 1:20, written as a file. */
function pointsOnRake(plan: object): NamedPoints {
  const reading = readExerciseJson({
    format: "plasterline.exercise/1",
    id: "raked",
    title: "Raked",
    unit: "sets",
    level: 1,
    units: "m",
    scale: "1:50",
    stage: { opening: { width: 10, height: 6 }, depth: 8, rake: "1:20" },
    viewer: { distance: 10, eyeHeight: 2 },
    plan,
    task: { kind: "plan-to-picture" },
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return namePoints(reading.exercise.plan, reading.exercise.stage);
}

describe("corners", () => {
  it("give a top for each wall where the walls end at different heights", () => {
    const points = pointsOnRake({
      corners: { A: [-3, 2], B: [-1, 5], C: [2, 5] },
      walls: [
        { id: "W1", from: "A", to: "B", height: 4 },
        { id: "W2", from: "B", to: "C", height: 3 },
      ],
    });
    expect(points.has("B.top")).toBe(false);
    expectPlace(points, "B.top.W1", [-1, 5, 4]);
    expectPlace(points, "B.top.W2", [-1, 5, 3]);
    expect(points.get("B.top.W2")?.over).toBe("B.foot");
    expectPlace(points, "A.top", [-3, 2, 4]);
    expectPlace(points, "C.top", [2, 5, 3]);
  });

  it("give one top where base and height come to the same", () => {
    const points = pointsOnRake({
      corners: { A: [-3, 2], B: [-1, 5], C: [2, 5] },
      walls: [
        { id: "W1", from: "A", to: "B", height: 4 },
        { id: "W2", from: "B", to: "C", height: 3, base: 1 },
      ],
    });
    expectPlace(points, "B.top", [-1, 5, 4]);
    // the lower wall's foot is the corner's
    expectPlace(points, "B.foot", [-1, 5, 0.25]);
    expectPlace(points, "C.foot", [2, 5, 1.25]);
  });

  it("in no wall are plain points on the floor", () => {
    const points = pointsOnRake({ corners: { Q: [1, 4], P: [1, -0.5] } });
    expect([...points.keys()]).toEqual(["Q.foot", "P.foot"]);
    expectPlace(points, "Q.foot", [1, 4, 0.2]);
    expectPlace(points, "P.foot", [1, -0.5, 0]);
  });

  it("keep level tops on a rake: height is measured at the plaster line", () => {
    const points = pointsOnRake({
      corners: { A: [-3, 0], B: [-3, 6] },
      walls: [{ id: "W1", from: "A", to: "B", height: 4 }],
    });
    expectPlace(points, "A.foot", [-3, 0, 0]);
    expectPlace(points, "B.foot", [-3, 6, 0.3]);
    expectPlace(points, "A.top", [-3, 0, 4]);
    expectPlace(points, "B.top", [-3, 6, 4]);
  });
});

describe("openings on a rake", () => {
  const wall = (openings: readonly object[], more: object = {}) =>
    pointsOnRake({
      corners: { A: [-3, 2], B: [-3, 6] },
      walls: [{ id: "W1", from: "A", to: "B", height: 4, openings, ...more }],
    });

  it("measure sill and head, level, from the floor under the opening's middle", () => {
    const points = wall([{ id: "w", kind: "window", at: 1, width: 2, sill: 0.9, head: 2.1 }]);
    // middle at y = 4, floor 0.2
    expectPlace(points, "W1.w.start.sill", [-3, 3, 1.1]);
    expectPlace(points, "W1.w.end.sill", [-3, 5, 1.1]);
    expectPlace(points, "W1.w.start.head", [-3, 3, 2.3]);
    expectPlace(points, "W1.w.end.head", [-3, 5, 2.3]);
  });

  it("let a sill of 0 follow the floor, under a level head", () => {
    const points = wall([{ id: "d", kind: "door", at: 1, width: 2, head: 2 }]);
    expectPlace(points, "W1.d.start.sill", [-3, 3, 0.15]);
    expectPlace(points, "W1.d.end.sill", [-3, 5, 0.25]);
    expectPlace(points, "W1.d.start.head", [-3, 3, 2.2]);
    expectPlace(points, "W1.d.end.head", [-3, 5, 2.2]);
  });

  it("add the wall's base", () => {
    const points = wall(
      [
        { id: "d", kind: "door", at: 1, width: 2, head: 2 },
        { id: "w", kind: "window", at: 3.2, width: 0.6, sill: 1, head: 2 },
      ],
      { base: 0.5 },
    );
    expectPlace(points, "W1.d.start.sill", [-3, 3, 0.65]);
    expectPlace(points, "W1.d.end.head", [-3, 5, 2.7]);
    // middle at y = 5.5, floor 0.275
    expectPlace(points, "W1.w.end.sill", [-3, 5.8, 1.775]);
    expectPlace(points, "A.top", [-3, 2, 4.5]);
  });
});

describe("platforms, stairs, furniture and columns on a rake", () => {
  it("hold a platform's top level from the floor at its first corner, plus its base", () => {
    const outline = [
      [0, 4],
      [2, 4],
      [2, 6],
      [0, 6],
    ];
    const points = pointsOnRake({
      platforms: [
        { id: "P1", outline, height: 0.4 },
        { id: "P2", outline: [[0, 6], ...outline.slice(0, 3)], height: 0.4, base: 0.1 },
      ],
    });
    expectPlace(points, "P1.1.foot", [0, 4, 0.2]);
    expectPlace(points, "P1.3.foot", [2, 6, 0.3]);
    for (const [i, [x, y]] of outline.entries())
      expectPlace(points, `P1.${i + 1}.top`, [x as number, y as number, 0.6]);
    expectPlace(points, "P2.1.top", [0, 6, 0.8]);
    expectPlace(points, "P2.2.top", [0, 4, 0.8]);
    expectPlace(points, "P2.2.foot", [0, 4, 0.3]);
  });

  it("let a stair climb to the left of its nosing, a tread back and a riser up for each step", () => {
    const steps = { steps: 3, tread: 0.3, riser: 0.15 };
    const points = pointsOnRake({
      stairs: [
        {
          id: "up",
          nosing: [
            [1, 4],
            [2, 4],
          ],
          ...steps,
        }, // climbs upstage
        {
          id: "right",
          nosing: [
            [1, 4],
            [1, 2],
          ],
          ...steps,
          base: 1,
        }, // climbs to stage left, +x
      ],
    });
    expectPlace(points, "up.1.start", [1, 4, 0.35]);
    expectPlace(points, "up.1.end", [2, 4, 0.35]);
    expectPlace(points, "up.3.start", [1, 4.6, 0.65]);
    expectPlace(points, "up.3.end", [2, 4.6, 0.65]);
    expectPlace(points, "right.1.start", [1, 4, 1.35]);
    // level from end to end: measured from the floor at the first point
    expectPlace(points, "right.1.end", [1, 2, 1.35]);
    expectPlace(points, "right.2.start", [1.3, 4, 1.5]);
    expect(points.has("up.4.start")).toBe(false);
  });

  it("hold furniture level from the floor at its centre, plus its base, its feet on the floor", () => {
    const points = pointsOnRake({
      furniture: [{ id: "bed", kind: "bed", at: [0, 4], turn: 90, width: 2, depth: 1, height: 0.5, base: 0.1 }],
    });
    // a quarter turn counter-clockwise takes left-near (-1, -0.5) to (0.5, -1)
    expectPlace(points, "bed.1.foot", [0.5, 3, 0.25]);
    expectPlace(points, "bed.2.foot", [0.5, 5, 0.35]);
    expectPlace(points, "bed.3.foot", [-0.5, 5, 0.35]);
    expectPlace(points, "bed.4.foot", [-0.5, 3, 0.25]);
    for (const i of [1, 2, 3, 4]) expect(points.get(`bed.${i}.top`)?.at[2]).toBeCloseTo(0.8, 9);
  });

  it("measure a column from the floor at its centre, plus its base", () => {
    const points = pointsOnRake({ columns: [{ id: "K", at: [2, 6], diameter: 0.4, height: 3, base: 0.2 }] });
    expectPlace(points, "K.centre.foot", [2, 6, 0.5]);
    expectPlace(points, "K.centre.top", [2, 6, 3.5]);
  });
});

describe("what cannot be placed", () => {
  it("is left out: an opening of a wall without its corner, a nosing of no length, a platform without an outline", () => {
    const points = pointsOnRake({
      corners: { A: [0, 1] },
      walls: [
        { id: "W1", from: "A", to: "B", height: 3, openings: [{ id: "d", kind: "door", at: 1, width: 1, head: 2 }] },
        { id: "W2", from: "A", to: "A", height: 3, openings: [{ id: "d", kind: "door", at: 1, width: 1, head: 2 }] },
      ],
      platforms: [{ id: "P1", outline: [], height: 1 }],
      stairs: [
        {
          id: "S1",
          nosing: [
            [1, 1],
            [1, 1],
          ],
          steps: 2,
          tread: 0.3,
          riser: 0.15,
        },
      ],
    });
    expect([...points.keys()]).toEqual(["A.foot", "A.top"]);
  });
});
