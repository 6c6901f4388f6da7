import { loadOpenCV } from "@opencvjs/web";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PageFit } from "@/lib/photo/page-fit";
import { fitPage } from "@/lib/photo/straighten/fit-page";
import { photoFromSheet, sheetFromPhoto } from "@/lib/photo/straighten/map-page";
import { boxCorners } from "@/lib/photo/straighten/seen-box";
import { markerPlaces } from "@/lib/sheet/marker-places";
import { type Paper, paperSize } from "@/lib/sheet/paper-size";
import { seeded } from "@/tests/seeded";
import { moveMarker, seenMarkers } from "./seen-markers";
import { type View, viewSheet } from "./view-sheet";

const PHOTO = { width: 3000, height: 4000 } as const;
const ALL = [0, 1, 2, 3, 4, 5, 6, 7] as const;

function look(paper: Paper, view: Partial<View>): PageFit {
  const { widthMm, heightMm } = paperSize(paper);
  return viewSheet(widthMm, heightMm, { ...PHOTO, ...view });
}

function fitted(...call: Parameters<typeof fitPage>) {
  const result = fitPage(...call);
  if (result.kind !== "fitted") throw new Error(`Refused: ${result.why}.`);
  return result;
}

/** The farthest that a fit has any place of a sheet from where it truly is, millimetres. */
function worstMm(paper: Paper, truth: PageFit, fit: PageFit): number {
  const { widthMm, heightMm } = paperSize(paper);
  const places = [0, 0.25, 0.5, 0.75, 1].flatMap((x) => [0, 0.25, 0.5, 0.75, 1].map((y) => [x, y] as const));
  return Math.max(
    ...places.map(([x, y]) => {
      const point = photoFromSheet(truth, [x * widthMm, y * heightMm]);
      const back = point && sheetFromPhoto(fit, point);
      return back ? Math.hypot(back[0] - x * widthMm, back[1] - y * heightMm) : Number.POSITIVE_INFINITY;
    }),
  );
}

/** A fraction of a pixel off, the same each time. */
function shaker(px: number): () => number {
  let state = 7;
  return () => {
    state = (state * 16807) % 2147483647;
    return px * 2 * (state / 2147483647 - 0.5);
  };
}

describe("where a page lies", () => {
  it.each([
    ["letter", {}, ALL],
    ["letter", { tiltDeg: 35, k1: 0.02 }, ALL],
    ["a4", { tiltDeg: -20, turnDeg: 25, rollDeg: 95, k1: -0.04 }, ALL],
    ["a3", { turnDeg: 35, rollDeg: -170, k1: 0.02 }, [0, 2, 4, 6]],
    ["tabloid", { tiltDeg: 30, k1: 0.03 }, [1, 3, 5, 7]],
    ["letter", { tiltDeg: 30, k1: 0.02 }, [0, 1, 3, 5, 6]],
    ["letter", { turnDeg: 10, k1: 0.01 }, [0, 2, 3, 7]],
  ] as const)("is found on %s seen %j from the markers %j alone", (paper, view, ids) => {
    const truth = look(paper, view);
    const { fit, used, leftOut } = fitted(seenMarkers(truth, paper, ids), markerPlaces(paper), PHOTO);
    expect(worstMm(paper, truth, fit)).toBeLessThan(0.01);
    expect(fit.residualMm).toBeLessThan(1e-3);
    expect({ used, leftOut }).toEqual({ used: ids, leftOut: [] });
    expect(JSON.parse(JSON.stringify(fit))).toEqual(fit);
  });

  it("keeps to 0.05 mm with corners a third of a pixel off, and says what is left over", () => {
    const truth = look("letter", { tiltDeg: 25, rollDeg: 12, k1: 0.02 });
    const { fit } = fitted(seenMarkers(truth, "letter", ALL, shaker(1 / 3)), markerPlaces("letter"), PHOTO);
    expect(worstMm("letter", truth, fit)).toBeLessThan(0.05);
    expect(fit.residualMm).toBeGreaterThan(0.01);
    expect(fit.residualMm).toBeLessThan(0.05);
  });

  it("leaves one wrong marker out, whichever it is", () => {
    for (const wrong of ALL) {
      const truth = look("a4", { tiltDeg: 20, rollDeg: 40, k1: 0.02 });
      const seen = seenMarkers(truth, "a4", ALL, shaker(0.3));
      const moved = seen.map((each) => (each.id === wrong ? moveMarker(each, 60, -40) : each));
      const { fit, leftOut } = fitted(moved, markerPlaces("a4"), PHOTO);
      expect(leftOut).toEqual([wrong]);
      expect(worstMm("a4", truth, fit)).toBeLessThan(0.12);
    }
  });

  it("leaves two wrong markers out of eight", () => {
    const truth = look("letter", { tiltDeg: 20, k1: 0.02 });
    const seen = seenMarkers(truth, "letter", ALL, shaker(0.3));
    const moved = seen.map((each) => (each.id === 1 || each.id === 4 ? moveMarker(each, 60, 60 * each.id) : each));
    const { fit, leftOut } = fitted(moved, markerPlaces("letter"), PHOTO);
    expect([...leftOut].sort()).toEqual([1, 4]);
    expect(worstMm("letter", truth, fit)).toBeLessThan(0.2);
  });

  it.each([
    ["few", [0, 2, 4]],
    ["few", []],
    ["bunched", [0, 1, 2, 7]],
  ] as const)("is refused as %s from the markers %j", (why, ids) => {
    const seen = seenMarkers(look("letter", {}), "letter", ids);
    expect(fitPage(seen, markerPlaces("letter"), PHOTO)).toEqual({ kind: "refused", why });
  });

  it("is refused where four markers contradict each other, where one is seen twice, and where a mirror shows them", () => {
    const seen = seenMarkers(look("letter", { tiltDeg: 10 }), "letter", [0, 2, 4, 6]);
    const moved = seen.map((each) => (each.id === 2 ? moveMarker(each, 300, -250) : each));
    expect(fitPage(moved, markerPlaces("letter"), PHOTO)).toEqual({ kind: "refused", why: "contradictory" });
    const [first] = seen;
    if (!first) throw new Error("No marker.");
    const twice = [...seen, moveMarker(first, 500, 500)];
    expect(fitPage(twice, markerPlaces("letter"), PHOTO)).toEqual({ kind: "refused", why: "twice" });
    const mirrored = seen.map((each) => ({
      ...each,
      corners: each.corners.map(([x, y]) => [PHOTO.width - x, y] as const) as unknown as typeof each.corners,
    }));
    expect(fitPage(mirrored, markerPlaces("letter"), PHOTO)).toEqual({ kind: "refused", why: "contradictory" });
  });

  it("is not moved by one wrong marker among six and more, whatever it does, but by what it says is left over", () => {
    fc.assert(
      fc.property(
        fc.subarray([...ALL], { minLength: 6 }),
        fc.nat(7),
        fc.tuple(fc.integer({ min: -600, max: 600 }), fc.integer({ min: -600, max: 600 })),
        fc.double({ min: -35, max: 35, noNaN: true }),
        (ids, wrong, [right, down], tiltDeg) => {
          const truth = look("letter", { tiltDeg, k1: 0.02 });
          const seen = seenMarkers(truth, "letter", ids, shaker(0.3));
          const moved = seen.map((each) => (each.id === wrong ? moveMarker(each, right, down) : each));
          const { fit, leftOut } = fitted(moved, markerPlaces("letter"), PHOTO);
          expect(leftOut.every((id) => id === wrong)).toBe(true);
          // One that is off by less is kept, and shows in what is left over.
          const told = leftOut.length > 0 ? 0 : 16 * (fit.residualMm ?? 0);
          expect(worstMm("letter", truth, fit)).toBeLessThan(0.6 + told);
        },
      ),
      seeded,
    );
  });
});

describe("OpenCV's own fits", () => {
  it("agree on the homography where the lens is straight (findHomography, least squares)", async () => {
    const cv = await loadOpenCV();
    const truth = look("letter", { tiltDeg: 30, turnDeg: -15, rollDeg: 20 });
    const seen = seenMarkers(truth, "letter", ALL, shaker(0.4));
    const places = markerPlaces("letter").flatMap(({ box }) => boxCorners(box));
    const from = cv.matFromArray(places.length, 1, cv.CV_64FC2, places.flat());
    const to = cv.matFromArray(
      places.length,
      1,
      cv.CV_64FC2,
      seen.flatMap(({ corners }) => corners.flat()),
    );
    const matrix = [...cv.findHomography(from, to, 0).data64F];
    const theirs = (x: number, y: number) => {
      const row = (i: number) => (matrix[i] ?? 0) * x + (matrix[i + 1] ?? 0) * y + (matrix[i + 2] ?? 0);
      return [row(0) / row(6), row(3) / row(6)] as const;
    };
    const { fit } = fitted(seen, markerPlaces("letter"), PHOTO);
    // Ours also fits k1 to the same noise, so that they part by a fraction of it.
    expect(Math.abs(fit.k1)).toBeLessThan(1e-3);
    for (const [x, y] of places) {
      const ours = photoFromSheet(fit, [x, y]) ?? [Number.NaN, Number.NaN];
      expect(Math.hypot(ours[0] - theirs(x, y)[0], ours[1] - theirs(x, y)[1])).toBeLessThan(0.25);
    }
  });

  it("see the same points through the same lens (projectPoints with its k1)", async () => {
    const cv = await loadOpenCV();
    const [tilt, k1] = [25, 0.03];
    const fit = look("a4", { tiltDeg: tilt, k1 });
    const half = fit.halfDiagonalPx;
    // The same camera in OpenCV's words: focal length 1.2 half diagonals, the sheet's middle straight ahead.
    const f = 1.2 * half;
    const away = fit.matrix[2][0] * 105 + fit.matrix[2][1] * 148.5 + fit.matrix[2][2];
    const places = [
      [0, 0],
      [210, 0],
      [210, 297],
      [30, 200],
    ] as const;
    const objects = cv.matFromArray(
      4,
      1,
      cv.CV_64FC3,
      places.flatMap(([x, y]) => [x - 105, y - 148.5, 0]),
    );
    const rotation = cv.matFromArray(3, 1, cv.CV_64FC1, [(tilt * Math.PI) / 180, 0, 0]);
    const shift = cv.matFromArray(3, 1, cv.CV_64FC1, [0, 0, away]);
    const camera = cv.matFromArray(3, 3, cv.CV_64FC1, [f, 0, 1500, 0, f, 2000, 0, 0, 1]);
    // OpenCV measures from the middle in focal lengths, ours in half diagonals: k1 differs by the square of their ratio.
    const lens = cv.matFromArray(4, 1, cv.CV_64FC1, [k1 * 1.2 ** 2, 0, 0, 0]);
    const seen = new cv.Mat();
    (cv as unknown as { projectPoints(...call: object[]): void }).projectPoints(
      objects,
      rotation,
      shift,
      camera,
      lens,
      seen,
    );
    places.forEach(([x, y], i) => {
      const [right, down] = photoFromSheet(fit, [x, y]) ?? [Number.NaN, Number.NaN];
      expect(right).toBeCloseTo(seen.data64F[2 * i] ?? Number.NaN, 6);
      expect(down).toBeCloseTo(seen.data64F[2 * i + 1] ?? Number.NaN, 6);
    });
  });
});
