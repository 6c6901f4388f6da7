import { describe, expect, it } from "vitest";
import { faultsOf } from "@/lib/exercise/check-sense";
import { type Change, findInTideOffice, readTideOffice } from "../fixtures/tide-office";

type Row = readonly [what: string, changes: readonly Change[], where: string, said: RegExp];

const WALLS = "/plan/walls";
const LOOKOUT = `${WALLS}/2/openings/0`;
describe("the sense of an exercise", () => {
  it("is sound in the format's own example", () => {
    expect(findInTideOffice()).toEqual([]);
  });

  const faults: readonly Row[] = [
    // the contract's list, in its order
    ["a wall from a corner that is not there", [[`${WALLS}/1/from`, "AA"]], `${WALLS}/1/from`, /no corner "AA"/],
    ["a wall to a corner that is not there", [[`${WALLS}/1/to`, "Z"]], `${WALLS}/1/to`, /no corner "Z"/],
    ["an opening past its wall's end", [[`${LOOKOUT}/at`, 13]], `${LOOKOUT}/at`, /ends at 17'-0".*end at 16'-0"/],
    ["an opening before its wall's beginning", [[`${LOOKOUT}/at`, -1]], `${LOOKOUT}/at`, /begins before/],
    ["an opening above its wall's top", [[`${LOOKOUT}/head`, 15]], `${LOOKOUT}/head`, /above the wall's top/],
    ["a sill above its head", [[`${LOOKOUT}/sill`, 9]], `${LOOKOUT}/sill`, /not below the head/],
    ["a sill at its head", [[`${LOOKOUT}/sill`, 8]], `${LOOKOUT}/sill`, /not below the head/],
    ["walls crossing", [["/plan/corners/E", [-14, 5]]], `${WALLS}/3`, /"W4" crosses wall "W2"/],
    ["walls over each other", [["/plan/corners/E", [-3, 14]]], `${WALLS}/3`, /"W4" crosses wall "W3"/],
    ["a point level with the eye", [["/plan/corners/Q", [0, -36]]], "/plan/corners/Q", /level with the eye or behind/],
    ["a point behind the eye", [["/plan/corners/Q", [0, -40]]], "/plan/corners/Q", /level with the eye or behind/],
    ["a platform behind the eye", [["/plan/platforms/0/outline/0", [0, -40]]], "/plan/platforms/0", /behind/],
    ["furniture behind the eye", [["/plan/furniture/0/at", [0, -36]]], "/plan/furniture/0", /behind/],
    [
      "a stair behind the eye",
      [
        [
          "/plan/stairs/0/nosing",
          [
            [0, -40],
            [1, -40],
          ],
        ],
      ],
      "/plan/stairs/0",
      /behind/,
    ],
    ["a column behind the eye", [["/plan/columns/0/at", [0, -40]]], "/plan/columns/0", /behind/],
    ["a wall's id twice", [[`${WALLS}/1/id`, "W1"]], `${WALLS}/1/id`, /"W1" is the name/],
    ["one id of two kinds", [["/plan/furniture/0/id", "P1"]], "/plan/furniture/0/id", /"P1" is the name/],
    [
      "an opening's id twice in one wall",
      [[`${WALLS}/3/openings/1`, { id: "door", kind: "passage", at: 0, width: 2, head: 6 }]],
      `${WALLS}/3/openings/1/id`,
      /"door" is the name/,
    ],
    ["a mark that names no point", [["/task/marks/1", "A.tap"]], "/task/marks/1", /A\.tap names no point/],
    ["a mark of an element, not of a point", [["/task/marks/0", "B"]], "/task/marks/0", /B names no point/],
    ["a top that is two tops", [[`${WALLS}/1/height`, 12]], "/task/marks/1", /A\.top names no point/],
    ["a given that names no point", [["/task/given", ["Z.foot"]]], "/task/given/0", /Z\.foot names no point/],
    [
      "nothing visible",
      [
        ["/plan", { corners: { A: [100, 5], B: [120, 5] }, walls: [{ id: "W", from: "A", to: "B", height: 9 }] }],
        ["/task/marks", ["A.foot"]],
      ],
      "/plan",
      /nothing of the plan is visible/,
    ],
    ["an empty plan", [["/plan", {}]], "/plan", /nothing is visible/],
    // what follows from the words of the contract
    ["a mark asked twice", [["/task/marks/2", "A.foot"]], "/task/marks/2", /asked twice/],
    ["a mark that is given", [["/task/given", ["A.top"]]], "/task/marks/1", /given already/],
    ["no marks at all", [["/task/marks", []]], "/task/marks", /no marks/],
    ["a wall from a corner to itself", [[`${WALLS}/0/to`, "R"]], `${WALLS}/0`, /no length/],
    ["an opening of no width", [[`${LOOKOUT}/width`, 0]], `${LOOKOUT}/width`, /more than 0/],
    ["a sill below the floor", [[`${LOOKOUT}/sill`, -1]], `${LOOKOUT}/sill`, /below the floor/],
    [
      "openings over each other",
      [[`${WALLS}/2/openings/1`, { id: "w", kind: "window", at: 12, width: 3, sill: 3, head: 6 }]],
      `${WALLS}/2/openings/1`,
      /overlaps "lookout"/,
    ],
    ["a niche of no depth", [[`${LOOKOUT}/kind`, "niche"]], `${LOOKOUT}/depth`, /niche needs a depth/],
    ["a wall of no height", [[`${WALLS}/0/height`, 0]], `${WALLS}/0/height`, /more than 0/],
    ["a wall below the floor", [[`${WALLS}/0/base`, -1]], `${WALLS}/0/base`, /0 or more/],
    ["a stage of no depth", [["/stage/depth", 0]], "/stage/depth", /more than 0/],
    ["an opening of no height", [["/stage/opening/height", 0]], "/stage/opening/height", /more than 0/],
    ["an apron upstage", [["/stage/apron", -1]], "/stage/apron", /0 or more/],
    ["a floor that falls", [["/stage/rake", -0.05]], "/stage/rake", /0 or more/],
    ["an eye on the plaster line", [["/viewer/distance", 0]], "/viewer/distance", /more than 0/],
    [
      "an outline of two corners",
      [
        [
          "/plan/platforms/0/outline",
          [
            [0, 10],
            [8, 10],
          ],
        ],
      ],
      "/plan/platforms/0/outline",
      /three corners/,
    ],
    [
      "an outline that crosses itself",
      [
        [
          "/plan/platforms/0/outline",
          [
            [0, 10],
            [8, 14],
            [8, 10],
            [0, 14],
          ],
        ],
      ],
      "/plan/platforms/0/outline",
      /crosses itself/,
    ],
    [
      "an outline that stands still",
      [["/plan/platforms/0/outline/1", [0, 10]]],
      "/plan/platforms/0/outline",
      /one place/,
    ],
    [
      "a nosing of no length",
      [
        [
          "/plan/stairs/0/nosing",
          [
            [2, 9],
            [2, 9],
          ],
        ],
      ],
      "/plan/stairs/0/nosing",
      /one place/,
    ],
    ["a column of no diameter", [["/plan/columns/0/diameter", 0]], "/plan/columns/0/diameter", /more than 0/],
    ["an eye all but on the plaster line", [["/viewer/distance", 1e-300]], "/viewer/distance", /tenth of a millimetre/],
    ["a stage a mile deep", [["/stage/depth", 5280]], "/stage/depth", /1 km/],
    ["a corner beyond the hills", [["/plan/corners/Q", [0, 5280]]], "/plan/corners/Q", /1 km/],
  ];

  it.each(faults)("finds fault with %s", (_, changes, where, said) => {
    const found = findInTideOffice(...changes);
    const here = found.filter((finding) => finding.where === where);
    expect(here.map(({ message }) => message)).toContainEqual(expect.stringMatching(said));
    expect(here.some(({ weight, message }) => weight === "fault" && said.test(message))).toBe(true);
    for (const { hint } of found) expect(hint).not.toBe("");
    expect(faultsOf(readTideOffice(...changes)).length).toBeGreaterThan(0);
  });
});
