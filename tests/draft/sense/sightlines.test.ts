import { describe, expect, it } from "vitest";
import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { newDraft } from "@/lib/draft/new-draft";
import { areaOf } from "@/lib/draft/sense/sightlines/merge-fans";
import type { Seat } from "@/lib/draft/sense/sightlines/seat";
import { usualSeats } from "@/lib/draft/sense/sightlines/seat";
import type { Sight } from "@/lib/draft/sense/sightlines/sight";
import { sightlines } from "@/lib/draft/sense/sightlines/sightlines";
import type { PlanPoint } from "@/lib/stage/frame";
import { edited } from "./make-draft";

/** Ten metres before an opening 10 m wide and 5.5 m high, on the centre line; the back wall is 7.5 m upstage. */
const MIDDLE: Seat = { id: "m", name: "Middle", at: [0, -10], eyeHeight: 2.5 };

/** Shares along a wall are right to a column at either end of what hides it: 2 x 0.2 m of 8 m, of a quarter of its height. */
const BETWEEN_COLUMNS = 0.012;

function look(draft: Draft, seat: Seat = MIDDLE): Sight {
  return sightlines(draft, [seat])[0] as Sight;
}

const back = (height: number, openings: readonly Edit[] = []): readonly Edit[] => [
  {
    edit: "add-walls",
    corners: [
      [-4, 5],
      [4, 5],
    ],
    closed: false,
    height,
    thickness: 0,
  },
  ...openings,
];
const passage: Edit = {
  edit: "add-opening",
  wall: "W1",
  opening: {
    kind: "passage",
    at: 3,
    width: 2,
    sill: 0,
    head: 2.2,
    depth: null,
    leaves: 1,
    hinge: null,
    swing: "offstage",
  },
};
const cloth = (
  kind: "leg" | "backing" | "border",
  line: readonly [PlanPoint, PlanPoint],
  height = 6,
  trim: number | null = null,
): Edit => ({
  edit: "add-masking",
  masking: { kind, line, trim, height },
});
const area = (outlines: readonly (readonly PlanPoint[])[]) => outlines.reduce((sum, o) => sum + Math.abs(areaOf(o)), 0);

describe("what a seat sees in the plan, worked by hand", () => {
  it("sees the bare stage between lines through the sides of the opening, and into both wings", () => {
    const { seen, offstage } = look(newDraft("m"));
    // 10 m wide at the plaster line, 10 x 17.5 / 10 = 17.5 m at the back wall.
    expect(area(seen)).toBeCloseTo(((10 + 17.5) / 2) * 7.5, 9);
    expect(offstage.map(({ what }) => what)).toEqual([
      { kind: "past", side: "right" },
      { kind: "past", side: "left" },
    ]);
    for (const { outlines } of offstage) expect(area(outlines)).toBeCloseTo((3.75 * 7.5) / 2, 9);
  });

  it("sees past a leg's onstage end as far as the line through that end goes (trade: extreme seat to the onstage edge of each leg)", () => {
    // The line over the end at (4, 2) crosses the plaster line at 4 x 10 / 12 and the back wall at 5.8333: 0.8333 m into the wing.
    const legs = [
      cloth("leg", [
        [4, 2],
        [8, 2],
      ]),
      cloth("leg", [
        [-8, 2],
        [-4, 2],
      ]),
    ];
    const { offstage, remarks } = look(edited(newDraft("m"), ...legs));
    expect(offstage).toHaveLength(2);
    const [x] = offstage[1]?.outlines[0]?.toSorted((a, b) => b[0] - a[0])[0] ?? [];
    expect(x).toBeCloseTo((4 * 17.5) / 12, 9);
    expect(remarks.map(({ say }) => say)).toContain("They see 830 mm into the wings, stage left.");
    const closed = edited(
      newDraft("m"),
      ...legs,
      cloth("leg", [
        [4, 6],
        [9, 6],
      ]),
      cloth("leg", [
        [-9, 6],
        [-4, 6],
      ]),
    );
    expect(look(closed).offstage).toEqual([]);
  });

  it("sees offstage through an opening, until a backing stands behind it", () => {
    const draft = edited(
      newDraft("m"),
      ...back(6, [passage]),
      cloth("leg", [
        [3.6, 4],
        [9, 4],
      ]),
      cloth("leg", [
        [-9, 4],
        [-3.6, 4],
      ]),
    );
    const { offstage, remarks } = look(draft);
    expect(offstage.map(({ what }) => what)).toEqual([
      { kind: "through", thing: { kind: "opening", wall: "W1", id: "passage" } },
    ]);
    // 2 m wide in the wall 15 m away, 2 x 17.5 / 15 m at the back wall.
    expect(area(offstage[0]?.outlines ?? [])).toBeCloseTo(((2 + (2 * 17.5) / 15) / 2) * 2.5, 9);
    const remark = remarks.find(({ say }) => say === "Through the passage in W1 they see offstage: nothing backs it.");
    if (!remark?.edit) throw new Error("no backing is offered");
    expect(look(edited(draft, remark.edit)).offstage).toEqual([]);
  });

  it("sees the back of a wall that is turned away", () => {
    const draft = edited(newDraft("m"), {
      edit: "add-walls",
      corners: [
        [3, 4],
        [-3, 4],
      ],
      closed: false,
      height: 4,
      thickness: 0,
    });
    const { offstage, walls, remarks } = look(draft);
    expect(offstage.some(({ what }) => what.kind === "back")).toBe(true);
    expect(walls).toEqual([{ id: "W1", hidden: 1 }]);
    expect(remarks.map(({ say }) => say)).toContain("They see the back of wall W1.");
  });

  it("sees behind the set past a wall's end, from as far upstage as that end", () => {
    // The wall from (-3, 3) to (-2, 6) leaves the line over (-3, 3) free, which is 3 x 17.5 / 13 m from the centre at the back wall.
    const side: Edit = {
      edit: "add-walls",
      corners: [
        [-3, 3],
        [-2, 6],
        [5, 6],
        [9, 1],
      ],
      closed: false,
      height: 4,
      thickness: 0,
    };
    const { offstage, remarks } = look(edited(newDraft("m"), side));
    const beside = offstage.find(({ what }) => what.kind === "beside");
    expect(beside?.what).toEqual({ kind: "beside", thing: { kind: "wall", id: "W1" } });
    const corners = beside?.outlines.flat() ?? [];
    expect(Math.min(...corners.map(([, y]) => y))).toBeCloseTo(3, 9);
    expect(Math.max(...corners.map(([x]) => x))).toBeCloseTo(-3, 9);
    expect(corners.some(([x, y]) => Math.abs(x + (3 * 17.5) / 13) < 1e-9 && Math.abs(y - 7.5) < 1e-9)).toBe(true);
    expect(remarks.map(({ say }) => say)).toContain("Past the end of wall W1 they see behind the set.");
  });

  it("tells a seat on the stage that it is not in the house", () => {
    expect(look(newDraft("m"), { ...MIDDLE, at: [0, 1] }).remarks[0]?.say).toBe("This seat is not in the house.");
  });
});

describe("what a seat does not see of a wall, worked by hand", () => {
  it("is what the header hides", () => {
    // The line under the header, 3 m over the eye, has risen by half again at the wall: 2.5 + 3 x 1.5 = 7 m of 9.
    expect(look(edited(newDraft("m"), ...back(9))).walls[0]?.hidden).toBeCloseTo(2 / 9, 9);
    expect(look(edited(newDraft("m"), ...back(6))).walls[0]?.hidden).toBe(0);
  });

  it("is what a border hides (trade: nearest seat to the bottom edge of each border)", () => {
    // Trim 4 m at 2 m upstage: 2.5 + 1.5 x 15 / 12 = 4.375 m of 6.
    const draft = edited(
      newDraft("m"),
      ...back(6),
      cloth(
        "border",
        [
          [-6, 2],
          [6, 2],
        ],
        3,
        4,
      ),
    );
    expect(look(draft).walls[0]?.hidden).toBeCloseTo(1 - 4.375 / 6, 9);
  });

  it("is what the edge of the stage hides from an eye below it", () => {
    // From 0.5 m under the stage, over the apron's edge 9 m away, the line has risen to 0.5 x 15 / 9 - 0.5 m at the wall.
    const low = look(edited(newDraft("m"), ...back(3)), { ...MIDDLE, eyeHeight: -0.5 });
    expect(low.walls[0]?.hidden).toBeCloseTo(((0.5 * 15) / 9 - 0.5) / 3, 9);
  });

  it("is what stands before it", () => {
    // A box 2 m wide and 1 m high from 3 to 4 m upstage: over its far side the line falls to 2.5 - 1.5 x 15 / 14 m at the wall, and
    // there the box hides at least 2 x 15 / 14 m (its far side) and at most 2 x 15 / 13 m (its near side) of 8.
    const box: Edit = {
      edit: "add-furniture",
      furniture: { kind: "box", at: [0, 3.5], turn: 0, width: 2, depth: 1, height: 1, base: 0 },
    };
    const hidden = look(edited(newDraft("m"), ...back(4), box)).walls[0]?.hidden ?? 0;
    const high = 2.5 - (1.5 * 15) / 14;
    expect(hidden).toBeGreaterThan(((2 * 15) / 14) * high * (1 / 32) - BETWEEN_COLUMNS);
    expect(hidden).toBeLessThan(((2 * 15) / 13) * high * (1 / 32) + BETWEEN_COLUMNS);
  });
});

describe("what a seat sees over the set", () => {
  it("is the gap between a wall's top and the header, until a border hangs low enough", () => {
    const { gaps, remarks } = look(edited(newDraft("m"), ...back(5)));
    // 7 m are seen at the wall (see above): 2 m over its top.
    expect(gaps).toHaveLength(1);
    expect(gaps[0]?.amount).toBeCloseTo(2, 9);
    expect(
      remarks.some(
        ({ say }) => say === "Over wall W1 and under the header they see up to 2000 mm of what is above the set.",
      ),
    ).toBe(true);
    const closed = edited(
      newDraft("m"),
      ...back(5),
      cloth(
        "border",
        [
          [-6, 2],
          [6, 2],
        ],
        3,
        4,
      ),
    );
    expect(look(closed).gaps).toEqual([]);
    // Trim 5 m at 2 m upstage: 2.5 + 2.5 x 15 / 12 = 5.625 m at the wall.
    const high = look(
      edited(
        newDraft("m"),
        ...back(5),
        cloth(
          "border",
          [
            [-6, 2],
            [6, 2],
          ],
          3,
          5,
        ),
      ),
    );
    expect(high.gaps[0]).toMatchObject({ over: { kind: "wall", id: "W1" }, under: { kind: "masking", id: "border" } });
    expect(high.gaps[0]?.amount).toBeCloseTo(0.625, 9);
  });
});

describe("the usual seats", () => {
  it("lie at both ends of three rows before the apron, the balcony over all others", () => {
    const { stage, viewer } = newDraft("m").exercise;
    const seats = usualSeats(stage, viewer);
    expect(seats.map(({ id }) => id)).toEqual([
      "first-left",
      "first-right",
      "last-left",
      "last-right",
      "balcony-left",
      "balcony-right",
    ]);
    for (const { at } of seats) expect(at[1]).toBeLessThan(-stage.apron);
    // ANSUR II (2012), computed from its public tables: a seated eye 1157 to 1315 mm (men), 1063 to 1212 mm (women) over the floor.
    const [first] = seats;
    expect((first?.eyeHeight ?? 0) + 1.0668).toBeGreaterThan(1.157);
    expect((first?.eyeHeight ?? 0) + 1.0668).toBeLessThan(1.212);
  });
});

it("says the same of many walls in one sentence", () => {
  const steps: Edit = {
    edit: "add-walls",
    corners: [
      [-4, 3],
      [-2, 4],
      [0, 5],
      [2, 4],
      [4, 3],
    ],
    closed: false,
    height: 3,
    thickness: 0,
  };
  const says = look(edited(newDraft("m"), steps)).remarks.map(({ say }) => say);
  expect(says.filter((say) => say.startsWith("Over "))).toEqual([
    expect.stringMatching(/^Over wall W\d, wall W\d, wall W\d and wall W\d and under the header they see up to/),
  ]);
});
