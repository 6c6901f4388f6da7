import { loadOpenCV } from "@opencvjs/web";
import { beforeAll, describe, expect, it } from "vitest";
import type { DrawingPlace, MarkedDrawing } from "@/lib/perspective/whose-eye/marked-drawing";
import { whoseEye } from "@/lib/perspective/whose-eye/whose-eye";
import type { StagePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";
import { drawing, floorCorners } from "../perspective/whose-eye/drawn-stage";

/**
 * OpenCV 5.0 (@opencvjs/web 5.0.0-release.2): its projectPoints draws, and its solvePnP finds the camera of the eye that we
 * found. Its camera looks along z with y down; a quarter turn about x lays the stage before it.
 */
type Mat = { readonly data64F: Float64Array; delete(): void };
type Cv = {
  readonly CV_64FC1: number;
  readonly Mat: new () => Mat;
  matFromArray(rows: number, columns: number, type: number, values: readonly number[]): Mat;
  projectPoints(points: Mat, rvec: Mat, tvec: Mat, camera: Mat, distortion: Mat, image: Mat): void;
  solvePnP(points: Mat, image: Mat, camera: Mat, distortion: Mat, rvec: Mat, tvec: Mat): boolean;
};

let cv: Cv;
beforeAll(async () => {
  cv = (await loadOpenCV()) as unknown as Cv;
});

function mat(rows: number, columns: number, values: readonly number[]): Mat {
  return cv.matFromArray(rows, columns, cv.CV_64FC1, values);
}

/** A camera's matrix: focal length and principal point, here in millimetres of paper. */
function cameraMatrix(d: number, right: number, up: number): Mat {
  return mat(3, 3, [d, 0, right, 0, d, -up, 0, 0, 1]);
}

/** Points as OpenCV draws them for an eye, so many millimetres of paper a metre. */
function drawnByOpenCv(viewer: Viewer, perMetre: number, points: readonly StagePoint[]): readonly DrawingPlace[] {
  const { distance, eyeHeight, offset } = viewer;
  const inputs = [
    mat(points.length, 3, points.flat() as number[]),
    mat(3, 1, [Math.PI / 2, 0, 0]),
    mat(3, 1, [-offset, eyeHeight, distance]),
    cameraMatrix(distance * perMetre, offset * perMetre, eyeHeight * perMetre),
    mat(1, 4, [0, 0, 0, 0]),
  ] as const;
  const image = new cv.Mat();
  cv.projectPoints(...inputs, image);
  const flat = [...image.data64F];
  for (const one of [...inputs, image]) one.delete();
  return points.map((_, i): DrawingPlace => [flat[2 * i] as number, -(flat[2 * i + 1] as number)]);
}

/** Where OpenCV finds a camera of this lens that sees the points so; metres of the stage. */
function eyeByOpenCv(points: readonly StagePoint[], places: readonly DrawingPlace[], camera: Mat) {
  const [object, image] = [
    mat(points.length, 3, points.flat() as number[]),
    mat(
      places.length,
      2,
      places.flatMap(([right, up]) => [right, -up]),
    ),
  ];
  const [rvec, tvec, none] = [new cv.Mat(), new cv.Mat(), mat(1, 4, [0, 0, 0, 0])];
  const found = cv.solvePnP(object, image, camera, none, rvec, tvec);
  const [turn, [tx = NaN, ty = NaN, tz = NaN]] = [[...rvec.data64F], [...tvec.data64F]];
  for (const one of [object, image, rvec, tvec, none]) one.delete();
  if (!found) throw new Error("OpenCV finds no camera.");
  return { turn, distance: tz, eyeHeight: ty, offset: -tx };
}

const PER_METRE = 1000 / 48;

const EYES: readonly Viewer[] = [
  { distance: 10.97, eyeHeight: 2.44, offset: 0 },
  { distance: 7, eyeHeight: 1.6, offset: 1.1 },
  { distance: 14, eyeHeight: 3.5, offset: -2 },
];

/** What is marked in OpenCV's drawing of a 4 x 3 m rectangle: its proportion, and one length on the plaster line. */
function markedByOpenCv(viewer: Viewer, corners: readonly StagePoint[]): MarkedDrawing {
  const [a, b, c, d, left, right] = drawnByOpenCv(viewer, PER_METRE, [...corners, [-3, 0, 0], [3, 0, 0]]);
  if (!a || !b || !c || !d || !left || !right) throw new Error("OpenCV drew too little.");
  return drawing({
    rectangle: { corners: [a, b, c, d], proportion: 4 / 3 },
    length: { ends: [left, right], metres: 6, lies: "plaster line" },
    sigmaMm: 0.05,
  });
}

describe("whose eye drew this, against OpenCV's own cameras", () => {
  it.each(EYES.flatMap((viewer) => [0, 0.5, 1.1].map((turn) => ({ viewer, turn }))))(
    "$viewer.distance m off and $viewer.eyeHeight m high, before a rectangle turned by $turn: the same eye",
    ({ viewer, turn }) => {
      const corners = floorCorners([-1, 1.5], turn, 4, 3);
      const marked = markedByOpenCv(viewer, corners);
      const ours = whoseEye(marked, "m");
      if (ours.kind !== "told") throw new Error(ours.say);
      const { horizon, cvp, distanceMm, eyeHeight, distance } = ours.figures;
      if (!horizon || !cvp || !distanceMm || !eyeHeight || !distance) throw new Error(ours.untold.join(" "));
      // OpenCV is told our lens and the rectangle's true size, and finds where the camera stands.
      const camera = cameraMatrix(distanceMm.value, cvp.value, horizon.value);
      const theirs = eyeByOpenCv(corners, marked.rectangle?.corners ?? [], camera);
      camera.delete();
      expect(theirs.eyeHeight).toBeCloseTo(eyeHeight.value, 4);
      expect(theirs.distance).toBeCloseTo(distance.value, 4);
      expect(theirs.offset).toBeCloseTo(viewer.offset, 4);
      // And it looks straight ahead, level, as an upright picture plane means.
      [Math.PI / 2, 0, 0].forEach((angle, i) => {
        expect(theirs.turn[i]).toBeCloseTo(angle, 5);
      });
      expect(eyeHeight.value).toBeCloseTo(viewer.eyeHeight, 6);
      expect(distance.value).toBeCloseTo(viewer.distance, 6);
    },
  );

  it("with another lens OpenCV has to tilt its camera: the distance found is no matter of choice", () => {
    const viewer = EYES[0] as Viewer;
    const corners = floorCorners([-1, 1.5], 0.5, 4, 3);
    const marked = markedByOpenCv(viewer, corners);
    const camera = cameraMatrix(1.2 * viewer.distance * PER_METRE, 0, viewer.eyeHeight * PER_METRE);
    const theirs = eyeByOpenCv(corners, marked.rectangle?.corners ?? [], camera);
    camera.delete();
    expect(Math.abs((theirs.turn[0] as number) - Math.PI / 2) + Math.abs(theirs.turn[1] as number)).toBeGreaterThan(
      1e-3,
    );
  });
});
