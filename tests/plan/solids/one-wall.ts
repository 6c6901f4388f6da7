import { expect } from "vitest";
import { planeOf } from "@/lib/geometry/plane";
import type { Opening, Plan, Wall } from "@/lib/plan/plan";
import type { Face, Solid } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";
import { opening, planOf, wallAB } from "../../drawing/fixtures/plan-of";

/** One wall W from (-3, 2) to (3, 2), its openings all called o. */
export function oneWall(parts: Partial<Wall>, openings: readonly Partial<Opening>[] = []): Plan {
  const wall = wallAB({ ...parts, openings: openings.map(opening) });
  return planOf({ corners: { A: [-3, 2], B: [3, 2] }, walls: [wall] });
}

export function faceOf(solid: Solid, id: string): Face {
  const face = solid.faces.find((one) => one.id === id);
  if (!face) throw new Error(`No face ${id} among ${solid.faces.map((one) => one.id).join(", ")}`);
  return face;
}

export function normalOf({ outline }: Face) {
  const plane = planeOf(outline);
  if (!plane) throw new Error("The face encloses nothing");
  return plane.normal;
}

export function expectNear(actual: StagePoint | undefined, expected: readonly number[]) {
  for (const [i, value] of expected.entries()) expect(actual?.[i]).toBeCloseTo(value, 9);
}
