import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Draft, Thing } from "@/lib/draft/draft";
import { doorHinges } from "@/lib/plan/door-hinges";
import { furnitureCorners } from "@/lib/plan/furniture-corners";
import { namePoints } from "@/lib/plan/name-points";
import type { Opening, Wall } from "@/lib/plan/plan";
import { openingJambs, type WallLine, wallLine } from "@/lib/plan/wall-line";
import { seeded } from "../../seeded";
import { everything } from "../any-edit";
import { edited, fiveWalls, madeBy, planEdited, refusal } from "./five-walls";

const wallThing = (id: string): Thing => ({ kind: "wall", id });

/** Both jambs of a door in the plan, the hung one first; and the directions along and offstage. */
function hung(draft: Draft, wallId: string, openingId: string) {
  const { plan } = draft.exercise;
  const wall = plan.walls.find(({ id }) => id === wallId) as Wall;
  const opening = wall.openings.find(({ id }) => id === openingId) as Opening;
  const line = wallLine(plan, wall) as WallLine;
  const jambs = openingJambs(line, opening);
  const [end] = doorHinges(line, opening);
  return { hinge: jambs[end as "start" | "end"], middle: jambs.middle, offstage: line.offstage };
}

function close(one: readonly number[], other: readonly number[]) {
  expect(one.length).toBe(other.length);
  one.forEach((value, i) => {
    expect(value).toBeCloseTo(other[i] as number, 9);
  });
}

describe("move", () => {
  it("of a wall takes its corners and so its neighbours' ends; openings keep their place in it", () => {
    const plan = planEdited(fiveWalls(), { edit: "move", things: [wallThing("W3")], by: [0.5, 1] });
    expect([...plan.corners.values()]).toEqual([
      [-5, 1],
      [-4, 1],
      [-2.5, 6],
      [3.5, 6],
      [4, 1],
      [5, 1],
    ]);
    expect(plan.walls[2]?.openings[0]?.at).toBe(4);
  });

  it("of a wall and its corner moves the corner once", () => {
    const plan = planEdited(fiveWalls(), {
      edit: "move",
      things: [wallThing("W3"), { kind: "corner", id: "C" }],
      by: [1, 0],
    });
    expect(plan.corners.get("C")).toEqual([-2, 5]);
  });

  it("of an opening slides it along its wall, as far as the wall goes", () => {
    const things: readonly Thing[] = [{ kind: "opening", wall: "W3", id: "window" }];
    expect(planEdited(fiveWalls(), { edit: "move", things, by: [-1, 3] }).walls[2]?.openings[0]?.at).toBe(3);
    expect(planEdited(fiveWalls(), { edit: "move", things, by: [9, 0] }).walls[2]?.openings[0]?.at).toBe(4.5);
  });

  it("by nothing is no change", () => {
    const draft = fiveWalls();
    expect(edited(draft, { edit: "move", things: [wallThing("W3")], by: [0, 0] })).toBe(draft);
  });
});

describe("turn", () => {
  it("turns corners about a place", () => {
    const plan = planEdited(fiveWalls(), {
      edit: "turn",
      things: [wallThing("W1")],
      about: [-4, 1],
      angle: Math.PI / 2,
    });
    expect(plan.corners.get("A")).toEqual([-4, 0]);
    expect(plan.corners.get("B")).toEqual([-4, 1]);
  });

  it("is refused for an opening alone", () => {
    const things: readonly Thing[] = [{ kind: "opening", wall: "W3", id: "window" }];
    expect(refusal(fiveWalls(), { edit: "turn", things, about: [0, 0], angle: 1 })).toMatch(/turns with its wall/);
  });
});

describe("copy", () => {
  it("makes corners of its own, shared between copied walls, and takes the openings along", () => {
    const edit = { edit: "copy", things: [wallThing("W2"), wallThing("W3")], by: [0, 3] } as const;
    expect(madeBy(fiveWalls(), edit)).toEqual([
      { kind: "corner", id: "G" },
      { kind: "corner", id: "H" },
      { kind: "corner", id: "I" },
      { kind: "wall", id: "W6" },
      { kind: "wall", id: "W7" },
    ]);
    const plan = planEdited(fiveWalls(), edit);
    expect(plan.walls.slice(5)).toMatchObject([
      { from: "G", to: "H", openings: [{ id: "door", at: 1 }] },
      { from: "H", to: "I", openings: [{ id: "window", at: 4 }] },
    ]);
    expect(plan.corners.get("H")).toEqual([-3, 8]);
  });

  it("joins a corner that stands where it goes", () => {
    const plan = planEdited(fiveWalls(), { edit: "copy", things: [wallThing("W5")], by: [1, 0] });
    expect(plan.walls[5]).toMatchObject({ id: "W6", from: "F", to: "G" });
  });

  it("of an opening goes on along its wall", () => {
    const things: readonly Thing[] = [{ kind: "opening", wall: "W3", id: "window" }];
    const plan = planEdited(fiveWalls(), { edit: "copy", things, by: [-2, 0] });
    expect(plan.walls[2]?.openings).toMatchObject([
      { id: "window", at: 4 },
      { id: "window2", at: 2 },
    ]);
  });
});

describe("mirror", () => {
  const half = () =>
    edited(fiveWalls(), {
      edit: "take-away",
      things: [
        { kind: "corner", id: "E" },
        { kind: "opening", wall: "W3", id: "window" },
      ],
    });

  it("copies half a set: it runs on from stage right round to stage left, onstage on the same hand, doors hung alike", () => {
    const things = [wallThing("W1"), wallThing("W2")];
    const draft = edited(half(), { edit: "mirror", things, x: 0, copy: true });
    const { plan } = draft.exercise;
    expect(plan.walls.map(({ id, from, to, onstage }) => [id, from, to, onstage])).toEqual([
      ["W1", "A", "B", "right"],
      ["W2", "B", "C", "right"],
      ["W3", "C", "D", "right"],
      ["W4", "D", "E", "right"],
      ["W5", "E", "F", "right"],
    ]);
    expect(plan.corners.get("E")).toEqual([4, 1]);
    const [left, right] = [hung(draft, "W2", "door"), hung(draft, "W4", "door")];
    close([-left.hinge[0], left.hinge[1]], right.hinge);
    close([-left.middle[0], left.middle[1]], right.middle);
    close([-left.offstage[0], left.offstage[1]], right.offstage);
  });

  it("does not copy what is its own mirror image", () => {
    expect(refusal(half(), { edit: "mirror", things: [wallThing("W3")], x: 0, copy: true })).toBe(
      "What the copy would make is there already.",
    );
  });

  it("puts the mirror image of an opening into the wall that stands there", () => {
    const things: readonly Thing[] = [{ kind: "opening", wall: "W2", id: "door" }];
    const draft = edited(fiveWalls(), { edit: "mirror", things, x: 0, copy: true });
    const [left, right] = [hung(draft, "W2", "door"), hung(draft, "W4", "door")];
    close([-left.hinge[0], left.hinge[1]], right.hinge);
    expect(refusal(half(), { edit: "mirror", things, x: 0, copy: true })).toMatch(/No wall stands where/);
  });

  it("in place keeps onstage on its side, hinges on their jamb, and marks on their points, of any set", () => {
    const hinge = fc.constantFrom("start" as const, "end" as const, null);
    const place = fc.tuple(fc.integer({ min: -8, max: 8 }), fc.integer({ min: 0, max: 8 }));
    fc.assert(
      fc.property(
        place,
        hinge,
        fc.constantFrom(0, 0.5),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (b, hinged, x, turn) => {
          fc.pre(!(b[0] === -3 && b[1] === 5));
          const draft = edited(
            fiveWalls(),
            { edit: "move-corner", id: "B", to: b },
            { edit: "change-opening", wall: "W2", id: "door", change: { hinge: hinged } },
            {
              edit: "add-furniture",
              furniture: { kind: "bed", at: [1, 2], turn, width: 1, depth: 2, height: 0.5, base: 0 },
            },
            {
              edit: "add-stair",
              stair: {
                nosing: [
                  [0, 1],
                  [1, 2],
                ],
                steps: 2,
                tread: 0.3,
                riser: 0.1,
                base: 0,
              },
            },
          );
          const names = [...namePoints(draft.exercise.plan, draft.exercise.stage).keys()];
          const asked = edited(draft, { edit: "set-task", task: { marks: names } });
          const mirrored = edited(asked, { edit: "mirror", things: everything(asked), x, copy: false });
          const before = namePoints(asked.exercise.plan, asked.exercise.stage);
          const now = namePoints(mirrored.exercise.plan, mirrored.exercise.stage);
          expect(mirrored.exercise.task.marks.length).toBe(names.length);
          names.forEach((name, i) => {
            const from = before.get(name)?.at as readonly number[];
            const to = now.get(mirrored.exercise.task.marks[i] as string)?.at as readonly number[];
            close([2 * x - (from[0] as number), from[1] as number, from[2] as number], to);
          });
          const [was, is] = [hung(asked, "W2", "door"), hung(mirrored, "W2", "door")];
          close([2 * x - was.hinge[0], was.hinge[1]], is.hinge);
          close([-was.offstage[0], was.offstage[1]], is.offstage);
          const back = edited(mirrored, { edit: "mirror", things: everything(mirrored), x, copy: false });
          for (const [name, at] of back.exercise.plan.corners) close(at, asked.exercise.plan.corners.get(name) ?? []);
          expect(back.exercise.task.marks).toEqual(asked.exercise.task.marks);
          expect(back.exercise.plan.furniture.flatMap(furnitureCorners).length).toBe(4);
        },
      ),
      seeded,
    );
  });
});
