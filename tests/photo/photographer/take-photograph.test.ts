import { loadOpenCV } from "@opencvjs/web";
import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import type { GreyPixels, PhotoPoint } from "@/lib/photo/pixels";
import type { OpenCv } from "@/lib/photo/straighten/open-cv";
import { MARKER_MM, markerPlaces } from "@/lib/sheet/marker-places";
import { shippedExercise } from "@/tests/drawing/practice-sheet/exercises";
import { CLEAR_PENCIL, FAINT_PENCIL } from "./conditions";
import { marksByHabit } from "./marks-by-habit";
import { type Photograph, type Shot, takePhotograph } from "./take-photograph";

const exercise = shippedExercise("the-tide-office");
const marks = marksByHabit(exercise, null, 1);
const SMALL: Shot = { exercise, paper: "letter", marks, seed: 1, megapixels: 3 };
/**
 * A marker's middle by OpenCV's refined corners lies this near to the truth, pixels. Its corners themselves lie a little
 * inside: a blurred edge stands on the dark side of where it is, since levels of a picture are a root of light.
 */
const MIDDLE_PX = 0.3;
const CORNER_PX = 1.2;

async function greyOf({ jpeg }: Photograph): Promise<GreyPixels> {
  const { data, info } = await sharp(jpeg).rotate().greyscale().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, grey: new Uint8Array(data) };
}

/** The markers that OpenCV's detector finds, with their corners clockwise from the sheet's upper left. */
function markersByOpenCv(cv: OpenCv, { width, height, grey }: GreyPixels): ReadonlyMap<number, readonly PhotoPoint[]> {
  const image = new cv.Mat(height, width, cv.CV_8UC1);
  image.data.set(grey);
  const parameters = new cv.aruco_DetectorParameters();
  parameters.cornerRefinementMethod = 1;
  const dictionary = cv.getPredefinedDictionary(cv.DICT_APRILTAG_36h11);
  const refine = new cv.aruco_RefineParameters(10, 3, true);
  const detector = new cv.aruco_ArucoDetector(dictionary, parameters, refine);
  const [corners, ids] = [new cv.MatVector(), new cv.Mat()];
  detector.detectMarkers(image, corners, ids);
  const found = Array.from({ length: corners.size() }, (_, i): [number, readonly PhotoPoint[]] => {
    const four = corners.get(i);
    const at = Array.from(four.data32F, (pixel) => pixel + 0.5);
    four.delete();
    return [ids.data32S[i] as number, [0, 2, 4, 6].map((k): PhotoPoint => [at[k] as number, at[k + 1] as number])];
  });
  for (const each of [ids, corners, detector, refine, dictionary, parameters, image]) each.delete();
  return new Map(found);
}

let cv: OpenCv;
beforeAll(async () => {
  cv = (await loadOpenCV()) as unknown as OpenCv;
});

describe("a photograph of a sheet", () => {
  it.each<[string, Partial<Shot>]>([
    ["as good as they get", {}],
    ["tilted, turned and through a poor lens", { tiltDeg: 35, leanDeg: 130, turnDeg: 170, k1: 0.02 }],
    ["of curled paper in poor light", { curlMm: 6, evenness: 0.5, shadow: 0.6, noise: 5, exposure: 0.65 }],
    ["under a thumb, compressed", { thumbOn: 4, jpegQuality: 60 }],
    ["cut off", { off: [0.12, 0], frame: "landscape", turnDeg: 90 }],
    ["stored on its side", { orientation: 6 }],
  ])("%s has the markers where it says they are, for OpenCV's own detector", async (_, change) => {
    const photograph = await takePhotograph({ ...SMALL, ...change });
    const grey = await greyOf(photograph);
    expect([grey.width, grey.height]).toEqual([photograph.width, photograph.height]);
    const found = markersByOpenCv(cv, grey);
    expect([...found.keys()].sort()).toEqual(photograph.truth.markers);
    for (const { id, box } of markerPlaces("letter")) {
      const seen = found.get(id);
      if (!seen) continue;
      const places = [
        [0, 0],
        [MARKER_MM, 0],
        [MARKER_MM, MARKER_MM],
        [0, MARKER_MM],
      ] as const;
      const off = places.map(([dx, dy], i) => {
        const [x, y] = photograph.truth.photoFromSheet([box.left + dx, box.top + dy]);
        const [X, Y] = seen[i] ?? [NaN, NaN];
        return [X - x, Y - y] as const;
      });
      const mean = (of: 0 | 1) => off.reduce((sum, each) => sum + each[of] / 4, 0);
      expect(Math.hypot(mean(0), mean(1))).toBeLessThan(MIDDLE_PX);
      for (const [dx, dy] of off) expect(Math.hypot(dx, dy)).toBeLessThan(CORNER_PX);
    }
  });

  it("is the same for the same seed, and another for another", async () => {
    const [one, again, other] = [
      await takePhotograph(SMALL),
      await takePhotograph(SMALL),
      await takePhotograph({ ...SMALL, seed: 2 }),
    ];
    expect(one.jpeg.equals(again.jpeg)).toBe(true);
    expect(one.jpeg.equals(other.jpeg)).toBe(false);
  });

  it.each([
    ["clear", CLEAR_PENCIL, 25, 90],
    ["faint", FAINT_PENCIL, 6, 25],
  ] as const)("has %s pencil along the drawn lines, and none beside them", async (_, pencil, least, most) => {
    const photograph = await takePhotograph({ ...SMALL, megapixels: 8, pencil, curlMm: 4 });
    const grey = await greyOf(photograph);
    const { lines, photoFromSheet } = photograph.truth;
    const level = (x: number, y: number) => {
      const [px, py] = photoFromSheet([x, y]);
      return grey.grey[Math.floor(py) * grey.width + Math.floor(px)] as number;
    };
    const long = lines.filter(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1]) > 15);
    expect(long.length).toBeGreaterThan(5);
    for (const { from, to } of long) {
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const [nx, ny] = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
      // Of the darkest within reach of the hand's wandering, against the paper a little farther off on the lighter side.
      const drops = Array.from({ length: 41 }, (_, i) => {
        const t = 0.1 + (0.8 * i) / 40;
        const [x, y] = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
        const across = (mm: number) => level(x + nx * mm, y + ny * mm);
        const darkest = Math.min(...[-0.5, -0.35, -0.2, -0.1, 0, 0.1, 0.2, 0.35, 0.5].map(across));
        return Math.max(across(1.6), across(-1.6)) - darkest;
      }).sort((a, b) => a - b);
      expect(drops[20]).toBeGreaterThan(least);
      expect(drops[20]).toBeLessThan(most);
    }
  });
});
