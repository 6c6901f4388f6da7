import { describe, expect, it } from "vitest";
import type { PhotoPoint } from "@/lib/photo/pixels";
import { fitCorners } from "@/lib/photo/straighten/fit-corners";
import { photoFromSheet, sheetFromPhoto } from "@/lib/photo/straighten/map-page";
import { boxCorners } from "@/lib/photo/straighten/seen-box";
import { viewSheet } from "./view-sheet";

const PHOTO = { width: 3000, height: 2000 } as const;
/** An opening of 32 by 20 feet at 1/8 inch to the foot, from the middle of its foot. */
const OPENING = { left: -50.8, top: -63.5, right: 50.8, bottom: 0 } as const;
type Four = readonly [PhotoPoint, PhotoPoint, PhotoPoint, PhotoPoint];

describe("where a drawing lies by four corners set by hand", () => {
  it.each([{}, { tiltDeg: 30 }, { turnDeg: -30, rollDeg: 15 }])("meets them exactly, seen %j", (view) => {
    const truth = viewSheet(0, 0, { ...PHOTO, fill: 0.5, ...view });
    // A view of no sheet has no distance to it; the opening is looked at from 200 mm.
    const near = { ...truth, matrix: viewSheet(150, 100, { ...PHOTO, ...view }).matrix };
    const corners = boxCorners(OPENING).map((place) =>
      photoFromSheet(near, [place[0] + 75, place[1] + 80]),
    ) as unknown as Four;
    const result = fitCorners(corners, OPENING, PHOTO);
    if (result.kind !== "fitted") throw new Error(result.say);
    expect(result.fit).toMatchObject({ k1: 0, residualMm: null, middle: [1500, 1000] });
    for (const [x, y] of [...boxCorners(OPENING), [0, 0], [10, -30]] as const) {
      const point = photoFromSheet(near, [x + 75, y + 80]);
      const back = point && sheetFromPhoto(result.fit, point);
      expect(back?.[0]).toBeCloseTo(x, 6);
      expect(back?.[1]).toBeCloseTo(y, 6);
    }
  });

  it.each([
    [
      "too near",
      [
        [100, 100],
        [110, 105],
        [1000, 900],
        [100, 900],
      ],
    ],
    [
      "not four-sided",
      [
        [100, 100],
        [1000, 900],
        [1000, 100],
        [100, 900],
      ],
    ],
    [
      "not four-sided",
      [
        [100, 100],
        [1000, 100],
        [400, 300],
        [100, 900],
      ],
    ],
    [
      "not four-sided",
      [
        [100, 100],
        [500, 500],
        [1000, 1000],
        [100, 900],
      ],
    ],
    // Counter-clockwise: the drawing would be seen from behind.
    [
      "not four-sided",
      [
        [100, 100],
        [100, 900],
        [1000, 900],
        [1000, 100],
      ],
    ],
    [
      "not four-sided",
      [
        [100, 100],
        [Number.NaN, 100],
        [1000, 900],
        [100, 900],
      ],
    ],
  ] as const)("is refused as %s at %j", (why, corners) => {
    expect(fitCorners(corners as unknown as Four, OPENING, PHOTO)).toMatchObject({ kind: "refused", why });
  });
});
