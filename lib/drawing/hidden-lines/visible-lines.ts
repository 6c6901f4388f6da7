import Flatbush from "flatbush";
import { type Interval, unite, without } from "../../geometry/intervals";
import { between } from "../../geometry/vector";
import type { Face } from "../../plan/solids/solid";
import type { PicturePoint, StagePoint } from "../../stage/frame";
import type { Viewer } from "../../stage/viewer";
import { hiddenStretches } from "./hidden-stretches";
import { liesBehind } from "./lies-behind";
import { type PictureFace, pictureFace } from "./picture-face";
import { type PictureLine, pictureLine } from "./picture-line";
import { ON_LINE_M, SPECK_M } from "./touch";

/** A line over the stage, metres, and the faces it bounds or lies on, by their places in the scene's list of faces. */
export type SceneLine = {
  readonly id: string;
  readonly from: StagePoint;
  readonly to: StagePoint;
  readonly faces: readonly number[];
};

/** A piece of a line that the eye sees, picture metres. */
export type VisibleLine = {
  /** The line's place in the scene's list of lines. */
  readonly line: number;
  readonly from: PicturePoint;
  readonly to: PicturePoint;
  /** Where the piece begins and ends along the line in the picture: 0 where the line begins, or comes from behind the eye, 1 where it ends. */
  readonly start: number;
  readonly end: number;
};

/**
 * What the eye sees of lines among opaque flat faces, seen from both sides: exact, by cutting each line where an edge of a face
 * that is before it crosses it in the picture, and where it goes through a face. A face never hides the lines that name it. A
 * line on a face that it does not name lies on top of it, unless all that it bounds is behind that face. What is nearer to
 * the eye than `NEAR_M`, and lines that show as a point, are left out, and so is what has a number in it that is not finite.
 * The pieces come in the order of the lines, and along each from its start to its end.
 *
 * The faces' boxes in the picture are kept in a tree, so the time grows with n log n, and with what stands behind what.
 */
export function visibleLines(
  { faces, lines }: { readonly faces: readonly Face[]; readonly lines: readonly SceneLine[] },
  viewer: Viewer,
): readonly VisibleLine[] {
  const covers = faces.flatMap((face, i) => pictureFace(viewer, face, i) ?? []).sort((a, b) => a.nearest - b.nearest);
  const find = boxTree(covers);
  return lines.flatMap((line, i) => {
    const drawn = pictureLine(viewer, line);
    if (!drawn) return [];
    const hidden: Interval[] = [];
    for (const cover of find(drawn)) {
      if (line.faces.includes(cover.face)) continue;
      const stretches = hiddenStretches(drawn, cover, () => liesBehind(line.faces, faces, cover.plane));
      hidden.push(...stretches);
      if (stretches.some(([from, to]) => from <= 0 && to >= 1)) break;
    }
    return visiblePieces(drawn, hidden).map(([start, end]) => ({
      line: i,
      from: between(drawn.start, drawn.end, start),
      to: between(drawn.start, drawn.end, end),
      start,
      end,
    }));
  });
}

/** What is left of the line, without specks and without gaps that are specks. */
function visiblePieces({ length }: PictureLine, hidden: readonly Interval[]): readonly Interval[] {
  const isLong = ([from, to]: Interval) => (to - from) * length > SPECK_M;
  return without([0, 1], unite(hidden).filter(isLong)).filter(isLong);
}

/** Finds the faces, the nearest first, whose box meets a line's in the picture and that begin nearer than the line ends. */
function boxTree(covers: readonly PictureFace[]): (line: PictureLine) => readonly PictureFace[] {
  if (covers.length === 0) return () => [];
  const tree = new Flatbush(covers.length);
  for (const { box } of covers) tree.add(...box);
  tree.finish();
  return ({ start, end, depths }) => {
    const farthest = Math.max(...depths);
    return tree
      .search(
        Math.min(start[0], end[0]) - ON_LINE_M,
        Math.min(start[1], end[1]) - ON_LINE_M,
        Math.max(start[0], end[0]) + ON_LINE_M,
        Math.max(start[1], end[1]) + ON_LINE_M,
        (i) => (covers[i] as PictureFace).nearest < farthest,
      )
      .sort((a, b) => a - b)
      .map((i) => covers[i] as PictureFace);
  };
}
