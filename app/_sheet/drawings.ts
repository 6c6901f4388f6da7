import type { Place } from "@/app/_parts/kept-work/attempt";
import { letterName } from "@/lib/drawing/clear-lettering";
import type { DisplayItem, DisplayList, DrawingPoint, Stroke } from "@/lib/drawing/display-list";
import { drawEdges, type EdgeStyle, GIVEN_LINES, OWN_LINES } from "@/lib/drawing/draw-edges";
import { drawFigure } from "@/lib/drawing/draw-figure";
import { figurePlace } from "@/lib/drawing/figure-place";
import { makeStroke } from "@/lib/drawing/make-stroke";
import { shortName } from "@/lib/plan/say-point";
import type { PicturePoint } from "@/lib/stage/frame";
import type { DrawnPoints } from "./drawn-points";
import { planeOf } from "./plane-of";
import type { SetRoom } from "./set-room";

export type Room = Pick<SetRoom, "exercise" | "points" | "edges">;

/** Arms of the small cross at a point on the sheet, millimetres. */
const CROSS_MM = 1.1;
/** A line shorter than this is a point, metres. */
const NO_LENGTH_M = 1e-6;

/** The set as far as it is drawn: the given lines, then those the student's marks have made, with the corners' names. */
export function drawSetSoFar(room: Room, drawn: DrawnPoints, under: DisplayList): DisplayList {
  const { exercise } = room;
  const given = new Map([...drawn].filter(([name]) => exercise.task.given.includes(name)));
  const givenLines = edgesIn(room, given, GIVEN_LINES);
  const known = new Set(givenLines.map((stroke) => bare(stroke.id)));
  const own = edgesIn(room, drawn, OWN_LINES).filter((stroke) => !known.has(bare(stroke.id)));
  const items: DisplayItem[] = [...givenLines, ...own, ...crosses(room, drawn)];
  const sheet = { items: [...under, ...items], scaleRatio: exercise.scaleRatio };
  const names = [...drawn].flatMap(([name, at]): DisplayItem[] => {
    const point = room.points.get(name);
    if (point?.group !== "corner" || point.role !== "foot") return [];
    return [letterName(`name.${name}`, at, [at[0] < 0 ? -1 : 1, -1], shortName(point), sheet)];
  });
  return [...items, ...names];
}

/** The lines that one more point makes, in a style: what the drawing has with it and lacks without it. */
export function drawLinesOf(
  room: Room,
  point: string,
  at: Place,
  drawn: DrawnPoints,
  style: EdgeStyle,
): readonly Stroke[] {
  const without = new Set(edgesIn(room, drawn, style).map(({ id }) => id));
  return edgesIn(room, new Map([...drawn, [point, at]]), style).filter(({ id }) => !without.has(id));
}

/** A standing person on the plaster line, where everything is true size, toward stage right. */
export function drawFigureForScale(exercise: Room["exercise"]): DisplayList {
  return drawFigure(exercise, figurePlace(exercise.stage), { id: "figure" });
}

/** The lines between places of the drawing that the student marks. */
export function edgesIn({ exercise, points, edges }: Room, places: DrawnPoints, style: EdgeStyle): readonly Stroke[] {
  // Either drawing has its places in metres, across and up. On the plan an opening is a gap, and an upright a point.
  const across = places as ReadonlyMap<string, PicturePoint>;
  if (planeOf(exercise) === "picture") return drawEdges(edges, across, style, { plan: exercise.plan, points });
  return drawEdges(edges, across, style).filter(
    ({ points: [from, to] }) => from && to && apart(from, to) > NO_LENGTH_M,
  );
}

/** A small cross at each point on the sheet that no line runs to. */
export function crosses({ exercise, edges }: Room, drawn: DrawnPoints): Stroke[] {
  const arm = (CROSS_MM * exercise.scaleRatio) / 1000;
  const joined = new Set(edges.flatMap(({ from, to }) => (drawn.has(from) && drawn.has(to) ? [from, to] : [])));
  const loose = [...drawn].filter(([name]) => !joined.has(name));
  return loose.flatMap(([name, [x, y]]) => [
    makeStroke(`cross.${name}.across`, [
      [x - arm, y],
      [x + arm, y],
    ]),
    makeStroke(`cross.${name}.up`, [
      [x, y - arm],
      [x, y + arm],
    ]),
  ]);
}

function apart(a: DrawingPoint, b: DrawingPoint): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

function bare(id: string): string {
  return id.slice(id.indexOf(".") + 1);
}
