import { expect } from "vitest";
import type { NamedPoints } from "@/lib/plan/named-point";

/** Expects a named point at [x, y, z], metres. */
export function expectPlace(points: NamedPoints, name: string, place: readonly number[]) {
  const at = points.get(name)?.at;
  expect(at, `${name} is a point`).toBeDefined();
  expect(at).toHaveLength(3);
  place.forEach((length, i) => {
    expect(at?.[i], `${name}[${i}]`).toBeCloseTo(length, 9);
  });
}
