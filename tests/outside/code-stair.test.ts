import { describe, expect, it } from "vitest";
import { project } from "@/lib/perspective/project";
import { vanishingPoint } from "@/lib/perspective/vanishing-point";
import type { Stair } from "@/lib/plan/plan";
import { stairNosings } from "@/lib/plan/stair-nosings";
import { expectedOf, publishedCase, sourceOf, viewerOf } from "./published-cases";
import { expectWithin } from "./within";

const code = publishedCase("stairs-01-IBC-7-11");

describe(`${code.id}: ${sourceOf(code)}`, () => {
  const flight: Stair = {
    id: "S1",
    nosing: [
      [24, 120],
      [60, 120],
    ],
    steps: 4,
    tread: 11,
    riser: 7,
    base: 0,
  };
  const starts = stairNosings(flight, { rake: 0 }).map(({ start }) => start);

  it("the plan's stair puts its nosings there", () => {
    expect(starts).toEqual(Object.values(code.points ?? {}).map(({ stage }) => stage));
  });

  it("every drawn nosing lies on one line to the vanishing point of the pitch", () => {
    const viewer = viewerOf(code);
    const { value, tolerance } = expectedOf(code, "pitch (deg)");
    const pitch = (value * Math.PI) / 180;
    const vanishing = vanishingPoint(viewer, [0, 11, 7]);
    const fromAngle = vanishingPoint(viewer, [0, Math.cos(pitch), Math.sin(pitch)]);
    if (!vanishing || !fromAngle) throw new Error("The pitch has no vanishing point.");
    const inchesPerDegree = ((Math.PI / 180) * viewer.distance) / Math.cos(pitch) ** 2;
    expectWithin(fromAngle[1], vanishing[1], tolerance * inchesPerDegree);
    const slopes = starts.map((nosing) => {
      const seen = project(viewer, nosing);
      return seen.seen ? (vanishing[1] - seen.at[1]) / (vanishing[0] - seen.at[0]) : Number.NaN;
    });
    for (const slope of slopes) expectWithin(slope, slopes[0] as number, code.tolerance);
  });
});
