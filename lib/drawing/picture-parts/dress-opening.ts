import { archHead } from "../../plan/arch-head";
import type { NamedPoints } from "../../plan/named-point";
import type { Opening, Wall } from "../../plan/plan";
import type { PicturePoint } from "../../stage/frame";
import type { DrawingPoint } from "../display-list";
import { mapQuad, type Quad } from "../map-quad";

/** A line of an opening as it is drawn in the picture. `part` tells it from the opening's other lines. */
export type OpeningLine = { readonly part: string; readonly points: readonly DrawingPoint[] };

/** Lines to draw for an opening, and the names of edges (from~to) they take the place of. */
export type DressedOpening = { readonly lines: readonly OpeningLine[]; readonly instead: readonly string[] };

const NOTHING: DressedOpening = { lines: [], instead: [] };

/**
 * What an opening shows beside its straight edges, once its four corners are on the sheet: an arch's curve in place of its
 * head and the upper part of its jambs, a window's glazing bars. All of it is mapped from the wall's own face to the four
 * corners as drawn, so it is the true perspective of true corners and follows a student's own. Nothing when a corner is
 * missing or the four cannot be a view of a rectangle.
 */
export function dressOpening(
  wall: Pick<Wall, "id">,
  opening: Opening,
  points: NamedPoints,
  places: ReadonlyMap<string, PicturePoint>,
): DressedOpening {
  if (opening.kind !== "arch" && opening.kind !== "window") return NOTHING;
  const name = `${wall.id}.${opening.id}`;
  const corners = ["start.sill", "end.sill", "end.head", "start.head"].map((corner) => `${name}.${corner}`);
  const face = corners.map((corner, i): DrawingPoint | null => {
    const height = points.get(corner)?.at[2];
    return height === undefined ? null : [i === 0 || i === 3 ? 0 : opening.width, height];
  });
  const drawn = corners.map((corner) => places.get(corner) ?? null);
  if (!isQuad(face) || !isQuad(drawn)) return NOTHING;
  const map = mapQuad(face, drawn);
  if (!map) return NOTHING;
  const lines = opening.kind === "arch" ? archLines(face) : barLines(face);
  return {
    lines: lines.map(({ part, points: flat }) => ({ part, points: flat.map(map) })),
    instead:
      opening.kind === "arch"
        ? [
            `${name}.start.sill~${name}.start.head`,
            `${name}.end.sill~${name}.end.head`,
            `${name}.start.head~${name}.end.head`,
          ]
        : [],
  };
}

function isQuad(points: readonly (DrawingPoint | null)[]): points is Quad {
  return points.length === 4 && points.every((point) => point !== null);
}

/** Straight pieces of an arch's curve: turns small enough for the hand style to know it for one. */
const ARCH_PIECES = 24;

/** On the wall's face: jambs up to the springing, and half an ellipse from there to the crown, a half circle where it is high enough. */
function archLines([start, end, crown]: Quad): OpeningLine[] {
  const { spring, curve } = archHead({ width: end[0] }, Math.max(start[1], end[1]), crown[1], ARCH_PIECES);
  const lines: OpeningLine[] = [
    { part: "jamb.start", points: [start, [0, spring]] },
    { part: "jamb.end", points: [end, [end[0], spring]] },
    { part: "arch", points: curve },
  ];
  return lines.filter(({ points: [a, b] }) => a && b && (a[0] !== b[0] || a[1] !== b[1]));
}

/** The cross of glazing bars through the middle of the window's face: in the picture, where its diagonals cross. */
function barLines([start, end, head, startHead]: Quad): OpeningLine[] {
  const half = end[0] / 2;
  const middle = (a: DrawingPoint, b: DrawingPoint) => (a[1] + b[1]) / 2;
  return [
    {
      part: "bar.upright",
      points: [
        [half, middle(start, end)],
        [half, middle(startHead, head)],
      ],
    },
    {
      part: "bar.level",
      points: [
        [0, middle(start, startHead)],
        [end[0], middle(end, head)],
      ],
    },
  ];
}
