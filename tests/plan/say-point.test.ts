import { describe, expect, it } from "vitest";
import { namePoints } from "@/lib/plan/name-points";
import { sayPoint, shortName } from "@/lib/plan/say-point";
import { readTideOffice } from "../fixtures/tide-office";

describe("a point in words", () => {
  const { plan, stage } = readTideOffice(["/plan/walls/2/height", 12]);
  const points = namePoints(plan, stage);

  it.each([
    ["B.foot", "B"],
    ["B.top.W3", "B"],
    ["W3.lookout.start.sill", "W3 lookout"],
    ["P1.2.top", "P1"],
    ["S1.1.end", "S1"],
    ["desk.4.foot", "desk"],
    ["K1.centre.top", "K1"],
  ])("%s goes by %s on the sheet", (name, letter) => {
    const point = points.get(name);
    expect(point && shortName(point)).toBe(letter);
  });

  it("names every point in its own way", () => {
    const said = [...points.values()].map(sayPoint);
    expect(new Set(said).size).toBe(points.size);
    for (const words of said) expect(words).toMatch(/^the /);
  });
});
