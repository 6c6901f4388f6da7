import type { GreyPixels, PhotoPoint } from "../pixels";
import type { OpenCv } from "./open-cv";
import { type FourCorners, type RefinedMarker, refineMarker } from "./refine-marker";
import { shrinkGrey } from "./shrink-grey";

/** A marker of ours seen in a photograph. */
export type SeenMarker = RefinedMarker & { readonly id: number };

/** A sheet has the ids 0 to 7; others of the family are somebody else's. */
const IDS = 8;
/** With so many found a longer search is not worth its time. */
const PLENTY = 6;
/** The picture that is searched is about so large along its longer side, pixels: twelve megapixels at half their resolution. */
const SEARCHED_PX = 2100;
/** Corners to a fraction of a pixel (OpenCV's CORNER_REFINE_SUBPIX), as a start for our own. */
const SUBPIXEL = 1;
/** Two finds of one id nearer than this, as a share of the marker's side, are one marker found twice. */
const SAME = 0.5;

/**
 * The markers of our sheets in a photograph, each found by OpenCV in a smaller picture, its corners then met from its edges in
 * the full one. An id stands in the list twice where two sheets are in view. A marker whose edges are not plainly
 * seen (a thumb on one, a blur wider than its squares) is left out. Frees all that it takes of OpenCV's memory.
 */
export function findMarkers(cv: OpenCv, grey: GreyPixels): readonly SeenMarker[] {
  const times = Math.max(1, Math.round(Math.max(grey.width, grey.height) / SEARCHED_PX));
  const found = searchAt(cv, grey, times);
  // Markers that are small in the picture come out in a larger one only; that takes longer, and few photographs need it.
  const more = times > 1 && found.length < PLENTY ? searchAt(cv, grey, Math.floor(times / 2)) : [];
  return [...found, ...more.filter((each) => !found.some((other) => isSame(each, other)))].sort((a, b) => a.id - b.id);
}

function searchAt(cv: OpenCv, grey: GreyPixels, times: number): readonly SeenMarker[] {
  return detect(cv, shrinkGrey(grey, times)).flatMap(({ id, corners }): SeenMarker[] => {
    if (id >= IDS) return [];
    const guess = corners.map(([x, y]): PhotoPoint => [x * times, y * times]) as unknown as FourCorners;
    const refined = refineMarker(grey, guess);
    return refined ? [{ id, ...refined }] : [];
  });
}

function detect(cv: OpenCv, { width, height, grey }: GreyPixels): readonly { id: number; corners: PhotoPoint[] }[] {
  const image = new cv.Mat(height, width, cv.CV_8UC1);
  image.data.set(grey);
  const parameters = new cv.aruco_DetectorParameters();
  parameters.cornerRefinementMethod = SUBPIXEL;
  const dictionary = cv.getPredefinedDictionary(cv.DICT_APRILTAG_36h11);
  const refine = new cv.aruco_RefineParameters(10, 3, true);
  const detector = new cv.aruco_ArucoDetector(dictionary, parameters, refine);
  const [corners, ids] = [new cv.MatVector(), new cv.Mat()];
  try {
    detector.detectMarkers(image, corners, ids);
    return Array.from({ length: corners.size() }, (_, i) => {
      const four = corners.get(i);
      // OpenCV's [0, 0] is the middle of the first pixel; ours is its corner.
      const at = Array.from(four.data32F, (pixel) => pixel + 0.5);
      four.delete();
      const points = [0, 2, 4, 6].map((k): PhotoPoint => [at[k] as number, at[k + 1] as number]);
      return { id: ids.data32S[i] as number, corners: points };
    });
  } finally {
    for (const each of [ids, corners, detector, refine, dictionary, parameters, image]) each.delete();
  }
}

function isSame(a: SeenMarker, b: SeenMarker): boolean {
  const [p, q, r] = [a.corners[0], b.corners[0], b.corners[1]];
  return a.id === b.id && Math.hypot(p[0] - q[0], p[1] - q[1]) < SAME * Math.hypot(r[0] - q[0], r[1] - q[1]);
}
