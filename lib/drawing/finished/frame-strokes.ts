import { project } from "../../perspective/project";
import type { Face } from "../../plan/solids/solid";
import type { PicturePoint, StagePoint } from "../../stage/frame";
import type { Stage } from "../../stage/stage";
import type { Viewer } from "../../stage/viewer";
import type { Stroke } from "../display-list";
import { makeStroke } from "../make-stroke";
import { drawProscenium } from "../picture-parts/draw-proscenium";

/**
 * The proscenium as drawn on the sheet, the plaster line left to the stage's own lines where an apron goes on before it; and over
 * it a blank for each face that stands before it on the apron, for that face's own lines to be drawn on.
 */
export function frameStrokes(
  faces: readonly Face[],
  stage: Stage,
  viewer: Viewer,
  { hand, idPrefix }: { readonly hand: boolean; readonly idPrefix: string },
): readonly Stroke[] {
  const frame = drawProscenium(stage).flatMap((item): Stroke[] => {
    if (item.kind !== "stroke") return [];
    const isOpening = item.id === "picture.proscenium.opening";
    const open = isOpening && stage.apron > 0;
    return [{ ...item, id: `${idPrefix}.${item.id}`, hand: item.hand && hand, closed: item.closed && !open }];
  });
  const blanks = faces.flatMap((face): Stroke[] => {
    const ring = face.holes.length > 0 ? [] : beforePlane(face.outline);
    const seen = ring.map((point) => project(viewer, point));
    const points = seen.flatMap((p): PicturePoint[] => (p.seen ? [p.at] : []));
    return points.length < 3 || points.length < ring.length
      ? []
      : [makeStroke(`${idPrefix}.blank.${face.id}`, points, { closed: true, fill: "paper", fillOnly: true })];
  });
  return [...frame, ...blanks];
}

/** What of a ring lies before the plaster line; nothing when none of it does. */
function beforePlane(ring: readonly StagePoint[]): readonly StagePoint[] {
  if (!ring.some(([, y]) => y < 0)) return [];
  return ring.flatMap((point, i) => {
    const before = ring.at(i - 1) as StagePoint;
    const [a, b] = [before[1], point[1]];
    const share = a / (a - b);
    const cut: StagePoint[] =
      a < 0 === b < 0
        ? []
        : [[before[0] + (point[0] - before[0]) * share, 0, before[2] + (point[2] - before[2]) * share]];
    return b < 0 ? [...cut, point] : cut;
  });
}
