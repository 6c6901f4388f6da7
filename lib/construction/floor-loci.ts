import { printLength } from "../measure/print-length";
import { centreVanishingPoint } from "../perspective/vanishing-point";
import { floorHeight } from "../stage/stage";
import { distancePointPart, type Sheet } from "./board";
import { floorDiagonalLoci } from "./floor-diagonals";
import { type Locus, layOff, level, NOTHING_M } from "./locus";
import type { Catalogue, Target } from "./target";

const PARTS = [
  { part: 1, name: "distance point", rank: 2 },
  { part: 2, name: "half distance point", rank: 3 },
  { part: 3, name: "third distance point", rank: 5 },
  { part: 4, name: "quarter distance point", rank: 4 },
] as const;

/** Lines through a target that need only the frame: its ray, the lines to the distance points, level lines. */
export function floorLoci(board: Sheet, target: Target, { placed }: Catalogue): readonly Locus[] {
  return [
    rayLocus(board, target),
    ...PARTS.flatMap((kind) => (["right", "left"] as const).map((side) => distanceLocus(board, target, kind, side))),
    ...backWallLoci(board, target),
    ...levelLoci(target, placed),
    ...floorDiagonalLoci(board, target),
  ];
}

function rayLocus(board: Sheet, { at: [x, y, z] }: Target): Locus {
  return {
    method: y < 0 ? "ray run forward" : z === 0 ? "ray to the CVP" : "true height",
    rank: 0,
    draw: (steps) => {
      const start = layOff(board, steps, x, z);
      const say =
        y < 0
          ? `Draw from the CVP through ${start.say === "there" ? "that mark" : start.say} and run the ray on forward, out over the apron: every line square to the plaster line lies on such a ray.`
          : `Draw from ${start.say} to the CVP: every line square to the plaster line goes there.`;
      return steps.line({
        through: [start.at, centreVanishingPoint(board.viewer)],
        toward: "centre vanishing point",
        say,
      });
    },
  };
}

/** Lines at 45 degrees run to the distance points; a half, third or quarter of the depth goes with a half, third or quarter of D. */
function distanceLocus(
  board: Sheet,
  { at: [x, y, z] }: Target,
  { part, name, rank }: (typeof PARTS)[number],
  side: "left" | "right",
): Locus {
  const toward = distancePointPart(board.viewer, part, side);
  const shift = side === "right" ? -y / part : y / part;
  return {
    method: name,
    rank,
    draw: (steps) => {
      const base = layOff(board, steps, x, 0);
      const start = layOff(board, steps, x + shift, z, base.foot);
      const depth = printLength(Math.abs(y), board.units);
      const whole = `the depth, ${depth}, was laid off true size, and a line at 45° takes as much across as it takes in depth`;
      const say =
        part === 1
          ? `Draw from ${start.say} to the distance point at the ${side}: ${whole}.`
          : `Draw from ${start.say} to the ${name} at the ${side}: with 1/${part} of the distance goes 1/${part} of the depth, ${printLength(Math.abs(y) / part, board.units)} of ${depth}.`;
      return steps.line({ through: [start.at, toward], toward: name, say });
    },
  };
}

function backWallLoci(board: Sheet, { at: [, y, z] }: Target): readonly Locus[] {
  const { stage } = board;
  if (Math.abs(y - stage.depth) > NOTHING_M) return [];
  const marks = board.landmarks;
  const line = (left: string, method: string, height: number): readonly Locus[] => {
    const i = marks.findIndex(({ say }) => say === left);
    const [a, b] = [marks[i], marks[i + 1]];
    if (!a || !b || Math.abs(z - height) > NOTHING_M) return [];
    return [
      {
        method,
        rank: 1,
        draw: (steps) =>
          steps.line({
            through: [a.at, b.at],
            toward: "back wall",
            say: `Draw the ${method} across: the point lies on it.`,
          }),
      },
    ];
  };
  return [
    ...line("the back wall's foot at the left", "back wall's foot", floorHeight(stage, stage.depth)),
    ...line("the back wall's top at the left", "back wall's top", stage.opening.height),
  ];
}

function levelLoci({ at: [, y, z] }: Target, placed: Catalogue["placed"]): readonly Locus[] {
  return placed
    .filter(({ stage }) => Math.abs(stage[1] - y) < NOTHING_M && Math.abs(stage[2] - z) < NOTHING_M)
    .map((point) => ({
      method: "level across",
      rank: 1,
      draw: (steps) =>
        steps.line({
          through: level(point.at),
          toward: "level",
          say: `Draw level across from ${point.say}, which has the same depth and height: lines parallel to the plaster line stay level.`,
        }),
    }));
}
