import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { BroughtLine, BroughtPoint } from "@/lib/draft/bring/brought";
import { findLines } from "@/lib/draft/bring/place/find-lines";
import { lineSpans } from "@/lib/draft/bring/place/line-spans";
import type { PointedLine } from "@/lib/draft/bring/place/place-frame";
import { readBrought } from "@/lib/draft/bring/read-brought";
import { sendPlan } from "@/lib/draft/send/send-plan";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { broughtOf } from "../brought-lines";
import { brought, straight } from "./drawn";

/** A box set alike on both sides of x = 0, open toward -y, with a centre line from -3 to 12 and a plaster line at y = 0. */
const WALLS = [
  straight([-6, 1], [-5, 7]),
  straight([-5, 7], [5, 7]),
  straight([5, 7], [6, 1]),
  straight([-8, 1], [-6, 1]),
  straight([8, 1], [6, 1]),
];
const CENTRE = straight([0, 12], [0, -3]);
const PLASTER = straight([9, 0], [-9, 0]);

const along = (line: PointedLine | undefined, axis: 0 | 1) => line?.map((at) => at[axis]);

describe("the lines that a drawing offers", () => {
  it.each([
    ["CENTRE LINE", "PLASTER LINE"],
    ["A-CenterLine", "plaster_line"],
    ["CL", "PL"],
    ["Mittelachse", "Portallinie"],
    ["axe", "cadre de scène"],
  ])("are those of the layers %s and %s, from the audience upstage", (centreName, plasterName) => {
    const found = findLines(brought({ walls: WALLS, [centreName]: [CENTRE], [plasterName]: [PLASTER] }));
    expect(found.centreLine?.why).toContain(centreName);
    expect(found.plasterLine?.why).toContain(plasterName);
    expect(along(found.centreLine?.line, 1)).toEqual([-3, 12]);
    expect(along(found.plasterLine?.line, 1)).toEqual([0, 0]);
  });

  it("are told apart by the walls where both lie on one layer", () => {
    const found = findLines(brought({ walls: WALLS, "centre line and plaster line": [PLASTER, CENTRE] }));
    expect(along(found.centreLine?.line, 0)).toEqual([0, 0]);
    expect(along(found.plasterLine?.line, 1)).toEqual([0, 0]);
  });

  it("have the centre line by the walls being alike, drawn or not, and say so", () => {
    const drawn = findLines(brought({ walls: WALLS, "0": [CENTRE] }));
    expect(drawn.centreLine?.why).toContain("alike");
    expect(along(drawn.centreLine?.line, 1)).toEqual([-3, 12]);
    expect(drawn.plasterLine).toBeNull();
    const bare = findLines(brought({ walls: WALLS }));
    expect(along(bare.centreLine?.line, 0)).toEqual([0, 0]);
  });

  it("have none of a set that is not alike on two sides, and of a hidden layer", () => {
    const skew = [...WALLS.slice(0, 2), straight([5, 7], [9, 2], [4, -1]), straight([2, 2], [3, 3.7])];
    expect(findLines(brought({ walls: skew })).centreLine).toBeNull();
    const { layers } = brought({ walls: skew, CL: [CENTRE] });
    const hidden = layers.map((layer) => ({ ...layer, hidden: layer.name === "CL" }));
    expect(findLines({ layers: hidden })).toEqual({ centreLine: null, plasterLine: null });
  });

  it("run upstage from the plaster line where the sheet is upside down", () => {
    const over = (line: BroughtLine): BroughtLine => ({
      ...line,
      points: line.points.map(([x, y]): BroughtPoint => [-x, -y]),
    });
    const found = findLines(brought({ walls: WALLS.map(over), CL: [over(CENTRE)], PL: [over(PLASTER)] }));
    expect(along(found.centreLine?.line, 1)).toEqual([3, -12]);
  });

  it("are x = 0 and y = 0 of every plan of the course that is sent and has walls", async () => {
    const course = (await loadExercises(join(process.cwd(), "exercises"))).flatMap((entry) =>
      entry.ok && entry.exercise.plan.walls.length > 1 ? [entry.exercise] : [],
    );
    expect(course.length).toBeGreaterThan(5);
    for (const exercise of course) {
      const sent = new TextEncoder().encode(sendPlan(exercise));
      const found = findLines(broughtOf(readBrought(sent)));
      const [centre, plaster] = [found.centreLine?.line, found.plasterLine?.line];
      for (const x of along(centre, 0) ?? [Number.NaN]) expect(Math.abs(x), exercise.id).toBeLessThan(1e-6);
      for (const y of along(plaster, 1) ?? [Number.NaN]) expect(Math.abs(y), exercise.id).toBeLessThan(1e-6);
    }
  });
});

describe("the spans of lines", () => {
  it("have one line drawn in dashes as one, the longest first", () => {
    const dashes = [0, 2, 4, 6].map((y) => straight([1, y], [1, y + 1.5]));
    expect(lineSpans([...dashes, straight([0, 0], [3, 0])])).toEqual([
      [
        [1, 0],
        [1, 7.5],
      ],
      [
        [0, 0],
        [3, 0],
      ],
    ]);
  });

  it("are none of bends, of nothing, and of lines without length", () => {
    expect(lineSpans([])).toEqual([]);
    expect(lineSpans([straight([1, 1], [1, 1])])).toEqual([]);
    expect(
      lineSpans([
        {
          points: [
            [0, 0],
            [1, 1],
            [2, 0],
          ],
          curved: true,
        },
      ]),
    ).toEqual([]);
  });
});
