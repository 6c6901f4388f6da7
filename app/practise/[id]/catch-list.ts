import type { CatchLine, CatchPoint } from "@/app/_sheet/catch-points";
import { crossings } from "@/app/_sheet/catch-points";
import type { ConstructionLine } from "@/app/_sheet/construction-line";
import { type DrawnPoints, seenPlaces } from "@/app/_sheet/drawn-points";
import { planeOf } from "@/app/_sheet/plane-of";
import type { Plane } from "@/app/_sheet/view";
import type { Exercise } from "@/lib/exercise/exercise";
import type { LengthUnits } from "@/lib/measure/length";
import { printLength } from "@/lib/measure/print-length";
import { project } from "@/lib/perspective/project";
import { centreVanishingPoint, distancePoints } from "@/lib/perspective/vanishing-point";
import { sayPoint } from "@/lib/plan/say-point";
import { ruleTicks } from "@/lib/stage/plaster-line-rule";
import { backWallCorners } from "@/lib/stage/stage";
import type { PracticeRoom } from "./practice-context";

type Pair = readonly [number, number];
const SIDES = ["stage right", "stage left"] as const;

/** Everything on one drawing that the straightedge can be laid to: fixed points, marks, crossings. */
export function catchList(
  room: PracticeRoom,
  plane: Plane,
  drawn: DrawnPoints,
  blue: readonly ConstructionLine[],
): readonly CatchPoint[] {
  const fixed = plane === "picture" ? picturePoints(room.exercise) : planPoints(room.exercise);
  return [...fixed, ...setPoints(room, plane, drawn), ...blueCrossings(room, plane, drawn, blue)];
}

/** Where the blue lines of one drawing cross other lines of it. */
export function blueCrossings(
  room: PracticeRoom,
  plane: Plane,
  drawn: DrawnPoints,
  blue: readonly ConstructionLine[],
): readonly CatchPoint[] {
  const here = blue.filter((line) => line.plane === plane).map(blueLine);
  if (here.length === 0) return [];
  const fixed = plane === "picture" ? pictureLines(room.exercise) : planLines(room.exercise);
  return crossings([...fixed, ...setLines(room, plane, drawn)], here, room.bounds[plane]);
}

/**
 * The points of the set that are on one drawing: those drawn so far where it is the one that is marked. The other drawing is
 * whole from the start.
 */
function setPoints(room: PracticeRoom, plane: Plane, drawn: DrawnPoints): CatchPoint[] {
  if (planeOf(room.exercise) === plane) return drawnNames(room, drawn);
  return plane === "plan" ? cornerPoints(room) : drawnNames(room, seenPlaces(room.points));
}

function setLines(room: PracticeRoom, plane: Plane, drawn: DrawnPoints): CatchLine[] {
  if (planeOf(room.exercise) === plane) return drawnLines(room, drawn);
  return plane === "plan" ? wallLines(room) : drawnLines(room, seenPlaces(room.points));
}

/** A construction line as one that can be crossed: it runs past its ends. */
function blueLine({ from, to, id }: ConstructionLine): CatchLine {
  return { from, to, name: `line ${id}`, endless: true };
}

function picturePoints({ stage, viewer, units }: Exercise): CatchPoint[] {
  const half = stage.opening.width / 2;
  const corner = (at: Pair, name: string): CatchPoint => ({ at, name });
  return [
    corner(centreVanishingPoint(viewer), "the CVP"),
    ...SIDES.flatMap((side, i) => {
      const x = i === 0 ? -half : half;
      return [
        corner([x, 0], `the opening's foot, ${side}`),
        corner([x, stage.opening.height], `the opening's top, ${side}`),
      ];
    }),
    ...backWall({ stage, viewer }).map((at, i) =>
      corner(at, `the back wall's ${i < 2 ? "foot" : "top"}, ${SIDES[i % 2]}`),
    ),
    ...distancePoints(viewer).map((at, i) => corner(at, `the distance point on the ${i === 0 ? "left" : "right"}`)),
    ...ruleTicks(stage.opening.width, units).map((x) => corner([x, 0], tickName(x, units))),
  ];
}

function planPoints({ stage, units }: Exercise): CatchPoint[] {
  const half = stage.opening.width / 2;
  return [
    ...SIDES.map(
      (side, i): CatchPoint => ({ at: [i === 0 ? -half : half, stage.depth], name: `the back wall, ${side}` }),
    ),
    ...ruleTicks(stage.opening.width, units).map((x): CatchPoint => ({ at: [x, 0], name: tickName(x, units) })),
  ];
}

function tickName(x: number, units: LengthUnits): string {
  return x === 0 ? "the rule's zero" : `the rule's ${printLength(Math.abs(x), units)} ${x < 0 ? SIDES[0] : SIDES[1]}`;
}

function drawnNames({ points }: PracticeRoom, drawn: DrawnPoints): CatchPoint[] {
  return [...drawn].flatMap(([name, at]) => {
    const point = points.get(name);
    return point ? [{ at, name: sayPoint(point) }] : [];
  });
}

function cornerPoints({ exercise }: PracticeRoom): CatchPoint[] {
  return [...exercise.plan.corners].map(([name, at]) => ({ at: [at[0], at[1]], name: `corner ${name}` }));
}

function backWall({ stage, viewer }: Pick<Exercise, "stage" | "viewer">): Pair[] {
  return backWallCorners(stage).flatMap((corner): Pair[] => {
    const seen = project(viewer, corner);
    return seen.seen ? [[seen.at[0], seen.at[1]]] : [];
  });
}

function pictureLines({ stage, viewer }: Exercise): CatchLine[] {
  const half = stage.opening.width / 2;
  const h = viewer.eyeHeight;
  const line = (from: Pair, to: Pair, name: string): CatchLine => ({ from, to, name, endless: false });
  const [footRight, footLeft] = backWall({ stage, viewer });
  const floor =
    footRight && footLeft
      ? [
          line(footRight, footLeft, "the back wall's foot"),
          line([-half, 0], footRight, "the floor's edge, stage right"),
          line([half, 0], footLeft, "the floor's edge, stage left"),
        ]
      : [];
  return [
    line([-half, h], [half, h], "the horizon"),
    line([-half, 0], [half, 0], "the plaster line"),
    line([0, 0], [0, stage.opening.height], "the centre line"),
    line([-half, 0], [-half, stage.opening.height], "the opening's edge, stage right"),
    line([half, 0], [half, stage.opening.height], "the opening's edge, stage left"),
    ...floor,
  ];
}

function drawnLines({ edges }: PracticeRoom, drawn: DrawnPoints): CatchLine[] {
  return edges.flatMap(({ from, to, element }) => {
    const [a, b] = [drawn.get(from), drawn.get(to)];
    return a && b ? [{ from: a, to: b, name: `a line of ${element}`, endless: false }] : [];
  });
}

function planLines({ stage }: Exercise): CatchLine[] {
  const half = stage.opening.width / 2;
  const line = (from: Pair, to: Pair, name: string): CatchLine => ({ from, to, name, endless: false });
  return [
    line([-half, 0], [half, 0], "the plaster line"),
    line([0, 0], [0, stage.depth], "the centre line"),
    line([-half, stage.depth], [half, stage.depth], "the back wall"),
  ];
}

function wallLines({ exercise }: PracticeRoom): CatchLine[] {
  const { corners, walls } = exercise.plan;
  return walls.flatMap((wall) => {
    const [from, to] = [corners.get(wall.from), corners.get(wall.to)];
    return from && to
      ? [{ from: [from[0], from[1]], to: [to[0], to[1]], name: `wall ${wall.id}`, endless: false }]
      : [];
  });
}
