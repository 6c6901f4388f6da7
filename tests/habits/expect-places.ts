import { expect } from "vitest";
import type { PicturePoint } from "@/lib/stage/frame";

/** Expected places by variant ("" for a habit held in one way only), worked out by hand from the table of habits. */
export type Places = Readonly<Record<string, PicturePoint>>;

export function expectPlaces(found: Places, expected: Places): void {
  expect(Object.keys(found).sort()).toEqual(Object.keys(expected).sort());
  for (const [variant, at] of Object.entries(expected)) {
    expect(found[variant]?.[0]).toBeCloseTo(at[0], 12);
    expect(found[variant]?.[1]).toBeCloseTo(at[1], 12);
  }
}
