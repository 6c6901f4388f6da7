import Flatbush from "flatbush";
import { distanceToSegment } from "../../geometry/segments-cross";
import { distance } from "../../geometry/vector";
import type { Plan } from "../../plan/plan";
import { insideOutline } from "../../plan/surface-level";
import type { PlanPoint } from "../../stage/frame";
import type { Thing } from "../draft";
import { outlineThings, type ThingShape } from "./outline-things";

/** The things of a plan, made ready for being pointed at; to be made anew for another plan. */
export type ThingIndex = { readonly shapes: readonly ThingShape[]; readonly boxes: Flatbush | null };

export function indexThings(plan: Plan): ThingIndex {
  const shapes = outlineThings(plan);
  if (shapes.length === 0) return { shapes, boxes: null };
  const boxes = new Flatbush(shapes.length);
  for (const { ring, radius } of shapes) {
    const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
    boxes.add(Math.min(...xs) - radius, Math.min(...ys) - radius, Math.max(...xs) + radius, Math.max(...ys) + radius);
  }
  boxes.finish();
  return { shapes, boxes };
}

/**
 * The things within reach of a place of the plan, metres, the one most likely meant first: corners, then openings, walls,
 * masking, then what stands on the stage, the smaller before what it stands on; of one kind the nearest.
 */
export function thingsAt({ shapes, boxes }: ThingIndex, at: PlanPoint, reach: number): readonly Thing[] {
  if (!boxes) return [];
  const [x, y] = at;
  return boxes
    .search(x - reach, y - reach, x + reach, y + reach)
    .map((i) => shapes[i] as ThingShape)
    .map((shape) => ({ shape, off: offShape(shape, at) }))
    .filter(({ off }) => off <= reach)
    .sort((a, b) => a.shape.rank - b.shape.rank || a.off - b.off || a.shape.area - b.shape.area)
    .map(({ shape }) => shape.thing);
}

/** The thing that is meant at a place of the plan, or null. */
export function thingAt(index: ThingIndex, at: PlanPoint, reach: number): Thing | null {
  return thingsAt(index, at, reach)[0] ?? null;
}

/** The things that lie wholly between two corners of a rectangle drawn on the plan, in the plan's order. */
export function thingsWithin({ shapes, boxes }: ThingIndex, one: PlanPoint, other: PlanPoint): readonly Thing[] {
  if (!boxes) return [];
  const [left, right] = [Math.min(one[0], other[0]), Math.max(one[0], other[0])];
  const [near, far] = [Math.min(one[1], other[1]), Math.max(one[1], other[1])];
  const inside = ({ ring, radius }: ThingShape) =>
    ring.every(([x, y]) => x - radius >= left && x + radius <= right && y - radius >= near && y + radius <= far);
  return boxes
    .search(left, near, right, far)
    .sort((a, b) => a - b)
    .map((i) => shapes[i] as ThingShape)
    .filter(inside)
    .map(({ thing }) => thing);
}

/** How far a place lies outside a shape; 0 inside. */
function offShape({ ring, radius }: ThingShape, at: PlanPoint): number {
  const [first, second] = ring;
  if (!first) return Number.POSITIVE_INFINITY;
  if (!second) return Math.max(0, distance(first, at) - radius);
  if (ring.length > 2 && insideOutline(ring, at)) return 0;
  return Math.min(...ring.map((p, i) => distanceToSegment(at, [p, ring[(i + 1) % ring.length] as PlanPoint])));
}
