import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Brought } from "@/lib/draft/bring/brought";
import { type Placing, placeBrought } from "@/lib/draft/bring/place/place-brought";
import type { Draft } from "@/lib/draft/draft";
import { newDraft } from "@/lib/draft/new-draft";
import type { PlanPoint } from "@/lib/stage/frame";
import { seeded } from "../../../seeded";
import { brought, leaf, straight } from "./drawn";

const AS_DRAWN: Placing = {
  layerUse: { walls: "walls", openings: "openings" },
  centreLine: [
    [0, 0],
    [0, 1],
  ],
  plasterLine: [
    [-1, 0],
    [1, 0],
  ],
  scale: { by: "file" },
};

function place(file: Brought, placing: Partial<Placing> = {}): Draft {
  const placed = placeBrought(file, { ...AS_DRAWN, ...placing }, newDraft("m"));
  if (!placed.ok) throw new Error(placed.say);
  return placed.draft;
}

/** Each wall by its corners' places. */
function wallsOf({ exercise: { plan } }: Draft) {
  return plan.walls.map(({ from, to, thickness, onstage, openings }) => ({
    from: plan.corners.get(from)?.map(rounded),
    to: plan.corners.get(to)?.map(rounded),
    thickness: rounded(thickness),
    onstage,
    openings: openings.map(({ kind, at, width, hinge, swing, leaves }) => ({
      kind,
      at: rounded(at),
      width: rounded(width),
      hinge,
      swing,
      leaves,
    })),
  }));
}

const rounded = (value: number) => Math.round(value * 1e6) / 1e6 + 0;

/** A box set in single lines: a return, a raking side wall, the back wall, the other side. */
const BOX = [
  [-5, 1],
  [-3.5, 1],
  [-2.5, 4],
  [2.5, 4],
  [3.5, 1],
] as const;

describe("walls in single lines", () => {
  it("run from stage right round to stage left, onstage to their right, whichever way they were drawn", () => {
    const lines = BOX.slice(1).map((b, i) =>
      i % 2 ? straight(b, BOX[i] as PlanPoint) : straight(BOX[i] as PlanPoint, b),
    );
    const walls = wallsOf(place(brought({ walls: lines.toReversed() })));
    expect(walls.map(({ from, to, onstage }) => [from, to, onstage])).toEqual(
      BOX.slice(1).map((to, i) => [[...(BOX[i] as PlanPoint)], [...to], "right"]),
    );
  });

  it("names corners along the run", () => {
    expect([...place(brought({ walls: [straight(...BOX)] })).exercise.plan.corners.keys()]).toEqual([
      "A",
      "B",
      "C",
      "D",
      "E",
    ]);
  });

  it("joins ends that nearly meet where their lines cross, and pieces in line", () => {
    const walls = wallsOf(
      place(
        brought({ walls: [straight([-2, 3], [0, 3]), straight([0.001, 3], [2.004, 3]), straight([2, 2.996], [2, 1])] }),
      ),
    );
    expect(walls.map(({ from, to }) => [from, to])).toEqual([
      [
        [-2, 3],
        [2, 3],
      ],
      [
        [2, 3],
        [2, 1],
      ],
    ]);
  });

  it("takes a line drawn twice, or over another, once", () => {
    const walls = wallsOf(
      place(brought({ walls: [straight([-2, 3], [1, 3]), straight([2, 3], [-1, 3]), straight([-2, 3], [2, 3])] })),
    );
    expect(walls).toHaveLength(1);
  });

  it("makes a few straight walls of a bent one", () => {
    const bend = Array.from(
      { length: 37 },
      (_, i) => [3 * Math.cos((i * Math.PI) / 36), 3 * Math.sin((i * Math.PI) / 36)] as const,
    );
    const walls = wallsOf(place(brought({ walls: [{ points: bend, curved: true }] })));
    expect(walls.length).toBeGreaterThan(6);
    expect(walls.length).toBeLessThan(20);
  });
});

/** The same box as two faces 0.15 m apart, with closed ends; a door's gap in the back wall and a window's in the side wall. */
const side = (from: number, to: number) =>
  [straight([-3, from], [-3, to]), straight([-3.15, from], [-3.15, to])] as const;
const back = (from: number, to: number, outFrom = from, outTo = to) =>
  [straight([from, 4], [to, 4]), straight([outFrom, 4.15], [outTo, 4.15])] as const;
const THICK = [
  ...side(0.5, 1.5),
  straight([-3, 0.5], [-3.15, 0.5]),
  straight([-3, 1.5], [-3.15, 1.5]),
  ...side(2.7, 4).map((line) => (line.points[0]?.[0] === -3.15 ? straight([-3.15, 2.7], [-3.15, 4.15]) : line)),
  straight([-3, 2.7], [-3.15, 2.7]),
  ...back(-3, 0.2, -3.15, 0.2),
  straight([0.2, 4], [0.2, 4.15]),
  ...back(1.1, 3, 1.1, 3.15),
  straight([1.1, 4], [1.1, 4.15]),
  straight([3, 4], [3, 0.5]),
  straight([3.15, 4.15], [3.15, 0.5]),
  straight([3, 0.5], [3.15, 0.5]),
];
const WINDOW = [0, -0.075, -0.15].map((x) => straight([-3 + x, 1.5], [-3 + x, 2.7]));

describe("walls in two faces", () => {
  const openings = [...leaf([0.2, 4.15], 0.9, 0, 90), ...WINDOW];
  const placed = placeBrought(brought({ walls: THICK, openings }), AS_DRAWN, newDraft("m"));
  if (!placed.ok) throw new Error(placed.say);

  it("become one wall each on its onstage face, with openings in their gaps", () => {
    expect(wallsOf(placed.draft)).toEqual([
      {
        from: [-3, 0.5],
        to: [-3, 4],
        thickness: 0.15,
        onstage: "right",
        openings: [{ kind: "window", at: 1, width: 1.2, hinge: null, swing: "offstage", leaves: 1 }],
      },
      {
        from: [-3, 4],
        to: [3, 4],
        thickness: 0.15,
        onstage: "right",
        openings: [{ kind: "door", at: 3.2, width: 0.9, hinge: "start", swing: "offstage", leaves: 1 }],
      },
      { from: [3, 4], to: [3, 0.5], thickness: 0.15, onstage: "right", openings: [] },
    ]);
  });

  it("leaves nothing out", () => expect(placed.leftOut).toEqual([]));

  it("stay apart at a gap without an opening, which is told", () => {
    const bare = placeBrought(brought({ walls: THICK }), AS_DRAWN, newDraft("m"));
    expect(bare).toMatchObject({
      ok: true,
      leftOut: [{ count: 2, say: expect.stringMatching(/2 gaps .* left open/) }],
    });
    if (bare.ok) expect(bare.draft.exercise.plan.walls).toHaveLength(5);
  });

  it("does not take the treads of a stair for walls with thickness", () => {
    const treads = [0, 0.28, 0.56, 0.84, 1.12].map((y) => straight([-1, 2 + y], [1, 2 + y]));
    const walls = wallsOf(place(brought({ walls: treads })));
    expect(walls.map(({ thickness }) => thickness)).toEqual([0, 0, 0, 0, 0]);
  });
});

describe("other walls", () => {
  it("may butt on a wall's middle", () => {
    const walls = wallsOf(place(brought({ walls: [straight([-3, 4], [3, 4]), straight([0, 4], [0, 2])] })));
    expect(walls).toHaveLength(2);
    expect(walls.flatMap(({ from, to }) => [from, to])).toContainEqual([0, 4]);
  });

  it("go round a room with the room on their right, and round a post with the post on their left", () => {
    const room = straight([-2, 2], [2, 2], [2, 5], [-2, 5], [-2, 2]);
    const post = straight([-4, 2], [-3.6, 2], [-3.6, 2.4], [-4, 2.4], [-4, 2]);
    const turns = (line: typeof room) => {
      const { plan } = place(brought({ walls: [line] })).exercise;
      expect(plan.walls).toHaveLength(4);
      expect(plan.corners.size).toBe(4);
      const corners = plan.walls.map(({ from }) => plan.corners.get(from) as PlanPoint);
      return Math.sign(
        corners.reduce((sum, [x, y], i) => {
          const [nx, ny] = corners[(i + 1) % corners.length] as PlanPoint;
          return sum + x * ny - nx * y;
        }, 0),
      );
    };
    expect(turns(room)).toBe(-1);
    expect(turns(post)).toBe(1);
  });

  it("with a closed outline round both faces keep the face toward the audience's eye", () => {
    const outline = straight([-3, 1], [-3, 4], [3, 4], [3, 1], [3.2, 1], [3.2, 4.2], [-3.2, 4.2], [-3.2, 1], [-3, 1]);
    const walls = wallsOf(place(brought({ walls: [outline] })));
    expect(walls.map(({ from, to, thickness }) => [from, to, thickness])).toEqual([
      [[-3, 1], [-3, 4], 0.2],
      [[-3, 4], [3, 4], 0.2],
      [[3, 4], [3, 1], 0.2],
    ]);
  });

  it("joins two corners by one wall, however many bends run between them", () => {
    const bend = (rise: number) => ({
      points: [
        [0, 3],
        [0.5, 3 + rise],
        [1, 3],
      ] as const,
      curved: true,
    });
    const walls = wallsOf(place(brought({ walls: [bend(0.01), bend(-0.01), straight([1, 3], [1, 2])] })));
    expect(walls).toHaveLength(2);
  });

  it("are refused when they are far away or too many", () => {
    const far = placeBrought(brought({ walls: [straight([5000, 0], [5000, 4])] }), AS_DRAWN, newDraft("m"));
    expect(far).toMatchObject({ ok: false, say: expect.stringMatching(/5,000 m .* check the size/) });
    const comb = Array.from({ length: 900 }, (_, i) => straight([i / 9 - 50, 1], [i / 9 - 50, 1 + (i % 2) + 0.5]));
    const many = placeBrought(brought({ walls: comb }), AS_DRAWN, newDraft("m"));
    expect(many).toMatchObject({ ok: false, say: expect.stringMatching(/more than 2,000/) });
  });

  it("of three hundred are placed in good time, with one order of marks", () => {
    const rows = Array.from({ length: 300 }, (_, i) =>
      straight([(i % 20) - 10, 1 + Math.floor(i / 20)], [(i % 20) - 9.5, 1.4 + Math.floor(i / 20)]),
    );
    const start = performance.now();
    const draft = place(brought({ walls: rows }));
    // Far over what it takes on a quiet machine: a bound against work that grows with the square of the walls.
    expect(performance.now() - start).toBeLessThan(5000);
    expect(draft.exercise.plan.walls).toHaveLength(300);
    expect(draft.marksBy).toBe("order");
    expect(draft.exercise.task.marks.length).toBeGreaterThan(0);
  });
});

describe("openings", () => {
  const wall = straight([-3, 3], [3, 3]);
  it.each([
    [
      "a leaf on a wall drawn through, onstage",
      leaf([-1, 3], 0.8, 0, -90),
      [{ kind: "door", at: 2, width: 0.8, hinge: "start", swing: "onstage", leaves: 1 }],
    ],
    [
      "a leaf hung at the far jamb",
      leaf([1, 3], 0.8, 180, 90),
      [{ kind: "door", at: 3.2, width: 0.8, hinge: "end", swing: "offstage", leaves: 1 }],
    ],
    [
      "a leaf half open",
      leaf([-1, 3], 0.8, 0, 45),
      [{ kind: "door", at: 2, width: 0.8, hinge: "start", swing: "offstage", leaves: 1 }],
    ],
    [
      "a pair of leaves",
      [...leaf([-1, 3], 0.7, 0, 90), ...leaf([0.4, 3], 0.7, 180, 90)],
      [{ kind: "door", at: 2, width: 1.4, hinge: null, swing: "offstage", leaves: 2 }],
    ],
    [
      "a niche",
      [straight([-1, 3], [-1, 3.4], [1, 3.4], [1, 3])],
      [{ kind: "niche", at: 2, width: 2, hinge: null, leaves: 1 }],
    ],
    ["one line", [straight([-1, 3], [1, 3])], [{ kind: "passage", at: 2, width: 2, hinge: null, leaves: 1 }]],
    [
      "three lines",
      [0, 0.05, 0.1].map((y) => straight([-1, 3 + y], [1, 3 + y])),
      [{ kind: "window", at: 2, width: 2, hinge: null, leaves: 1 }],
    ],
  ])("finds %s", (_, openings, expected) => {
    expect(wallsOf(place(brought({ walls: [wall], openings })))[0]?.openings).toMatchObject(expected);
  });

  it("lists what belongs to no wall, with its places", () => {
    const placed = placeBrought(
      brought({ walls: [wall], openings: [...leaf([0, 8], 0.8, 0, 90), straight([0, 1], [2, 1])] }),
      AS_DRAWN,
      newDraft("m"),
    );
    expect(placed.ok && placed.leftOut.map(({ count }) => count)).toEqual([1, 2]);
    expect(placed.ok && placed.leftOut[0]?.say).toMatch(/no door/);
  });
});

describe("the place on the stage", () => {
  it("is the same however the drawing was turned, moved and scaled", () => {
    const angle = fc.double({ min: -3, max: 3, noNaN: true });
    const shift = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(angle, shift, shift, fc.constantFrom(1, 0.001, 0.0254, 0.3048), (turn, dx, dy, metres) => {
        const [c, s] = [Math.cos(turn) / metres, Math.sin(turn) / metres];
        const move = ([x, y]: readonly [number, number]) => [c * x - s * y + dx, s * x + c * y + dy] as const;
        const file: Brought = {
          ...brought({
            walls: [straight(...BOX.map(move))],
            openings: leaf([-1, 4], 0.9, 0, 90).map((line) => ({ ...line, points: line.points.map(move) })),
          }),
          unit: { kind: "unknown", likely: [] },
        };
        const draft = place(file, {
          centreLine: [move([0, 1]), move([0, 5])],
          plasterLine: [move([4, 0]), move([-4, 0])],
          scale: { by: "length", from: move([-2.5, 4]), to: move([2.5, 4]), length: 5 },
        });
        const corners = [...draft.exercise.plan.corners.values()];
        expect(corners).toHaveLength(BOX.length);
        for (const [i, [x, y]] of BOX.entries()) {
          expect(corners[i]?.[0]).toBeCloseTo(x, 8);
          expect(corners[i]?.[1]).toBeCloseTo(y, 8);
        }
        expect(draft.exercise.plan.walls[2]?.openings).toMatchObject([{ kind: "door", hinge: "start" }]);
      }),
      seeded,
    );
  });

  it.each([
    ["no walls", { layerUse: {} }, /which layers are walls/],
    [
      "lines out of square",
      {
        centreLine: [
          [0, 0],
          [1, 5],
        ] as const,
      },
      /meet at 79 degrees/,
    ],
    [
      "one place twice",
      {
        centreLine: [
          [0, 0],
          [0, 0],
        ] as const,
      },
      /two places of the centre line/,
    ],
    ["no length", { scale: { by: "length", from: [0, 0], to: [1, 0], length: 0 } as const }, /length above 0/],
    ["no scale in the file", { scale: { by: "ratio", ratio: -48 } as const }, /number above 0/],
  ])("is refused in a sentence: %s", (_, placing, say) => {
    const placed = placeBrought(brought({ walls: [straight(...BOX)] }), { ...AS_DRAWN, ...placing }, newDraft("m"));
    expect(placed.ok).toBe(false);
    if (!placed.ok) expect(placed.say).toMatch(say);
  });

  it("puts the drawing beside what stands on the plan already", () => {
    const once = place(brought({ walls: [straight([-2, 3], [2, 3])] }));
    const twice = placeBrought(brought({ walls: [straight([2, 3], [3, 1])] }), AS_DRAWN, once);
    expect(twice.ok && twice.draft.exercise.plan.walls).toHaveLength(2);
    expect(twice.ok && twice.draft.exercise.plan.corners.size).toBe(3);
  });
});
