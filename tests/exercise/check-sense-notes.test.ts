import { describe, expect, it } from "vitest";
import { type Change, findInTideOffice } from "../fixtures/tide-office";

type Row = readonly [what: string, changes: readonly Change[], where: string, said: RegExp];

const WALLS = "/plan/walls";
const LOOKOUT = `${WALLS}/2/openings/0`;
const square = (x: number, y: number, side: number) => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
];
const box = { id: "box", kind: "box", at: [0, 5], width: 1, depth: 1, height: 1 };

describe("what the sense checks let pass", () => {
  const notes: readonly Row[] = [
    ["a corner no wall uses", [["/plan/corners/Q", [0, 5]]], "/plan/corners/Q", /no wall uses/],
    ["scenery outside the frame", [["/plan/corners/R", [-20, 3]]], "/plan/corners/R", /outside the frame/],
    ["a piece outside the frame", [["/plan/furniture/1", { ...box, at: [30, 5] }]], "/plan/furniture/1", /outside/],
    [
      "a mark outside the frame",
      [
        ["/plan/corners/R", [-20, 3]],
        ["/task/marks", ["R.foot"]],
      ],
      "/task/marks/0",
      /outside/,
    ],
    // eye a little above the floor: depth is coarse near the horizon
    [
      "a mark hard to grade",
      [
        ["/viewer/eyeHeight", "5'-6\""],
        ["/plan/corners/C", [9, 25]],
        ["/task/marks", ["C.foot"]],
      ],
      "/task/marks/0",
      /hard to grade: 1 mm of paper is worth/,
    ],
    ["a steep flight", [["/plan/stairs/0/riser", '9"']], "/plan/stairs/0", /steeper/],
    ["a top to be read back on to the plan", [["/task/kind", "picture-to-plan"]], "/task/marks/1", /not on the floor/],
  ];

  it.each(notes)("notes %s, and lets it pass", (_, changes, where, said) => {
    const found = findInTideOffice(...changes);
    expect(found.filter(({ weight }) => weight === "fault")).toEqual([]);
    expect(found.filter((finding) => finding.where === where && said.test(finding.message))).toHaveLength(1);
  });

  const sound: readonly (readonly [what: string, changes: readonly Change[]])[] = [
    ["walls that share a corner", []],
    [
      "walls that meet in one place under two names",
      [
        ["/plan/corners/C2", [9, 14]],
        [`${WALLS}/3/from`, "C2"],
      ],
    ],
    [
      "a wall that stands on another",
      [
        ["/plan/corners/F", [-7, 14]],
        ["/plan/corners/G", [9, 14]],
        [`${WALLS}/4`, { id: "W5", from: "F", to: "G", height: 2, base: 14 }],
      ],
    ],
    ["an opening that ends with its wall", [[`${LOOKOUT}/at`, 12]]],
    ["an opening as high as its wall", [[`${LOOKOUT}/head`, 14]]],
    [
      "openings beside each other",
      [[`${WALLS}/2/openings/1`, { id: "w", kind: "window", at: 6, width: 4, sill: 3, head: 6 }]],
    ],
    [
      "openings over each other without touching",
      [[`${WALLS}/2/openings/1`, { id: "w", kind: "window", at: 10, width: 4, sill: 9, head: 11 }]],
    ],
    ["one opening's id in two walls", [[`${LOOKOUT}/id`, "door"]]],
    [
      "a niche with its depth",
      [
        [`${LOOKOUT}/kind`, "niche"],
        [`${LOOKOUT}/depth`, '6"'],
      ],
    ],
    [
      "a platform of three corners",
      [
        [
          "/plan/platforms/0/outline",
          [
            [0, 10],
            [8, 10],
            [8, 14],
          ],
        ],
      ],
    ],
    ["an eye off the centre line", [["/viewer/offset", -4]]],
  ];

  it.each(sound)("has nothing against %s", (_, changes) => {
    expect(findInTideOffice(...changes)).toEqual([]);
  });

  it("sees a backdrop wider and taller than the opening, though no corner of it is in the frame", () => {
    const plan = { corners: { A: [-30, 2], B: [30, 2] }, walls: [{ id: "W", from: "A", to: "B", height: 30 }] };
    const found = findInTideOffice(["/plan", plan], ["/task/marks", ["A.foot"]]);
    expect(found.filter(({ weight }) => weight === "fault")).toEqual([]);
  });

  it("says a fault once for an element however many of its points share it", () => {
    const found = findInTideOffice(["/plan/platforms/0/outline", square(-4, -46, 4)]);
    expect(found.filter(({ where }) => where === "/plan/platforms/0")).toHaveLength(1);
  });

  it("suggests the nearest name", () => {
    const [wall] = findInTideOffice([`${WALLS}/1/from`, "AA"]);
    expect(wall?.hint).toContain('"A"');
    const [mark] = findInTideOffice(["/task/marks/1", "A.tap"]);
    expect(mark?.hint).toContain("A.top");
  });

  it("puts faults before notes", () => {
    const weights = findInTideOffice(["/plan/corners/Q", [0, 5]], ["/task/marks/1", "A.tap"]).map(
      ({ weight }) => weight,
    );
    expect(weights).toEqual(["fault", "note"]);
  });
});
