import { dot3 } from "../../geometry/vector3";
import type { Face } from "../../plan/solids/solid";
import type { PicturePoint, StagePoint } from "../../stage/frame";
import { eyePoint, type Viewer } from "../../stage/viewer";
import type { PictureFace } from "../hidden-lines/picture-face";
import { TO_LIGHT } from "./light";
import { facePoint } from "./look-through";

/** A line of pencil hatching on a face: where it lies over the stage, and which line of which family it is part of. */
export type HatchLine = {
  readonly id: string;
  readonly family: string;
  readonly from: StagePoint;
  readonly to: StagePoint;
  readonly faces: readonly number[];
};

/** A family of parallel lines: how they lean in the picture, radians from level, and how far apart they are, millimetres of paper. */
type Family = { readonly name: string; readonly lean: number; readonly spacingMm: number };

const DEG = Math.PI / 180;

const HALF_TONE: Family = { name: "half", lean: 58 * DEG, spacingMm: 2.1 };
const SHADE: Family = { name: "shade", lean: 58 * DEG, spacingMm: 1.05 };
const ROUND: Family = { name: "round", lean: 90 * DEG, spacingMm: 0.9 };

/** Faces whose normal has less than this share of the light's direction are turned from it; those below the second far from it. */
const TURNED = 0.1;
const FAR_TURNED = -0.62;
/** Faces that show narrower than this in the mean are too small to hatch, millimetres of paper. */
const NARROWEST_MM = 1.3;

/**
 * The hatching of the faces that are turned from the light, so spaced that it is even on the paper at the drawing's scale however
 * far a face lies: each line is laid out in the picture and carried back to the face it shows.
 */
export function hatchLines(
  faces: readonly Face[],
  seen: readonly PictureFace[],
  viewer: Viewer,
  mm: number,
): readonly HatchLine[] {
  const eye = eyePoint(viewer);
  return seen.flatMap((cover) => {
    const face = faces[cover.face] as Face;
    const family = familyOf(face, cover, mm);
    if (!family) return [];
    const spacing = family.spacingMm * mm;
    const [cos, sin] = [Math.cos(family.lean), Math.sin(family.lean)];
    return stretchesAcross(cover, [cos, sin], spacing).map(({ row, from, to, part }): HatchLine => {
      const point = (along: number): PicturePoint => {
        const across = row * spacing;
        return [along * cos - across * sin, along * sin + across * cos];
      };
      return {
        id: `${face.id}.hatch.${row}.${part}`,
        family: `${family.name}.${row}`,
        from: facePoint(viewer, eye, cover, point(from)),
        to: facePoint(viewer, eye, cover, point(to)),
        faces: [cover.face],
      };
    });
  });
}

function familyOf(face: Face, cover: PictureFace, mm: number): Family | null {
  if (face.kind === "proscenium" || face.kind === "figure" || face.kind === "cloth") return null;
  const light = dot3(cover.plane.normal, TO_LIGHT);
  if (light >= TURNED) return null;
  if (face.kind === "column") return ROUND;
  if (meanWidth(cover) < NARROWEST_MM * mm) return null;
  if (face.kind === "wall") return HALF_TONE;
  return face.kind === "reveal" || light < FAR_TURNED ? SHADE : HALF_TONE;
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

type Stretch = { readonly row: number; readonly part: number; readonly from: number; readonly to: number };

/** Where the rows of a family, `spacing` apart and counted from the picture's origin, run inside a face in the picture. */
function stretchesAcross(
  { corners, ends }: PictureFace,
  [cos, sin]: readonly [number, number],
  spacing: number,
): readonly Stretch[] {
  const rows = new Map<number, number[]>();
  let start = 0;
  for (const end of ends) {
    for (let i = start, last = end - 1; i < end; last = i++) {
      const [ax, az] = [corners[2 * last] as number, corners[2 * last + 1] as number];
      const [bx, bz] = [corners[2 * i] as number, corners[2 * i + 1] as number];
      const [a, b] = [az * cos - ax * sin, bz * cos - bx * sin];
      const [p, q] = [ax * cos + az * sin, bx * cos + bz * sin];
      // Half open, so that a row through a corner crosses one of its two sides.
      for (let row = Math.ceil(Math.min(a, b) / spacing); row * spacing < Math.max(a, b); row++) {
        const place = p + ((q - p) * (row * spacing - a)) / (b - a);
        rows.set(row, [...(rows.get(row) ?? []), place]);
      }
    }
    start = end;
  }
  return [...rows].flatMap(([row, places]) => {
    places.sort((x, y) => x - y);
    return places.flatMap((to, i): Stretch[] =>
      i % 2 === 1 ? [{ row, part: (i + 1) / 2, from: places[i - 1] as number, to }] : [],
    );
  });
}
