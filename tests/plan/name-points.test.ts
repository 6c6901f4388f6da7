import { describe, expect, it } from "vitest";
import { namePoints } from "@/lib/plan/name-points";
import { readTideOffice } from "../fixtures/tide-office";
import { expectPlace } from "./expect-place";

const FOOT_M = 0.3048;
const TURN_COS = Math.cos(Math.PI / 9);
const TURN_SIN = Math.sin(Math.PI / 9);
/** Length of the wall from C (9, 14) to E (12.5, 5), feet. */
const W4 = Math.sqrt(3.5 ** 2 + 9 ** 2);

describe("the named points of the tide office", () => {
  const exercise = readTideOffice();
  const points = namePoints(exercise.plan, exercise.stage);

  // In the file's feet, worked by hand from the plan.
  it.each([
    ["R.foot", [-17, 3, 0]],
    ["R.top", [-17, 3, 14]],
    ["B.foot", [-7, 14, 0]],
    ["B.top", [-7, 14, 14]],
    ["E.foot", [12.5, 5, 0]],
    ["W3.lookout.start.sill", [3, 14, 2.75]],
    ["W3.lookout.start.head", [3, 14, 8]],
    ["W3.lookout.end.sill", [7, 14, 2.75]],
    ["W3.lookout.end.head", [7, 14, 8]],
    ["W4.door.start.sill", [9 + (4 * 3.5) / W4, 14 - (4 * 9) / W4, 0]],
    ["W4.door.end.sill", [9 + (7 * 3.5) / W4, 14 - (7 * 9) / W4, 0]],
    ["W4.door.end.head", [9 + (7 * 3.5) / W4, 14 - (7 * 9) / W4, 7]],
    ["P1.1.foot", [0, 10, 0]],
    ["P1.2.top", [8, 10, 8 / 12]],
    ["P1.3.foot", [8, 14, 0]],
    ["P1.4.top", [0, 14, 8 / 12]],
    ["S1.1.start", [2, 9, 4 / 12]],
    ["S1.1.end", [6, 9, 4 / 12]],
    // corners of the desk before turning: 1 left-near, 2 right-near, 3 right-far, 4 left-far; 20 degrees counter-clockwise
    ["desk.1.foot", [-4 - 2.5 * TURN_COS + 1.25 * TURN_SIN, 7.5 - 2.5 * TURN_SIN - 1.25 * TURN_COS, 0]],
    ["desk.2.foot", [-4 + 2.5 * TURN_COS + 1.25 * TURN_SIN, 7.5 + 2.5 * TURN_SIN - 1.25 * TURN_COS, 0]],
    ["desk.3.top", [-4 + 2.5 * TURN_COS - 1.25 * TURN_SIN, 7.5 + 2.5 * TURN_SIN + 1.25 * TURN_COS, 2.5]],
    ["desk.4.top", [-4 - 2.5 * TURN_COS - 1.25 * TURN_SIN, 7.5 - 2.5 * TURN_SIN + 1.25 * TURN_COS, 2.5]],
    ["K1.centre.foot", [6, 7, 0]],
    ["K1.centre.top", [6, 7, 10]],
  ] as const)("%s stands at %o ft", (name, feet) => {
    expectPlace(
      points,
      name,
      feet.map((length) => length * FOOT_M),
    );
  });

  it("are these and no others, corners first, in the plan's order", () => {
    const pair = (name: string) => [`${name}.foot`, `${name}.top`];
    const jambs = (name: string) => ["start.sill", "start.head", "end.sill", "end.head"].map((end) => `${name}.${end}`);
    expect([...points.keys()]).toEqual([
      ...["R", "A", "B", "C", "E"].flatMap(pair),
      ...["W3.lookout", "W4.door"].flatMap(jambs),
      ...["P1.1", "P1.2", "P1.3", "P1.4"].flatMap(pair),
      ...["S1.1.start", "S1.1.end"],
      ...["desk.1", "desk.2", "desk.3", "desk.4", "K1.centre"].flatMap(pair),
    ]);
  });

  it("know what they stand over", () => {
    expect(points.get("B.top")?.over).toBe("B.foot");
    expect(points.get("W3.lookout.end.head")?.over).toBe("W3.lookout.end.sill");
    expect(points.get("B.foot")?.over).toBeNull();
    expect(points.get("S1.1.end")?.over).toBeNull();
  });

  it("lie on the floor where a foot or a sill of 0 does", () => {
    const onFloor = [...points.values()].filter((point) => point.onFloor).map(({ name }) => name);
    expect(onFloor).toContain("W4.door.start.sill");
    expect(onFloor).toContain("P1.3.foot");
    expect(onFloor).not.toContain("W3.lookout.start.sill");
    expect(onFloor).not.toContain("B.top");
    expect(onFloor).not.toContain("S1.1.start");
  });
});
