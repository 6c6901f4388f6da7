import { describe, it } from "vitest";
import type { PicturePoint } from "@/lib/stage/frame";
import { expectPlaces } from "./expect-places";
import { askedFor, house, placesOf } from "./house";

describe("stairs", () => {
  // Nosings at (1, 2, 0.5), (1, 3, 1), (1, 4, 1.5). First: s = 0.8, (0.8, 0.8). Last: s = 2/3, (2/3, 5/3).
  const flight = house({
    plan: {
      stairs: [
        {
          id: "S1",
          nosing: [
            [1, 2],
            [2, 2],
          ],
          steps: 3,
          tread: 1,
          riser: 0.5,
        },
      ],
    },
    task: { marks: ["S1.1.start", "S1.2.start", "S1.3.start"] },
  });

  it("even-steps puts the second of three half way between the drawn first and last", () => {
    const expected: PicturePoint = [(0.8 + 2 / 3) / 2, (0.8 + 5 / 3) / 2];
    expectPlaces(placesOf("even-steps", askedFor(flight, "S1.2.start")), { "": expected });
  });

  it.each(["S1.1.start", "S1.3.start"])("even-steps says nothing of %s, an end of the flight", (point) => {
    expectPlaces(placesOf("even-steps", askedFor(flight, point)), {});
  });
});

describe("openings", () => {
  // A wall square to the plaster line, 3 m high, from (2, 0) to (2, 8): drawn from (2, 0) to (1, 1), tops (2, 3) and (1, 2.5).
  const marks = ["A.foot", "A.top", "B.foot", "B.top", "W1.door.start.sill", "W1.door.end.sill", "W1.door.start.head"];
  const door = (given: readonly string[], asked: readonly string[]) =>
    house({
      plan: {
        corners: { A: [2, 0], B: [2, 8] },
        walls: [
          {
            id: "W1",
            from: "A",
            to: "B",
            height: 3,
            openings: [{ id: "door", kind: "door", at: 2, width: 2, head: 2 }],
          },
        ],
      },
      task: { given, marks: asked },
    });

  it.each<[point: string, expected: PicturePoint]>([
    // a quarter of the way from (2, 0) to (1, 1)
    ["W1.door.start.sill", [1.75, 0.25]],
    ["W1.door.end.sill", [1.5, 0.5]],
    // two thirds up the drawn ends: (2, 2), and (1, 1 + 1.5 x 2/3) = (1, 2)
    ["W1.door.start.head", [1.75, 2]],
  ])("even-split at %s", (point, expected) => {
    expectPlaces(placesOf("even-split", askedFor(door([], marks), point)), { "": expected });
  });

  it("even-split says nothing while an end of the wall is not on the sheet", () => {
    const asked = askedFor(door(["A.foot", "A.top"], marks.slice(4)), "W1.door.start.sill");
    expectPlaces(placesOf("even-split", asked), {});
  });
});
