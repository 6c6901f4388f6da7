import { type Interval, intersect } from "../../geometry/intervals";
import { heightOver } from "../../geometry/plane";
import { crossingStretches } from "./crossing-stretches";
import type { PictureFace } from "./picture-face";
import type { PictureLine } from "./picture-line";
import { ON_LINE_M, TOUCH_M } from "./touch";

/**
 * Where a face hides a line that it does not bound, in parameters along the line in the picture, 0 at its start and 1 at its
 * end: where the line is behind the face's plane and, in the picture, within its outline and outside its holes. A line behind
 * that runs, in the picture, exactly along an edge of the face is hidden too: the edge itself is drawn there, and the seam of
 * two faces lets nothing through.
 *
 * A line on the face, no end of it more than `TOUCH_M` behind, is not hidden by it: it lies on top. Unless `isBehind` says
 * that what it bounds is behind the face: then it is hidden inside the face, and stays where it is the face's edge as well.
 */
export function hiddenStretches(line: PictureLine, face: PictureFace, isBehind: () => boolean): readonly Interval[] {
  const a = heightOver(face.plane, line.from);
  const b = heightOver(face.plane, line.to);
  const inFront = a >= -TOUCH_M && b >= -TOUCH_M;
  const touches = inFront && a <= TOUCH_M && b <= TOUCH_M;
  if (inFront && !touches) return [];
  const covered = coveredStretches(line, face);
  if (!covered) return [];
  if (touches) return covered.strict.length > 0 && isBehind() ? covered.strict : [];
  return covered.closed.length === 0 ? [] : intersect([behindPlane(line, a, b)], covered.closed);
}

/** Where the line is covered by the face in the picture, no matter which is nearer; null when it passes by on one side. */
function coveredStretches({ start, direction, length }: PictureLine, { corners, ends }: PictureFace) {
  const [x, z] = start;
  const [u, v] = direction;
  const count = corners.length / 2;
  const beside = new Float64Array(count);
  let [left, right] = [false, false];
  for (let i = 0; i < count; i++) {
    const gap = ((corners[2 * i + 1] as number) - z) * u - ((corners[2 * i] as number) - x) * v;
    beside[i] = gap;
    if (gap >= -ON_LINE_M) left = true;
    if (gap <= ON_LINE_M) right = true;
  }
  if (!(left && right)) return null;
  const along = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    along[i] = (((corners[2 * i] as number) - x) * u + ((corners[2 * i + 1] as number) - z) * v) / length;
  }
  return crossingStretches({ along, beside, ends }, ON_LINE_M);
}

/**
 * The stretch behind the plane, given how high over it each end is, one of them below it. Over the stage the line meets the
 * plane at the share s = a / (a - b) of its length; a share s over the stage is s d2 / ((1 - s) d1 + s d2) of it in the picture,
 * d1 and d2 the depths of its ends (a weighted mean, each end drawn in by its own depth).
 */
function behindPlane({ depths: [near, far] }: PictureLine, a: number, b: number): Interval {
  if (a <= 0 && b <= 0) return [0, 1];
  const meets = (a * far) / (a * far - b * near);
  return a < b ? [0, meets] : [meets, 1];
}
