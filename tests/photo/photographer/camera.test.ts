import { describe, expect, it } from "vitest";
import { multiply3 } from "@/lib/geometry/matrix3";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { aimCamera } from "./aim-camera";
import { meetSheet, seeSheet, trueFit } from "./camera";
import { GOOD_PHOTOGRAPH } from "./conditions";
import { curledPlace, curlPaper } from "./curl";

const LETTER = { widthMm: 215.9, heightMm: 279.4 };
const PLACES: readonly SheetPlace[] = [0, 54, 120, 215.9].flatMap((x) =>
  [0, 91, 203, 279.4].map((y) => [x, y] as const),
);
/** Through the steps of the inversion and back again, millimetres. */
const THE_SAME_MM = 1e-6;

const VIEWS = [
  ["straight down", { tiltDeg: 0 }],
  ["tilted and turned", { tiltDeg: 35, leanDeg: 200, turnDeg: 95 }],
  ["through a poor lens", { tiltDeg: 20, k1: -0.03 }],
  ["of curled paper", { tiltDeg: 30, leanDeg: 300, k1: 0.02, curlMm: 8, curlDeg: 15 }],
  ["of paper that arches", { tiltDeg: 30, leanDeg: 30, curlMm: -8, curlDeg: 100 }],
] as const;

describe("the camera", () => {
  it.each(VIEWS)("%s: sees each place of the sheet where a ray from there meets it again", (_, view) => {
    const camera = aimCamera({ ...GOOD_PHOTOGRAPH, ...view }, LETTER);
    for (const place of PLACES) {
      const again = meetSheet(camera, seeSheet(camera, place));
      expect(Math.hypot(again[0] - place[0], again[1] - place[1])).toBeLessThan(THE_SAME_MM);
    }
  });

  it.each(VIEWS.slice(0, 3))("%s: is a homography and one term of distortion", (_, view) => {
    const camera = aimCamera({ ...GOOD_PHOTOGRAPH, ...view }, LETTER);
    const { matrix, k1, middle, halfDiagonalPx } = trueFit(camera);
    for (const place of PLACES) {
      const [x, y, w] = multiply3(matrix, [place[0], place[1], 1]);
      const [u, v] = [(x / w - middle[0]) / halfDiagonalPx, (y / w - middle[1]) / halfDiagonalPx];
      const out = halfDiagonalPx * (1 + k1 * (u * u + v * v));
      const seen = seeSheet(camera, place);
      expect(Math.hypot(seen[0] - middle[0] - u * out, seen[1] - middle[1] - v * out)).toBeLessThan(THE_SAME_MM);
    }
  });

  it("straight down sees right as right, down as down, and the paper as large as asked", () => {
    const camera = aimCamera({ ...GOOD_PHOTOGRAPH, tiltDeg: 0, turnDeg: 0, megapixels: 12, fill: 0.9 }, LETTER);
    expect([camera.width, camera.height]).toEqual([3000, 4000]);
    const [upper, lower] = [seeSheet(camera, [0, 0]), seeSheet(camera, [215.9, 279.4])];
    // Letter is 1 : 1.294, the frame 3 : 4: the paper's width is what fills it.
    expect(lower[0] - upper[0]).toBeCloseTo(0.9 * 3000, 3);
    expect(lower[1] - upper[1]).toBeCloseTo((0.9 * 3000 * 279.4) / 215.9, 3);
    expect((upper[0] + lower[0]) / 2).toBeCloseTo(1500, 3);
  });

  it.each([35, 10])(
    "tilted %i degrees it shows the paper nearer on one side, in the ratio of a pinhole's",
    (tiltDeg) => {
      const camera = aimCamera({ ...GOOD_PHOTOGRAPH, tiltDeg, leanDeg: 90, turnDeg: 0 }, LETTER);
      const wide = (y: number) => seeSheet(camera, [215.9, y])[0] - seeSheet(camera, [0, y])[0];
      // A level line of the page lies wholly at one distance along the camera's axis: sizes go as one over it.
      const away = (y: number) =>
        -camera.at[2] * Math.cos((tiltDeg * Math.PI) / 180) + (y - camera.at[1]) * Math.sin((tiltDeg * Math.PI) / 180);
      expect(wide(0) / wide(279.4)).toBeCloseTo(away(279.4) / away(0), 9);
      expect(wide(0)).toBeGreaterThan(wide(279.4));
    },
  );
});

describe("curled paper", () => {
  it.each([
    [6, 0],
    [-6, 0],
    [5, 70],
  ])("of %i mm about %i degrees keeps every length along its surface, and lifts its edge as asked", (lift, deg) => {
    const curl = curlPaper(lift, deg, LETTER.widthMm, LETTER.heightMm);
    const steps = 2000;
    for (const [from, to] of [
      [
        [0, 0],
        [215.9, 279.4],
      ],
      [
        [0, 200],
        [215.9, 10],
      ],
    ] as const) {
      let length = 0;
      let last = curledPlace(curl, from);
      for (let i = 1; i <= steps; i++) {
        const t = i / steps;
        const next = curledPlace(curl, [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]);
        length += Math.hypot(next[0] - last[0], next[1] - last[1], next[2] - last[2]);
        last = next;
      }
      expect(length).toBeCloseTo(Math.hypot(to[0] - from[0], to[1] - from[1]), 3);
    }
    const rises = PLACES.map((place) => -curledPlace(curl, place)[2]);
    expect(lift > 0 ? Math.max(...rises) : Math.min(...rises)).toBeCloseTo(lift, 1);
  });
});
