import { dot3 } from "../../geometry/vector3";
import type { Face, FaceKind } from "../../plan/solids/solid";
import type { PictureFace } from "../hidden-lines/picture-face";
import { TO_LIGHT } from "./light";

/**
 * A family of parallel lines: how they lean in the picture, radians from level, and how far apart they are, millimetres of paper.
 * Its rows are counted from the picture's origin, so that the same family goes on from face to face.
 */
export type HatchFamily = { readonly name: string; readonly lean: number; readonly spacingMm: number };

/** A line of hatching over the stage, and which row of which family it is part of. */
export type HatchLine = {
  readonly id: string;
  readonly family: HatchFamily;
  readonly row: number;
  readonly from: readonly [x: number, y: number, z: number];
  readonly to: readonly [x: number, y: number, z: number];
  readonly faces: readonly number[];
};

const DEG = Math.PI / 180;
const HALF_TONE: HatchFamily = { name: "half", lean: 58 * DEG, spacingMm: 2 };
const SHADE: HatchFamily = { name: "shade", lean: 58 * DEG, spacingMm: 1 };
const ROUND: HatchFamily = { name: "round", lean: 90 * DEG, spacingMm: 0.7 };
/** What is seen through an opening lies in the dark behind the set. */
const BEYOND: HatchFamily = { name: "beyond", lean: 122 * DEG, spacingMm: 1.3 };
/** Shadows lie level on the floor. */
export const CAST: HatchFamily = { name: "cast", lean: 0, spacingMm: 0.9 };

/** A face is turned from the light when less than this share of its normal's length points to it, and far from it below the second. */
const TURNED = 0.1;
/** Walls are large: only those well turned from it are toned. */
const TURNED_WALL = -0.05;
const FAR_TURNED = -0.35;
/** Upright sides of platforms and steps are toned unless the light falls square on them, so that tops stand out. */
const TURNED_LEVELS = 0.32;
/** Faces that show narrower than this in the mean are too small to hatch, millimetres of paper. */
const NARROWEST_MM = 1.3;

/** How a face is hatched; null where it is left white. `mm` is a millimetre of paper in the picture's metres. */
export function hatchFamily(face: Face, seen: PictureFace, mm: number, isBacking: boolean): HatchFamily | null {
  if (face.kind === "proscenium" || face.kind === "figure") return null;
  if (face.kind === "cloth") return isBacking ? BEYOND : null;
  const light = dot3(seen.plane.normal, TO_LIGHT);
  if (light >= turnedBelow(face.kind)) return null;
  if (face.kind === "column") return ROUND;
  if (meanWidth(seen) < NARROWEST_MM * mm) return null;
  if (face.kind === "wall") return HALF_TONE;
  return face.kind === "reveal" || light < FAR_TURNED ? SHADE : HALF_TONE;
}

function turnedBelow(kind: FaceKind): number {
  if (kind === "platform" || kind === "stair") return TURNED_LEVELS;
  return kind === "wall" ? TURNED_WALL : TURNED;
}

/** Twice the area over half the outline's length: the width of a long strip. */
function meanWidth({ corners, ends }: PictureFace): number {
  let [area, length, start] = [0, 0, 0];
  for (const end of ends) {
    for (let i = start, last = end - 1; i < end; last = i++) {
      const [ax, az] = [corners[2 * last] as number, corners[2 * last + 1] as number];
      const [bx, bz] = [corners[2 * i] as number, corners[2 * i + 1] as number];
      area += (ax * bz - az * bx) / 2;
      length += Math.hypot(bx - ax, bz - az);
    }
    start = end;
  }
  return length > 0 ? (2 * Math.abs(area)) / length : 0;
}
