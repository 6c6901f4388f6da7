import fc from "fast-check";
import { FURNITURE_KINDS, MASKING_KINDS, OPENING_KINDS } from "@/lib/plan/plan";
import { angle, length, one, pick, place } from "./any-length";
import type { Making } from "./making";

const opening = fc.record({
  kind: fc.constantFrom(...OPENING_KINDS),
  at: length(0, 4),
  width: length(0.3, 2),
  sill: fc.oneof(fc.constant(0), length(0, 1)),
  head: length(1, 3),
  depth: fc.option(length(0.1, 1)),
  leaves: fc.constantFrom(1 as const, 2 as const),
  hinge: fc.constantFrom("start" as const, "end" as const, null),
  swing: fc.constantFrom("onstage" as const, "offstage" as const),
});
const base = fc.constantFrom(0, 0.6);

/** An edit that adds something. */
export const anyAddition: fc.Arbitrary<Making> = fc.oneof(
  fc
    .record({
      corners: fc.array(fc.oneof({ arbitrary: place, weight: 6 }, pick), { minLength: 2, maxLength: 5 }),
      closed: fc.boolean(),
      height: length(1, 5),
    })
    .map(
      ({ corners, closed, height }): Making =>
        (draft) => ({
          edit: "add-walls",
          corners: corners.map((c) =>
            typeof c === "number" ? (one([...draft.exercise.plan.corners.keys()], c) ?? "none") : c,
          ),
          closed,
          height,
          thickness: 0.15,
        }),
    ),
  fc
    .record({
      runs: fc.array(
        fc.record({
          corners: fc.array(place, { minLength: 2, maxLength: 5 }),
          closed: fc.boolean(),
          openings: fc.array(opening, { maxLength: 2 }),
          thickness: fc.constantFrom(0, 0.15),
          onstage: fc.constantFrom("left" as const, "right" as const),
        }),
        { minLength: 1, maxLength: 3 },
      ),
      height: length(1, 5),
    })
    .map(
      ({ runs, height }): Making =>
        () => ({
          edit: "bring-walls",
          height,
          runs: runs.map(({ corners, closed, ...wall }) => ({
            corners,
            closed,
            walls: corners.slice(closed ? 0 : 1).map(() => wall),
          })),
        }),
    ),
  place.map(
    (at): Making =>
      () => ({ edit: "add-point", at }),
  ),
  fc.tuple(pick, opening).map(
    ([n, put]): Making =>
      (draft) => ({
        edit: "add-opening",
        wall: one(draft.exercise.plan.walls, n)?.id ?? "W1",
        opening: put,
      }),
  ),
  fc.record({ outline: fc.array(place, { minLength: 3, maxLength: 6 }), height: length(0.1, 1), base }).map(
    (platform): Making =>
      () => ({ edit: "add-platform", platform }),
  ),
  fc
    .record({
      nosing: fc.tuple(place, place),
      steps: fc.integer({ min: 1, max: 9 }),
      tread: length(0.2, 0.4),
      riser: length(0.1, 0.2),
      base,
    })
    .map(
      (stair): Making =>
        () => ({ edit: "add-stair", stair }),
    ),
  fc
    .record({
      kind: fc.constantFrom(...FURNITURE_KINDS),
      at: place,
      turn: angle,
      width: length(0.3, 2),
      depth: length(0.3, 1),
      height: length(0.3, 2),
      base,
    })
    .map(
      (furniture): Making =>
        () => ({ edit: "add-furniture", furniture }),
    ),
  fc.record({ at: place, diameter: length(0.1, 0.5), height: length(1, 4), base }).map(
    (column): Making =>
      () => ({ edit: "add-column", column }),
  ),
  fc
    .record({
      kind: fc.constantFrom(...MASKING_KINDS),
      line: fc.tuple(place, place),
      trim: fc.option(length(2, 5)),
      height: length(0.5, 6),
    })
    .map(
      (masking): Making =>
        () => ({ edit: "add-masking", masking }),
    ),
);
