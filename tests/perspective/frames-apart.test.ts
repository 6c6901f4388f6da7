import { describe, expect, it } from "vitest";
import { backProjectToFloor, project } from "@/lib/perspective/project";
import { vanishingPoint } from "@/lib/perspective/vanishing-point";
import type { PicturePoint, PlanPoint, StageDirection, StagePoint } from "@/lib/stage/frame";
import { onFloor } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";

const viewer: Viewer = { distance: 10, eyeHeight: 2, offset: 0 };
const level = { rake: 0 };
const onStage: StagePoint = [1, 2, 3];
const inPlan: PlanPoint = [1, 2];
const inPicture: PicturePoint = [1, 1];
const towards: StageDirection = [1, 1, 0];

/** The compiler holds every line here to be wrong: were one of them right, the check of types would fail. */
const mixedUp = [
  // @ts-expect-error a picture point is no stage point
  () => project(viewer, inPicture),
  // @ts-expect-error a plan point is no stage point
  () => project(viewer, inPlan),
  // @ts-expect-error a direction is no stage point
  () => project(viewer, towards),
  // @ts-expect-error a plan point is no picture point
  () => backProjectToFloor(viewer, level, inPlan),
  // @ts-expect-error a stage point is no picture point
  () => backProjectToFloor(viewer, level, onStage),
  // @ts-expect-error a picture point is no place of the plan
  () => onFloor(level, inPicture),
  // @ts-expect-error a stage point is no direction
  () => vanishingPoint(viewer, onStage),
  // @ts-expect-error what is seen in the picture cannot be projected again
  () => project(viewer, [1, 2, 0]).seen && project(viewer, project(viewer, [1, 2, 0]).at),
  // @ts-expect-error the place of an unseen point cannot be read before asking whether it is seen
  () => project(viewer, onStage).at,
  // @ts-expect-error nor a place on the floor before asking whether one is found
  () => backProjectToFloor(viewer, level, inPicture).at,
  // @ts-expect-error a point is not to be written to
  () => onStage.push(4),
];

describe("points of different frames", () => {
  it("are kept apart by the compiler alone: at run time they are plain tuples that survive JSON", () => {
    expect(mixedUp).toHaveLength(11);
    for (const point of [onStage, inPlan, inPicture, towards, onFloor(level, inPlan)]) {
      expect(Object.keys(point)).toEqual([...point.keys()].map(String));
      expect(JSON.parse(JSON.stringify(point))).toEqual(point);
    }
  });
});
