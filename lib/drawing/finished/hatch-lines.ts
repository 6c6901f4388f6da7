import type { Face } from "../../plan/solids/solid";
import { eyePoint, type Viewer } from "../../stage/viewer";
import type { PictureFace } from "../hidden-lines/picture-face";
import { type HatchLine, hatchFamily } from "./hatch-family";
import { type HatchPaper, hatchRows, onRow } from "./hatch-rows";
import { facePoint } from "./look-through";

/**
 * The hatching of the faces that are turned from the light, so spaced that it is even on the paper at the drawing's scale however
 * far a face lies: each line is laid out in the picture and carried back to the face it shows.
 */
export function hatchLines(
  faces: readonly Face[],
  seen: readonly PictureFace[],
  backings: ReadonlySet<string>,
  viewer: Viewer,
  paper: HatchPaper,
): readonly HatchLine[] {
  const { mm } = paper;
  const eye = eyePoint(viewer);
  return seen.flatMap((cover) => {
    const face = faces[cover.face] as Face;
    const family = hatchFamily(face, cover, mm, backings.has(face.element));
    if (!family) return [];
    return [...hatchRows(cover, family, paper)].flatMap(([row, stretches]) =>
      stretches.map(([from, to], i): HatchLine => {
        const point = (along: number) => facePoint(viewer, eye, cover, onRow(family, row, along, mm));
        return {
          id: `${face.id}.hatch.${row}.${i + 1}`,
          family,
          row,
          from: point(from),
          to: point(to),
          faces: [cover.face],
        };
      }),
    );
  });
}
