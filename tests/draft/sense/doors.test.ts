import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { newDraft } from "@/lib/draft/new-draft";
import { doorNotes } from "@/lib/draft/sense/doors/door-notes";
import type { Leaf } from "@/lib/draft/sense/doors/leaf";
import { stopAngle } from "@/lib/draft/sense/doors/stop-angle";
import { distanceToSegment } from "@/lib/geometry/segments-cross";
import { insideOutline } from "@/lib/plan/surface-level";
import type { PlanPoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";
import { anyDraft, edited } from "./make-draft";

const LEAF: Leaf = { pivot: [2, 5], shut: [1, 0], open: [0, 1], width: 1, low: 0, high: 2 };
/** Within 5 mm of the hinge nothing counts as met; seen from 20 mm away, where the search begins, that is an angle of so much. */
const HINGE_BLUR = 0.3;
const degrees = (angle: number | null) => (angle === null ? null : (angle * 180) / Math.PI);
const box = (x: number, y: number, size: number): readonly PlanPoint[] => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];

describe("how far a leaf opens", () => {
  // Worked by hand: a corner at (u, v) from the hinge is met at the angle whose tangent is v / u.
  it.each([
    ["a box 0.5 off whose near side reaches past the arc: sin = 0.5", box(2.5, 5.5, 2), 30],
    ["a box 0.3 off: sin = 0.3", box(2.6, 5.3, 3), 17.458],
    [
      "a wall straight across the sweep at 0.5 off: met by the leaf's edge, sin = 0.5",
      [
        [0, 5.5],
        [9, 5.5],
      ],
      30,
    ],
    [
      "a wall square to it at 0.8 along: met only near shut",
      [
        [2.8, 5],
        [2.8, 9],
      ],
      0.358,
    ],
    ["a box beyond the arc", box(2.8, 5.8, 1), null],
    ["a box behind the wall", box(2.2, 4, 1), null],
    [
      "a wall along its own jamb, where it comes to rest",
      [
        [2, 5],
        [2, 8],
      ],
      null,
    ],
    ["a platform all round it", box(-5, 0, 20), 0],
  ] as const)("stops at %s", (_, outline, angle) => {
    const found = degrees(stopAngle(LEAF, outline));
    if (angle === null) expect(found).toBeNull();
    else expect(Math.abs((found ?? Number.NaN) - angle)).toBeLessThan(0.7);
  });

  it("is what a search in small steps of the leaf's edge finds, for any triangle", () => {
    const corner = fc.tuple(fc.double({ min: 0.5, max: 4, noNaN: true }), fc.double({ min: 4, max: 7, noNaN: true }));
    fc.assert(
      fc.property(corner, corner, corner, (a, b, c) => {
        const found = stopAngle(LEAF, [a, b, c]);
        const places = (angle: number) =>
          Array.from({ length: 100 }, (_, k): PlanPoint => {
            const r = 0.02 + (k / 99) * 0.97;
            return [2 + r * Math.cos(angle), 5 + r * Math.sin(angle)];
          });
        const angles = Array.from({ length: 200 }, (_, i) => ((i + 0.5) / 200) * (Math.PI / 2));
        const sides = [
          [a, b],
          [b, c],
          [c, a],
        ] as const;
        const touches = (angle: number) =>
          sides.some((side) => places(angle).some((place) => distanceToSegment(place, side) < 0.02));
        if (found !== null && found > 0.01) expect(touches(found)).toBe(true);
        const before = angles.filter((angle) => angle < (found ?? Math.PI / 2) - HINGE_BLUR);
        expect(before.filter((angle) => places(angle).some((place) => insideOutline([a, b, c], place)))).toEqual([]);
      }),
      { ...seeded, numRuns: Math.min(40, seeded.numRuns) },
    );
  });
});

const wall = (door: object): Edit[] => [
  {
    edit: "add-walls",
    corners: [
      [-4, 4],
      [4, 4],
    ],
    closed: false,
    height: 3,
    thickness: 0.1,
  },
  {
    edit: "add-opening",
    wall: "W1",
    opening: {
      kind: "door",
      at: 3.5,
      width: 1,
      sill: 0,
      head: 2,
      depth: null,
      leaves: 1,
      hinge: "start",
      swing: "onstage",
      ...door,
    },
  },
];
const desk = (at: PlanPoint): Edit => ({
  edit: "add-furniture",
  furniture: { kind: "desk", at, turn: 0, width: 1.4, depth: 0.7, height: 0.75, base: 0 },
});
const notes = (draft: Draft) => doorNotes(draft.exercise);

describe("doors that cannot open", () => {
  it("are none where the floor before them is free", () => {
    expect(notes(edited(newDraft("m"), ...wall({}), desk([2.5, 3])))).toEqual([]);
  });

  it("names what the leaf meets and how far it opens, and lets it swing the other way", () => {
    // The desk's far edge lies 0.4 m before the wall and reaches over the whole sweep: asin 0.4 = 23.6 degrees.
    const draft = edited(newDraft("m"), ...wall({}), desk([0, 3.25]));
    const [note] = notes(draft);
    expect(note?.say).toBe("The door in W1 cannot open: its leaf meets the desk at 23°.");
    expect(note?.things).toEqual([
      { kind: "opening", wall: "W1", id: "door" },
      { kind: "furniture", id: "desk" },
    ]);
    expect(note?.remedy).toBe("Let it swing offstage.");
    expect(note?.edit).toMatchObject({ edit: "change-opening", change: { swing: "offstage" } });
  });

  it("hangs it at its other jamb where only one side is in the way", () => {
    const draft = edited(newDraft("m"), ...wall({}), desk([-1.1, 3.2]));
    expect(notes(draft)[0]?.remedy).toBe("Hang it at its other jamb.");
  });

  it("passes over what is lower than its sill, and lets a platform stop it", () => {
    const platform: Edit = {
      edit: "add-platform",
      platform: {
        outline: [
          [-2, 1],
          [2, 1],
          [2, 3.99],
          [-2, 3.99],
        ],
        height: 0.2,
        base: 0,
      },
    };
    expect(notes(edited(newDraft("m"), ...wall({ sill: 0.2 }), platform))).toEqual([]);
    expect(notes(edited(newDraft("m"), ...wall({}), platform))[0]?.say).toContain("its leaf meets platform P1");
  });

  it("tells of a leaf that swings against the next wall and against the stage's back wall", () => {
    const corner: Edit = {
      edit: "add-walls",
      corners: [
        [-4, 4],
        [-3.2, 3],
      ],
      closed: false,
      height: 3,
      thickness: 0,
    };
    const next = edited(newDraft("m"), ...wall({ at: 0.2, hinge: "start" }), corner);
    expect(notes(next)[0]?.say).toContain("meets wall W2");
    const far = edited(newDraft("m"), ...wall({ swing: "offstage" }), {
      edit: "move",
      things: [{ kind: "wall", id: "W1" }],
      by: [0, 3],
    });
    expect(notes(far)[0]?.say).toContain("the stage's back wall");
  });

  it("tells two doors whose leaves swing through one another, once", () => {
    const facing = (apart: number) =>
      edited(
        newDraft("m"),
        ...wall({}),
        {
          edit: "add-walls",
          corners: [
            [-4, 4 - apart],
            [4, 4 - apart],
          ],
          closed: false,
          height: 3,
          thickness: 0,
        },
        { ...(wall({ swing: "offstage" })[1] as Edit & { edit: "add-opening" }), wall: "W2" },
      );
    expect(notes(facing(2.1))).toEqual([]);
    const meeting = facing(1.5);
    expect(notes(meeting)).toHaveLength(1);
    expect(notes(meeting)[0]?.edit).toBeDefined();
    expect(notes(meeting)[0]?.say).toContain("only one of them can stand open");
  });

  it("offers only changes that free the door", () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        for (const { where, edit } of notes(draft)) {
          if (!edit) continue;
          const left = notes(edited(draft, edit)).filter((n) => JSON.stringify(n.where) === JSON.stringify(where));
          expect(left, JSON.stringify(edit)).toEqual([]);
        }
      }),
      seeded,
    );
  });
});
