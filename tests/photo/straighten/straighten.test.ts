import { describe, expect, it } from "vitest";
import type { GreyPixels } from "@/lib/photo/pixels";
import { photoFromSheet } from "@/lib/photo/straighten/map-page";
import { straighten } from "@/lib/photo/straighten/straighten";
import { viewSheet } from "./view-sheet";

const PHOTO = { width: 900, height: 1200 } as const;

/** A photograph whose grey at each place is a function of it. */
function paint(
  grey: (right: number, down: number) => number,
  { width, height } = PHOTO as { width: number; height: number },
): GreyPixels {
  const pixels = new Uint8Array(width * height);
  for (let j = 0; j < height; j++) for (let i = 0; i < width; i++) pixels[j * width + i] = grey(i + 0.5, j + 0.5);
  return { width, height, grey: pixels };
}

describe("a page seen straight on", () => {
  it("shows at each pixel what the photograph has at its place", () => {
    const fit = viewSheet(210, 297, { ...PHOTO, tiltDeg: 30, rollDeg: 20, k1: 0.03 });
    const slope = paint((right, down) => right / 9 + down / 12);
    const box = { left: 20, top: 40, right: 150, bottom: 222 };
    const page = straighten(slope, fit, box, 3);
    expect(page).toMatchObject({ width: 390, height: 546, box, pixelsPerMm: 3 });
    for (const [i, j] of [
      [0, 0],
      [389, 0],
      [17, 300],
      [200, 545],
      [389, 545],
    ] as const) {
      const at = photoFromSheet(fit, [20 + (i + 0.5) / 3, 40 + (j + 0.5) / 3]) ?? [Number.NaN, Number.NaN];
      expect(Math.abs((page.grey[j * 390 + i] ?? 0) - (at[0] / 9 + at[1] / 12))).toBeLessThan(1.5);
    }
  });

  it("turns the finest stripes to an even grey where it shrinks them, and not to broad ones", () => {
    const stripes = paint((right) => (Math.floor(right) % 2 === 0 ? 0 : 200));
    const fit = viewSheet(210, 297, { ...PHOTO });
    // A fifth of the photograph's own size.
    const page = straighten(stripes, fit, { left: 20, top: 20, right: 190, bottom: 277 }, 0.7);
    expect(Math.min(...page.grey)).toBeGreaterThan(75);
    expect(Math.max(...page.grey)).toBeLessThan(125);
  });

  it("goes on with the last pixel past the photograph's edge, and is white behind the camera", () => {
    const fit = viewSheet(210, 297, { ...PHOTO });
    const half = paint((right) => (right < 450 ? 60 : 180));
    const page = straighten(half, fit, { left: -200, top: 100, right: 400, bottom: 110 }, 1);
    expect([page.grey[0], page.grey[599]]).toEqual([60, 180]);
    const tilted = viewSheet(210, 297, { ...PHOTO, tiltDeg: 35 });
    const behind = [-50_000, 50_000].map((top) =>
      straighten(half, tilted, { left: 0, top, right: 4, bottom: top + 4 }, 1),
    );
    expect(behind.some(({ grey }) => grey.every((each) => each === 255))).toBe(true);
  });

  it.each([
    [1, 1],
    [1, 40],
    [40, 1],
    [2, 2],
  ])("reads a photograph of %i by %i pixels without leaving it", (width, height) => {
    const fit = viewSheet(10, 10, { width: 100, height: 100 });
    const page = straighten(
      paint(() => 90, { width, height }),
      fit,
      { left: 0, top: 0, right: 10, bottom: 10 },
      4,
    );
    expect(page.grey.every((each) => each === 90)).toBe(true);
  });
});
