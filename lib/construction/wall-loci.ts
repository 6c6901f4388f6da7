import { printLength } from "../measure/print-length";
import { wallVanishing } from "../perspective/wall-vanishing";
import type { PicturePoint, StagePoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import type { Sheet } from "./board";
import { type Locus, layOff, NOTHING_M, upright } from "./locus";
import type { PlacedPoint, Target, TargetWall } from "./target";

/** Lines through a target that lies on a wall: to the wall's vanishing and measuring points, along drawn edges, by its diagonals. */
export function wallLoci(board: Sheet, target: Target): readonly Locus[] {
  return target.walls.flatMap((wall) => [
    ...drawnLineLoci(board, target, wall),
    ...vanishingLoci(board, target, wall),
    ...middleLoci(target, wall),
  ]);
}

/** A point of the wall's plane: along the wall from its `from` corner, and up. */
function inWall({ line }: TargetWall, [x, y, z]: StagePoint): readonly [number, number] {
  return [(x - line.from[0]) * line.along[0] + (y - line.from[1]) * line.along[1], z];
}

/** Edges and diagonals of the wall between two points on the sheet, where the target lies on them. */
function drawnLineLoci(board: Sheet, target: Target, wall: TargetWall): readonly Locus[] {
  const here = inWall(wall, target.at);
  const usable = wall.placed.filter(({ name }) => name !== target.name);
  return usable.flatMap((a, i) =>
    usable.slice(i + 1).flatMap((b) => {
      if (!collinear(inWall(wall, a.stage), inWall(wall, b.stage), here)) return [];
      const level = Math.abs(a.stage[2] - b.stage[2]) < NOTHING_M;
      const diagonal = !level && !(stands(board, wall, a) && stands(board, wall, b));
      return [
        {
          method: diagonal ? "wall diagonal" : "along the drawn wall",
          rank: diagonal ? 4 : 1,
          draw: (steps) =>
            steps.line({
              through: [a.at, b.at],
              toward: diagonal ? "wall diagonal" : `wall ${wall.wall.id}`,
              say: `Draw the line from ${a.say} to ${b.say}: the point lies on it.`,
            }),
        } satisfies Locus,
      ];
    }),
  );
}

/** Whether a point of a wall lies on its foot. */
function stands({ stage }: Sheet, { wall }: TargetWall, { stage: [, y, z] }: PlacedPoint): boolean {
  return Math.abs(z - wall.base - floorHeight(stage, y)) < NOTHING_M;
}

function collinear(
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
  [px, py]: readonly [number, number],
): boolean {
  const span = Math.hypot(bx - ax, by - ay);
  if (span < NOTHING_M || Math.hypot(px - ax, py - ay) < NOTHING_M || Math.hypot(px - bx, py - by) < NOTHING_M)
    return false;
  if (Math.abs(bx - ax) < NOTHING_M) return false; // an upright, which has a locus of its own
  return Math.abs((bx - ax) * (py - ay) - (by - ay) * (px - ax)) < NOTHING_M * span;
}

function vanishingLoci(board: Sheet, target: Target, wall: TargetWall): readonly Locus[] {
  const { vanishingPoint, measuringPoint } = wallVanishing(board.plan, wall.wall, board.stage, board.viewer);
  if (!vanishingPoint || !measuringPoint) return [];
  const [x, y, z] = target.at;
  const { line } = wall;
  const id = wall.wall.id;
  const square = Math.abs(vanishingPoint[0] - board.viewer.offset) < NOTHING_M;
  const toward = square ? "centre vanishing point" : `vanishing point of ${id}`;
  const trace = x - (line.along[0] / line.along[1]) * y;
  const length = y / Math.abs(line.along[1]);
  const onward = vanishingPoint[0] >= board.viewer.offset ? 1 : -1;
  const say = (from: string, why: string) =>
    square
      ? `Draw from ${from} to the CVP: ${id} stands square to the plaster line.`
      : `Draw from ${from} to the vanishing point of ${id}: ${why}.`;
  const toVanishing = (start: PicturePoint, words: string) => ({
    through: [start, vanishingPoint] as const,
    toward,
    say: words,
  });
  const placed = wall.placed
    .filter(
      ({ name, stage }) =>
        name !== target.name && Math.abs(stage[2] - z) < NOTHING_M && distanceOf(stage, target.at) > NOTHING_M,
    )
    .map(
      (point): Locus => ({
        method: z > NOTHING_M ? "top edge to the wall's vanishing point" : "wall's vanishing point",
        rank: 1,
        draw: (steps) => steps.line(toVanishing(point.at, say(point.say, "all its level lines go there"))),
      }),
    );
  const fromTrace: Locus = {
    method: "wall's vanishing point",
    rank: 6,
    draw: (steps) => {
      const start = layOff(board, steps, trace, z);
      return steps.line(toVanishing(start.at, say(start.say, "run on, the wall reaches the plaster line there")));
    },
  };
  const measured: Locus = {
    method: "measuring point",
    rank: 7,
    draw: (steps) => {
      const base = layOff(board, steps, trace, 0);
      const start = layOff(board, steps, trace + onward * length, z, base.foot);
      const lies = `lies ${printLength(Math.abs(length), board.units)} ${onward * length > 0 ? "right" : "left"} of ${base.say}`;
      return steps.line({
        through: [start.at, measuringPoint],
        toward: `measuring point of ${id}`,
        say: `Draw from ${start.say} to the measuring point of ${id}: it ${lies}, where the wall reaches the plaster line, and the point lies as far along the wall.`,
      });
    },
  };
  return [...placed, fromTrace, measured];
}

function distanceOf(a: StagePoint, b: StagePoint): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** The upright through the crossing of a drawn wall's diagonals stands in its middle. */
function middleLoci(target: Target, wall: TargetWall): readonly Locus[] {
  const found = wall.corners.map((name) => wall.placed.find((point) => point.name === name));
  const [fromFoot, fromTop, toFoot, toTop] = found;
  if (!fromFoot || !fromTop || !toFoot || !toTop) return [];
  const heights = fromTop.stage[2] - fromFoot.stage[2] - (toTop.stage[2] - toFoot.stage[2]);
  const middle = Math.abs(inWall(wall, target.at)[0] - wall.line.length / 2);
  if (Math.abs(heights) > NOTHING_M || middle > NOTHING_M) return [];
  return [
    {
      method: "wall diagonals",
      rank: 2,
      draw: (steps) => {
        const diagonal = (a: PlacedPoint, b: PlacedPoint) =>
          steps.line({
            through: [a.at, b.at],
            toward: "wall diagonal",
            say: `Draw the wall's diagonal from ${a.say} to ${b.say}.`,
          });
        const crossing = steps.meet(diagonal(fromFoot, toTop), diagonal(toFoot, fromTop), "in the middle of the wall");
        return crossing === null
          ? null
          : steps.line({
              through: upright(steps.at(crossing)),
              toward: "upright",
              say: `Draw upright through crossing ${crossing}: the wall's middle.`,
            });
      },
    },
  ];
}
