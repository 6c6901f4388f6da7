import { describe, expect, it } from "vitest";
import { project } from "@/lib/perspective/project";
import { measuringPoint, vanishingPoint } from "@/lib/perspective/vanishing-point";
import { publishedCases, sourceOf, viewerOf } from "./published-cases";
import { expectWithin } from "./within";

const withPoints = publishedCases.flatMap((one) => (one.points ? [{ ...one, points: one.points }] : []));
const withLines = publishedCases.flatMap((one) => (one.lines ? [{ ...one, lines: one.lines }] : []));

describe("published points", () => {
  it("are there to be checked", () => {
    expect(withPoints).toHaveLength(16);
  });

  describe.each(withPoints.map((one) => ({ title: `${one.id}: ${sourceOf(one)}`, one })))("$title", ({ one }) => {
    it.each(Object.entries(one.points))("%s falls where it says", (_, { stage, picture, s }) => {
      const seen = project(viewerOf(one), stage);
      if (!seen.seen) throw new Error("The point is not seen.");
      expectWithin(seen.at[0], picture[0], one.tolerance);
      expectWithin(seen.at[1], picture[1], one.tolerance);
      if (s !== undefined) expectWithin(seen.s, s, one.tolerance);
    });
  });
});

describe("published vanishing and measuring points", () => {
  it("are there to be checked", () => {
    expect(withLines).toHaveLength(4);
  });

  describe.each(withLines.map((one) => ({ title: `${one.id}: ${sourceOf(one)}`, one })))("$title", ({ one }) => {
    it.each(Object.entries(one.lines))("%s goes where it says", (_, { direction, vanishing, measuring }) => {
      const viewer = viewerOf(one);
      const found = vanishingPoint(viewer, direction);
      if (!found) throw new Error("The line has no vanishing point.");
      expectWithin(found[0], vanishing[0], one.tolerance);
      expectWithin(found[1], vanishing[1], one.tolerance);
      if (measuring !== undefined) expectWithin(measuringPoint(viewer, found)[0], measuring, one.tolerance);
    });
  });
});
