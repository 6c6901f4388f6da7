import { crosses, type Room } from "@/app/_sheet/drawings";
import { seenPlaces } from "@/app/_sheet/drawn-points";
import { letterName } from "@/lib/drawing/clear-lettering";
import type { DisplayItem, DisplayList, DrawingPoint, Stroke } from "@/lib/drawing/display-list";
import { drawEdges, GIVEN_LINES } from "@/lib/drawing/draw-edges";
import { makeStroke } from "@/lib/drawing/make-stroke";
import { apronDrop } from "@/lib/exercise/inside-frame";
import { shortName } from "@/lib/plan/say-point";
import type { PicturePoint } from "@/lib/stage/frame";

type Box = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

/** Half the width of a lit point where the pane shows the paper at its smallest legible size, millimetres. */
const LIT_MM = 2.6;
/** Rows below the plaster line, closer than letters are high, as far down as the rule's figures hang, millimetres. */
const RULE_ROWS_MM = [1, 3, 5, 7, 9, 11, 13] as const;

/** The whole set at its true places, drawn by hand as far as the opening shows it, its corners named: to be read back. */
export function drawTruePicture({ exercise, points, edges }: Room, under: DisplayList): DisplayList {
  const { stage, viewer, plan, scaleRatio } = exercise;
  const half = stage.opening.width / 2;
  const opening: Box = { left: -half, right: half, bottom: apronDrop(stage, viewer), top: stage.opening.height };
  const places = seenPlaces(points) as ReadonlyMap<string, PicturePoint>;
  const lines = [
    ...drawEdges(edges, places, GIVEN_LINES, { plan, points }),
    ...crosses({ exercise, points, edges }, places),
  ].flatMap((stroke) => cutTo(stroke, opening));
  const asked = exercise.task.marks.flatMap((name): PicturePoint[] => {
    const at = points.get(name)?.picture;
    return at ? [at] : [];
  });
  const kept = [...asked.map((at, i) => litRoom(`lit.${i}`, at, scaleRatio)), ...ruleRoom(half, scaleRatio)];
  const names: DisplayItem[] = [];
  for (const point of points.values()) {
    const at = point.picture;
    if (point.group !== "corner" || point.role !== "foot" || !at || !isInside(at, opening)) continue;
    const drawn = { items: [...under, ...lines, ...kept, ...names], scaleRatio };
    names.push(letterName(`name.${point.name}`, at, [at[0] < 0 ? -1 : 1, -1], shortName(point), drawn));
  }
  return [...lines, ...names];
}

/** The room that a lit point takes, for names to keep clear of; never drawn. */
function litRoom(id: string, [x, y]: DrawingPoint, scaleRatio: number): Stroke {
  const r = (LIT_MM * scaleRatio) / 1000;
  return makeStroke(
    id,
    [
      [x - r, y],
      [x, y + r],
      [x + r, y],
      [x, y - r],
    ],
    { closed: true },
  );
}

/** The room of the rule's figures, where a corner's name would be taken for one of them; never drawn. */
function ruleRoom(half: number, scaleRatio: number): Stroke[] {
  return RULE_ROWS_MM.map((down) => {
    const z = (-down * scaleRatio) / 1000;
    return makeStroke(`rule.room.${down}`, [
      [-half, z],
      [half, z],
    ]);
  });
}

/** The pieces of a stroke inside a box. A stroke that needs no cutting stays as it is. */
function cutTo(stroke: Stroke, box: Box): readonly Stroke[] {
  if (stroke.points.every((point) => isInside(point, box))) return [stroke];
  const pieces: DrawingPoint[][] = [];
  stroke.points.slice(1).forEach((to, i) => {
    const piece = cutSegment(stroke.points[i] as DrawingPoint, to, box);
    if (!piece) return;
    const last = pieces.at(-1)?.at(-1);
    if (last && last[0] === piece[0][0] && last[1] === piece[0][1]) pieces.at(-1)?.push(piece[1]);
    else pieces.push([...piece]);
  });
  return pieces.map((points, i) => ({ ...stroke, id: i === 0 ? stroke.id : `${stroke.id}.${i + 1}`, points }));
}

/** A segment's stretch inside a box, by the usual parametric clipping; null where there is none. */
function cutSegment(a: DrawingPoint, b: DrawingPoint, box: Box): readonly [DrawingPoint, DrawingPoint] | null {
  const run = [b[0] - a[0], b[1] - a[1]] as const;
  let [first, last] = [0, 1];
  for (const [start, along, least, most] of [
    [a[0], run[0], box.left, box.right],
    [a[1], run[1], box.bottom, box.top],
  ] as const) {
    if (along === 0) {
      if (start < least || start > most) return null;
      continue;
    }
    const [one, other] = [(least - start) / along, (most - start) / along];
    first = Math.max(first, Math.min(one, other));
    last = Math.min(last, Math.max(one, other));
  }
  if (first >= last) return null;
  const at = (share: number): DrawingPoint =>
    share === 0 ? a : share === 1 ? b : [a[0] + run[0] * share, a[1] + run[1] * share];
  return [at(first), at(last)];
}

function isInside([x, y]: DrawingPoint, { left, right, bottom, top }: Box): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}
